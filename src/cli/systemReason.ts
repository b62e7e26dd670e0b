const reasons: Readonly<Record<string, string>> = {
  ENOENT: "no such file or directory",
  EACCES: "permission denied",
  EPERM: "operation not permitted",
  ENOTDIR: "a part of the path is not a directory",
  EISDIR: "it is a directory",
  EROFS: "the file system is read-only",
  ENOSPC: "no space left on the device",
  ENAMETOOLONG: "the name is too long",
  EDQUOT: "the user's share of the disk is full",
  EFBIG: "the file would be larger than is allowed",
  EIO: "the device failed",
  ELOOP: "too many symbolic links",
};

/** The error code that Node's file functions attach, or null. */
export function systemCode(error: unknown): string | null {
  return error instanceof Error && "code" in error && typeof error.code === "string" ? error.code : null;
}

/** A file-system error in words. */
export function systemReason(error: unknown): string {
  const code = systemCode(error);
  return (code === null ? undefined : reasons[code]) ?? code ?? String(error);
}

/** Whether the device refused, whatever the path. */
export function isDiskFault(error: unknown): boolean {
  return ["ENOSPC", "EDQUOT", "EFBIG", "EIO"].includes(systemCode(error) ?? "");
}
