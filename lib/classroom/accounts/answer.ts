import type { Fault } from "../store/fault";
import { sayWait } from "./tries";

/** Why something was not done, in a word for programs and a sentence for the reader. */
export type No<Reason extends string> = {
  readonly ok: false;
  readonly reason: Reason | Fault;
  readonly sentence: string;
};

export function no<Reason extends string>(reason: Reason, sentence: string): No<Reason> {
  return { ok: false, reason, sentence };
}

export function tooMany(waitS: number): No<"too-many"> {
  return no("too-many", sayWait(waitS));
}
