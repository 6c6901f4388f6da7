import type { Shelf } from "@/app/_parts/kept-work/shelf";

/** A browser's storage with room for so many characters, keys and values together. */
export function smallShelf(room = Number.POSITIVE_INFINITY): Shelf {
  const kept = new Map<string, string>();
  const size = () => [...kept].reduce((sum, [key, value]) => sum + key.length + value.length, 0);
  return {
    getItem: (key) => kept.get(key) ?? null,
    setItem: (key, value) => {
      const before = kept.has(key) ? key.length + (kept.get(key) ?? "").length : 0;
      if (size() - before + key.length + value.length > room) throw new DOMException("full", "QuotaExceededError");
      kept.set(key, value);
    },
    removeItem: (key) => void kept.delete(key),
    key: (index) => [...kept.keys()][index] ?? null,
    get length() {
      return kept.size;
    },
  };
}
