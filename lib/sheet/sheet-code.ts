import { parseScale } from "../measure/scale";
import { PAPERS, type Paper } from "./paper-size";

/** What a sheet's code says: enough to find the exercise again and to know where everything on the paper stands. */
export type SheetCode = {
  /** The exercise's id; of a generated one, the id that it can be made from again. */
  readonly exercise: string;
  readonly version: number;
  /** From 1. */
  readonly page: number;
  readonly paper: Paper;
  /** As written, `1/8in=1ft`. */
  readonly scale: string;
  /** Tells the sheets of a pile apart, from 1; null for a sheet printed alone. */
  readonly copy: number | null;
};

export type SheetCodeReading =
  | { readonly kind: "read"; readonly code: SheetCode }
  /** Someone else's code. */
  | { readonly kind: "not ours" }
  /** Ours, of a form that this program does not know. */
  | { readonly kind: "newer"; readonly form: number }
  | { readonly kind: "spoiled"; readonly what: string };

const OURS = "plasterline";
/** The form of the text and of the sheet's layout: another number for anything that a reader has to know of. */
const FORM = 1;
const WHOLE = /^[1-9]\d{0,8}$/;
/** What an exercise's id may hold, as its file's form has it. */
const ID = /^[\p{L}\p{N}][\p{L}\p{N}_-]{0,63}$/u;

/** `plasterline 1 raking-wall 1 1 letter 1:100`, and the copy's number after it where it has one. */
export function printSheetCode({ exercise, version, page, paper, scale, copy }: SheetCode): string {
  return [OURS, FORM, exercise, version, page, paper, scale, ...(copy === null ? [] : [copy])].join(" ");
}

/** What a code's text says. Anything that is not exactly ours is told apart, never guessed at. */
export function readSheetCode(text: string): SheetCodeReading {
  const [ours, form, exercise = "", version, page, written, scale = "", copy, ...more] = text.split(" ");
  if (ours !== OURS || form === undefined || !WHOLE.test(form)) return { kind: "not ours" };
  if (Number(form) !== FORM) return { kind: "newer", form: Number(form) };
  const paper = PAPERS.find((each) => each === written);
  if (!ID.test(exercise)) return { kind: "spoiled", what: "the exercise" };
  if (!WHOLE.test(version ?? "")) return { kind: "spoiled", what: "the version" };
  if (!WHOLE.test(page ?? "")) return { kind: "spoiled", what: "the page" };
  if (!paper) return { kind: "spoiled", what: "the paper" };
  if (parseScale(scale) === null) return { kind: "spoiled", what: "the scale" };
  if (copy !== undefined && !WHOLE.test(copy)) return { kind: "spoiled", what: "the copy" };
  if (more.length > 0) return { kind: "spoiled", what: "the end" };
  const read = { exercise, version: Number(version), page: Number(page), paper, scale };
  return { kind: "read", code: { ...read, copy: copy === undefined ? null : Number(copy) } };
}
