import type { Limit, Try } from "./tries";

/** Old counts are swept when there are so many. */
const MANY = 5000;

type Count = { readonly count: number; readonly sinceMs: number };

export type CountHere = (whose: string, nowMs: number) => Try;

/** Counts in this process alone, for what is done without a store. */
export function makeCountHere({ most, seconds }: Limit): CountHere {
  const counts = new Map<string, Count>();
  const windowMs = seconds * 1000;
  return (whose, nowMs) => {
    if (counts.size > MANY)
      for (const [each, { sinceMs }] of counts) if (sinceMs <= nowMs - windowMs) counts.delete(each);
    const before = counts.get(whose);
    const going = before && before.sinceMs > nowMs - windowMs ? before : { count: 0, sinceMs: nowMs };
    if (going.count >= most)
      return { allowed: false, waitS: Math.max(1, Math.ceil((going.sinceMs + windowMs - nowMs) / 1000)) };
    counts.set(whose, { ...going, count: going.count + 1 });
    return { allowed: true };
  };
}
