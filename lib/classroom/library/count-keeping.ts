import { type No, no } from "../accounts/answer";
import { countTry, type Limit } from "../accounts/tries";
import type { Store } from "../store/store";

/** Plans that one teacher keeps: one every three seconds is more than anyone draws, and reading each takes the server a while. */
const KEEP_LIMIT: Limit = { name: "keep-plan", most: 300, seconds: 15 * 60 };

/** Counts that a teacher keeps a plan; a refusal where it is too often. */
export async function countKeeping(store: Store, ownerId: string, now = new Date()): Promise<No<"too-many"> | null> {
  const counted = await countTry(store, KEEP_LIMIT, ownerId, now);
  if (counted.allowed) return null;
  const minutes = Math.ceil(counted.waitS / 60);
  const wait = minutes === 1 ? "a minute" : `${minutes} minutes`;
  return no("too-many", `You kept plans very often just now. Wait ${wait}; it is still here, and can be kept then.`);
}
