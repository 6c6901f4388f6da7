/** What a page of an exercise of one's own is opened with: a name under which it was set aside, or all of it in a link. */
export type OwnAddress =
  | { readonly kind: "kept"; readonly id: string }
  | { readonly kind: "link"; readonly packed: string };

const LINK = /^#link=([\w-]+)$/;

/** Reads an address's query and fragment; null where they name no exercise. */
export function readOwnAddress({ search, hash }: Pick<Location, "search" | "hash">): OwnAddress | null {
  const packed = LINK.exec(hash)?.[1];
  if (packed !== undefined) return { kind: "link", packed };
  const id = new URLSearchParams(search).get("kept");
  return id ? { kind: "kept", id } : null;
}

/** The address of a page on an exercise that was set aside. */
export function keptAddress(page: string, id: string): string {
  return `${page}?kept=${encodeURIComponent(id)}`;
}

/** The address of a page with the whole exercise in its fragment, which browsers do not send to any server. */
export function linkAddress(page: string, packed: string): string {
  return `${page}#link=${packed}`;
}
