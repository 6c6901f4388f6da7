import { cleanCode, cleanPassphrase } from "./as-written";

export type WayBack = { readonly code: string; readonly name: string; readonly passphrase: string };

/**
 * The end of a student's private link. It stands behind the `#`, which a browser keeps to itself, so that no log of any
 * server ever has it.
 */
export function writePrivateLink({ code, name, passphrase }: WayBack): string {
  return `/class/back#${code}.${encodeURIComponent(name).replaceAll(".", "%2E")}.${passphrase.replaceAll(" ", "-")}`;
}

/** What a private link says, from its part behind the `#`; nothing when it is not whole. */
export function readPrivateLink(fragment: string): WayBack | undefined {
  const [code, name, passphrase, ...more] = fragment.replace(/^#/, "").split(".");
  if (!code || !name || !passphrase || more.length > 0) return undefined;
  try {
    return { code: cleanCode(code), name: decodeURIComponent(name), passphrase: cleanPassphrase(passphrase) };
  } catch {
    return undefined;
  }
}
