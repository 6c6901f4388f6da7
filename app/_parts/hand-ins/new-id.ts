/** The identifier of a hand-in, 128 bits by lot. Pages served by plain http have no `randomUUID`. */
export function newId(): string {
  const bytes = globalThis.crypto.getRandomValues(new Uint8Array(16));
  return [...bytes].map((byte) => byte.toString(16).padStart(2, "0")).join("");
}
