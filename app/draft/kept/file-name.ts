/** Letters of a file's name; more are cut by some storages. */
const LONGEST = 60;

/** A title as the name of a file, without its ending: letters and digits of any script, all else as hyphens. */
export function fileName(title: string): string {
  const plain = title
    .normalize("NFC")
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, "-")
    .slice(0, LONGEST)
    .replace(/^-|-$/g, "");
  return plain === "" ? "plan" : plain;
}
