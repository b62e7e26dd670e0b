/** Hands a text, bytes or a blob to the browser as a download. */
export function saveFile(name: string, mediaType: string, content: string | Uint8Array | Blob): void {
  const link = document.createElement("a");
  link.href = URL.createObjectURL(new Blob([content as BlobPart], { type: mediaType }));
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), 10_000);
}
