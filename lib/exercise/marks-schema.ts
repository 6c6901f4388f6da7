import { z } from "zod";
import { scale, version } from "./exercise-schema";
import { POINTING_DEVICES } from "./marks";
import { list, name, strict, text } from "./schema-parts";

const mark = strict({
  point: text,
  at: z.tuple([z.number(), z.number()], { error: "must be a place | two finite numbers, metres" }),
  with: z.enum(POINTING_DEVICES).optional(),
});

/** The form of a set of marks. */
export const marksSchema = strict({
  format: z.literal("plasterline.marks/1"),
  exercise: name,
  version: version.optional(),
  scale: scale.optional(),
  marks: list(mark),
  hints: z.record(text, z.int().min(0, { error: "must be 0 or more | count the hints" })).optional(),
}).meta({
  title: "A set of marks",
  description: "at: [X, Z] metres on the picture plane; [x, y] on the plan for picture-to-plan.",
});
