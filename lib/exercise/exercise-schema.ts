import { z } from "zod";
import { FOOT_SCALES } from "../measure/scale";
import { FURNITURE_KINDS, MASKING_KINDS, OPENING_KINDS } from "../plan/plan";
import { STRICTNESSES, TASK_KINDS, TOOLS, UNITS } from "./exercise";
import { countElements, MAX_ELEMENTS, MAX_LEVEL, MAX_STEPS, sheetScaleRatio } from "./limits";
import { length, list, name, planPoint, strict, text } from "./schema-parts";

const opening = strict({
  id: name,
  kind: z.enum(OPENING_KINDS),
  at: length,
  width: length,
  sill: length.optional(),
  head: length,
  depth: length.optional(),
  leaves: z.union([z.literal(1), z.literal(2)], { error: "must be 1 or 2 | write 1 or 2" }).optional(),
  hinge: z.enum(["start", "end"]).optional(),
  swing: z.enum(["onstage", "offstage"]).optional(),
});

const wall = strict({
  id: name,
  from: name,
  to: name,
  height: length,
  thickness: length.optional(),
  base: length.optional(),
  onstage: z.enum(["left", "right"]).optional(),
  openings: list(opening).optional(),
});

const platform = strict({ id: name, outline: list(planPoint), height: length, base: length.optional() });

const stair = strict({
  id: name,
  nosing: z.tuple([planPoint, planPoint], { error: "must be two places | write [[x, y], [x, y]]" }),
  steps: z
    .int({ error: "must be a whole number of risers | write 1 or more" })
    .min(1, { error: "must be 1 or more | count the risers" })
    .max(MAX_STEPS, { error: `must be at most ${MAX_STEPS} | split the flight` }),
  tread: length,
  riser: length,
  base: length.optional(),
});

const furniture = strict({
  id: name,
  kind: z.enum(FURNITURE_KINDS),
  at: planPoint,
  turn: z.number().optional().meta({ description: "Degrees counter-clockwise seen from above." }),
  width: length,
  depth: length,
  height: length,
  base: length.optional(),
});

const column = strict({ id: name, at: planPoint, diameter: length, height: length, base: length.optional() });

const masking = strict({
  id: name,
  kind: z.enum(MASKING_KINDS),
  line: z.tuple([planPoint, planPoint], { error: "must be two places | write [[x, y], [x, y]]" }),
  trim: length.optional(),
  height: length,
});

const plan = strict({
  corners: z.record(name, planPoint).optional(),
  walls: list(wall).optional(),
  platforms: list(platform).optional(),
  stairs: list(stair).optional(),
  furniture: list(furniture).optional(),
  columns: list(column).optional(),
  masking: list(masking).optional(),
});

/** One in so many; one in nothing is no rake. */
const RAKE = /^1:(?=[\d.]*[1-9])\d{1,9}(?:\.\d{1,9})?$/;
const RAKE_FORMS = { error: 'must be a rake | write 0, a ratio like 0.05, or "1:20"' };

const stage = strict({
  opening: strict({ width: length, height: length }),
  depth: length,
  apron: length.optional(),
  rake: z.union([z.number(), z.string().regex(RAKE, RAKE_FORMS)], RAKE_FORMS).optional(),
});

const viewer = strict({
  distance: length.optional(),
  backWallRise: length.optional(),
  eyeHeight: length,
  offset: length.optional(),
}).superRefine((written, context) => {
  if ((written.distance === undefined) === (written.backWallRise === undefined))
    context.addIssue({
      code: "custom",
      message: 'needs exactly one of "distance" and "backWallRise" | give one of them',
    });
});

const task = strict({
  kind: z.enum(TASK_KINDS),
  marks: list(text).optional(),
  given: list(text).optional(),
  goOnFrom: z.enum(["true", "own"]).optional(),
  dimensions: z.enum(["printed", "rule"]).optional(),
  tools: list(z.enum(TOOLS)).optional(),
  hints: z.enum(["allowed", "none"]).optional(),
  strictness: z.enum(STRICTNESSES).optional(),
});

export const SCALE_FORMS = `${FOOT_SCALES.join(", ")} or 1:N`;

const scale = z
  .string()
  .refine((written) => sheetScaleRatio(written) !== null, { error: `must be a scale | write one of ${SCALE_FORMS}` })
  .meta({ description: SCALE_FORMS });

export const version = z
  .int({ error: "must be a whole number | write 1" })
  .min(1, { error: "must be 1 or more | write 1" });

/** The form of an exercise file; sense is checked apart. */
export const exerciseSchema = strict({
  format: z.literal("plasterline.exercise/1"),
  id: name,
  version: version.optional(),
  title: text,
  brief: text.optional(),
  scenario: text.optional(),
  unit: z.enum(UNITS),
  level: z
    .int({ error: "must be a whole number | write 1 to 5" })
    .min(1, { error: "must be 1 to 5 | write 1 to 5" })
    .max(MAX_LEVEL, { error: "must be 1 to 5 | write 1 to 5" }),
  skills: list(name).optional(),
  notes: text.optional(),
  units: z.enum(["ft-in", "m"]),
  scale,
  stage,
  viewer,
  plan,
  task,
})
  .superRefine((written, context) => {
    const count = countWritten(written.plan);
    if (count > MAX_ELEMENTS)
      context.addIssue({
        code: "custom",
        path: ["plan"],
        message: `holds ${count} elements, more than ${MAX_ELEMENTS} | split the exercise`,
      });
  })
  .meta({
    title: "A Plasterline exercise",
    description: "Lengths in feet or metres; x + stage left, y + upstage, z + up.",
  });

export type WrittenExercise = z.infer<typeof exerciseSchema>;
export type WrittenPlan = z.infer<typeof plan>;

function countWritten(written: WrittenPlan): number {
  const {
    corners = {},
    walls = [],
    platforms = [],
    stairs = [],
    furniture: pieces = [],
    columns = [],
    masking: cloths = [],
  } = written;
  return countElements({
    corners: Object.keys(corners).length,
    walls,
    platforms,
    stairs,
    furniture: pieces,
    columns,
    masking: cloths,
  });
}
