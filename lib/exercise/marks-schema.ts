import { z } from "zod";
import { sheetScales } from "../sheet/choose-scale";
import { SCALE_FORMS, version } from "./exercise-schema";
import { sheetScaleRatio } from "./limits";
import { POINTING_DEVICES } from "./marks";
import { list, name, strict, text } from "./schema-parts";

/** Farther than any sheet, metres; the figures of a grade would no longer be finite. */
const FARTHEST_M = 1e12;

const coordinate = z
  .number({ error: "must be a finite number | metres" })
  .min(-FARTHEST_M, { error: "lies on no sheet | check its unit: metres" })
  .max(FARTHEST_M, { error: "lies on no sheet | check its unit: metres" });

const mark = strict({
  point: text,
  at: z.tuple([coordinate, coordinate], { error: "must be a place | two finite numbers, metres" }),
  with: z.enum(POINTING_DEVICES).optional(),
});

/** Practice sheets are printed at scales between the usual ones as well. */
const PRINTED: ReadonlySet<string> = new Set(
  [...sheetScales("ft-in"), ...sheetScales("m")].map(({ written }) => written),
);
const scale = z.string().refine((written) => sheetScaleRatio(written) !== null || PRINTED.has(written), {
  error: `must be a scale | write one of ${SCALE_FORMS}, or what the sheet says`,
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
