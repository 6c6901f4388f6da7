import type { MarkSet } from "@/lib/exercise/marks";
import { isRecord } from "../kept-work/read-attempt";
import { keysOf, put, type Shelf, take } from "../kept-work/shelf";
import { newId } from "./new-id";
import { WAITING_KEY } from "./waiting-key";

const RECEIPT_KEY = "plasterline.handed-in.";
const FORMAT = "plasterline.hand-in/1";

/** Homework that is done and that the server has not acknowledged yet. */
export type Waiting = {
  readonly format: typeof FORMAT;
  /** Made here, so that the server keeps it once however often it is sent. */
  readonly id: string;
  readonly itemId: string;
  readonly memberId: string;
  readonly title: string;
  readonly marks: MarkSet;
  readonly madeAt: string;
  /** Why the server will never take it; null while it is still to be sent. */
  readonly refused: string | null;
};

/** What the server said of the last hand-in of an exercise. */
export type KeptReceipt = {
  readonly id: string;
  readonly receivedAt: string;
  readonly late: boolean;
  readonly attemptsLeft: number | null;
};

export function newWaiting(
  { itemId, memberId, title, marks }: Pick<Waiting, "itemId" | "memberId" | "title" | "marks">,
  now: Date,
): Waiting {
  return { format: FORMAT, id: newId(), itemId, memberId, title, marks, madeAt: now.toISOString(), refused: null };
}

/** Each under a key of its own, so that two windows never write over each other. False when the storage refuses. */
export function keepWaiting(shelf: Shelf, waiting: Waiting): boolean {
  return put(shelf, WAITING_KEY + waiting.id, waiting);
}

/** All that waits, oldest first. */
export function keptWaiting(shelf: Shelf): readonly Waiting[] {
  return keysOf(shelf, WAITING_KEY)
    .map((key) => take(shelf, key))
    .filter(isWaiting)
    .sort((a, b) => (a.madeAt < b.madeAt ? -1 : 1));
}

export function forgetWaiting(shelf: Shelf, id: string): void {
  shelf.removeItem(WAITING_KEY + id);
}

export function keepReceipt(shelf: Shelf, { memberId, itemId }: Waiting, receipt: KeptReceipt): boolean {
  return put(shelf, `${RECEIPT_KEY}${memberId}.${itemId}`, receipt);
}

export function keptReceipt(shelf: Shelf, memberId: string, itemId: string): KeptReceipt | null {
  return readReceipt(take(shelf, `${RECEIPT_KEY}${memberId}.${itemId}`));
}

/** A receipt out of the storage or a server's answer; null for anything that is none. */
export function readReceipt(value: unknown): KeptReceipt | null {
  if (!isRecord(value)) return null;
  const { id, receivedAt, late, attemptsLeft } = value;
  const sound =
    typeof id === "string" &&
    typeof receivedAt === "string" &&
    typeof late === "boolean" &&
    (attemptsLeft === null || typeof attemptsLeft === "number");
  return sound ? { id, receivedAt, late, attemptsLeft } : null;
}

function isWaiting(value: unknown): value is Waiting {
  return (
    isRecord(value) &&
    value.format === FORMAT &&
    [value.id, value.itemId, value.memberId, value.title, value.madeAt].every((each) => typeof each === "string") &&
    isRecord(value.marks) &&
    (value.refused === null || typeof value.refused === "string")
  );
}
