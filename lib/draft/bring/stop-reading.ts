import type { Problem } from "../../exercise/problem";
import type { BringReading } from "./brought";

/** Thrown inside a reader to give up the whole file, and caught at its door: never seen outside this room. */
export class StopReading extends Error {
  readonly problem: Problem;
  constructor(where: string, message: string, hint: string) {
    super(message);
    this.problem = { where, message, hint };
  }
}

/** What a reader that may give up comes to. */
export function readingOf(read: () => BringReading): BringReading {
  try {
    return read();
  } catch (reason) {
    if (reason instanceof StopReading) return { ok: false, problem: reason.problem };
    throw reason;
  }
}
