import { z } from "zod";

const id = z.string().min(1).max(64);
const LONGEST_REASON = 500;
const LONGEST_REMARK = 4000;
const MOST_STROKES = 300;
const MOST_STROKE_POINTS = 1500;
const HEAVIEST = 1000;
/** Far beyond any sheet, metres. */
const FARTHEST_M = 1e4;

const score = z
  .number({ error: "A score is a number from 0 to 100." })
  .min(0, "A score is not below 0.")
  .max(100, "A score is at most 100.");
const weight = z
  .number({ error: "A weight is a number, for example 1 or 0.5." })
  .min(0, "A weight is not below 0.")
  .max(HEAVIEST, `A weight is at most ${HEAVIEST}.`);
const place = z.tuple([z.number().min(-FARTHEST_M).max(FARTHEST_M), z.number().min(-FARTHEST_M).max(FARTHEST_M)]);

/** What the gradebook's forms send, and the sentences for what cannot be taken. */
export const OverrideRequest = z.strictObject({
  itemId: id,
  memberId: id,
  score,
  reason: z
    .string()
    .trim()
    .min(1, "Write the reason: the student sees it, and so do you next year.")
    .max(LONGEST_REASON, `A reason has at most ${LONGEST_REASON} letters.`),
});
export const TakeBackRequest = z.strictObject({ itemId: id, memberId: id });
export const ExcuseRequest = z.strictObject({ homeworkId: id, memberId: id, excused: z.boolean() });
export const WeightsRequest = z.strictObject({
  classId: id,
  homework: z.array(z.strictObject({ id, weight })).max(500),
  items: z.array(z.strictObject({ id, weight })).max(5000),
});
export const CriterionRequest = z.strictObject({
  itemId: id,
  memberId: id,
  criterion: z.string().min(1).max(200),
  /** Null takes the points back. */
  points: z.number({ error: "Points are a number." }).min(0, "Points are not below 0.").nullable(),
});
export const RemarkRequest = z.strictObject({
  handInId: id,
  words: z.string().max(LONGEST_REMARK, `A remark has at most ${LONGEST_REMARK} letters.`),
  strokes: z
    .array(z.array(place).min(1).max(MOST_STROKE_POINTS))
    .max(MOST_STROKES, "There are too many red lines on this sheet to keep."),
});
export const RegradeRequest = z.strictObject({
  classId: id,
  homeworkId: id,
  /** `as-set` leaves the homework's own. */
  strictness: z.enum(["as-set", "exercise", "thumbnail", "sketch", "drafted"]),
  /** From the files as they were set, or from the course as it is now. */
  exercises: z.enum(["as-set", "course"]),
  /** What was previewed; without it nothing is written. */
  seal: z.string().max(64).optional(),
});

/** Red pencil lines and words as they are kept. */
export const StrokesKept = z.array(z.array(z.tuple([z.number(), z.number()])));
