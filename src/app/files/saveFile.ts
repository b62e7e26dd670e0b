/** Hands a text or bytes to the browser as a download. */
export function saveFile(name: string, mediaType: string, content: string | Uint8Array): void {
  const link = document.createElement("a");
  link.href = URL.createObjectURL(new Blob([content as BlobPart], { type: mediaType }));
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), 10_000);
}
