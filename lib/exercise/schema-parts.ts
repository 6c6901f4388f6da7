import { z } from "zod";
import { LENGTH_FORMS, LENGTH_PATTERN, parseLength } from "../measure/length";
import { MAX_ELEMENTS, MAX_LETTERS, MAX_NAME, NAME_PATTERN } from "./limits";
import { nearestName } from "./nearest-name";
import { UNKNOWN_FIELD_BREAK } from "./problem";

/** An object that refuses unknown fields and names the nearest known one. */
export function strict<Shape extends z.core.$ZodLooseShape>(shape: Shape) {
  const known = Object.keys(shape);
  return z.strictObject(shape, {
    error: (issue) =>
      issue.code === "unrecognized_keys"
        ? (issue.keys as string[])
            .map((key) => `did you mean "${nearestName(key, known)}"? The fields here are ${known.join(", ")}`)
            .join(UNKNOWN_FIELD_BREAK)
        : undefined,
  });
}

function lengthError(written: unknown): string {
  const parsed = parseLength(String(written), "m");
  return `cannot be read as a length | ${parsed.ok ? LENGTH_FORMS : parsed.reason}`;
}

/** A bare number in the file's units, or text with its own unit. */
export const length = z
  .union(
    [
      z.number(),
      z
        .string()
        .regex(LENGTH_PATTERN, { error: (issue) => lengthError(issue.input), abort: true })
        .refine((written) => parseLength(written, "m").ok, { error: (issue) => lengthError(issue.input) }),
    ],
    { error: `must be a length | ${LENGTH_FORMS}, or a bare number` },
  )
  .meta({
    id: "length",
    description: "A bare number in the file's units (feet or metres), or text with its own unit: 7'-3\", 3.6 m.",
  });

export const planPoint = z
  .tuple([length, length], {
    error: "must be a place [x, y] | two lengths: across from the centre line, upstage of the plaster line",
  })
  .meta({ id: "place", description: "[x, y]: from the centre line, + stage left; from the plaster line, + upstage." });

/** A name that can stand in the name of a point: letters, digits, - and _. */
export const name = z
  .string()
  .regex(NAME_PATTERN, {
    error: "must be a name of letters, digits, - or _, beginning with a letter or digit | rename it, like A or W1",
  })
  .max(MAX_NAME, { error: `must have at most ${MAX_NAME} letters | shorten it` });

export function list<Item extends z.core.$ZodType>(item: Item) {
  return z.array(item).max(MAX_ELEMENTS, { error: `may hold at most ${MAX_ELEMENTS} entries | split the exercise` });
}

export const text = z
  .string()
  .max(MAX_LETTERS, { error: `must have at most ${MAX_LETTERS.toLocaleString("en")} letters | shorten it` });
