/** A code as it is kept, from one as people write it: small letters, blanks and dashes do not matter. */
export function cleanCode(written: string): string {
  return written.replace(/[\s-]/g, "").toUpperCase();
}

/** A passphrase as it is kept, from one as people write it: capitals, dashes and full stops do not matter. */
export function cleanPassphrase(written: string): string {
  return written
    .toLowerCase()
    .split(/[^a-z]+/)
    .filter((word) => word !== "")
    .join(" ");
}
