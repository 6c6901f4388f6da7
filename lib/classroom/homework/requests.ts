import { z } from "zod";
import { STRICTNESSES, UNITS } from "../../exercise/exercise";

/** What the pages of homework send, and the sentences for what cannot be taken. */
const id = z.string().min(1).max(64);
const moment = z.iso.datetime({ error: "This date cannot be read. Choose it once more." }).transform(asKept);
const due = moment.nullable();
const weight = z
  .number({ error: "A weight is a number, for example 1 or 2.5." })
  .min(0, "A weight is 0 or more.")
  .max(1000, "A weight is at most 1000.");

/** One exercise file; as much as the engine reads. */
const LONGEST_FILE = 1024 * 1024;
const MOST_ITEMS = 30;
const MOST_CRITERIA = 12;

const LONGEST_REASON = 500;

const sources = [
  z.strictObject({ source: z.literal("course"), exerciseId: z.string().min(1).max(200), weight }),
  z.strictObject({ source: z.literal("variant"), unit: z.enum(UNITS), level: z.int().min(1).max(5), weight }),
  z.strictObject({ source: z.literal("own"), text: z.string().max(LONGEST_FILE, "The file is too long."), weight }),
] as const;
/** A plan of the teacher's own library, as it is when the homework is set. */
const plan = z.strictObject({ source: z.literal("plan"), planId: id, weight });
/** An exercise that is in the homework already, or was. */
const kept = z.strictObject({ source: z.literal("kept"), itemId: id, weight });

const itemsOf = <Item extends z.ZodType>(item: Item) =>
  z.array(item).min(1, "Choose at least one exercise.").max(MOST_ITEMS, `${MOST_ITEMS} exercises are the most.`);

const criterion = z.strictObject({
  name: z.string().trim().min(1, "Give each criterion a name.").max(80, "A criterion's name has at most 80 letters."),
  points: z
    .number({ error: "A criterion's points are a number." })
    .min(0, "Points are 0 or more.")
    .max(1000, "Points are at most 1000."),
});

const toWhom = z.discriminatedUnion("kind", [
  z.strictObject({ kind: z.literal("all") }),
  z.strictObject({ kind: z.literal("some"), memberIds: z.array(id).min(1, "Choose at least one student.").max(500) }),
  z.strictObject({ kind: z.literal("habit"), habit: z.string().min(1, "Choose a habit.").max(100) }),
]);

const rules = {
  title: z.string().max(100, "A title has at most 100 letters."),
  dueAt: due,
  attempts: z
    .int("Write a whole number of attempts, or nothing.")
    .min(0, "Write a whole number of attempts, or nothing.")
    .max(100, "A hundred attempts are the most."),
  counts: z.enum(["best", "last"]),
  feedback: z.enum(["at-once", "after-due"]),
  strictness: z.enum(STRICTNESSES).nullable(),
  hints: z.enum(["allowed", "none"]),
  weight,
  criteria: z.array(criterion).max(MOST_CRITERIA, `${MOST_CRITERIA} criteria are the most.`),
  toWhom,
};

/** A request in which no plan of the library is left: each has its text (see `fillPlans`). */
type Filled<Request extends { readonly items: readonly unknown[] }> = Omit<Request, "items"> & {
  items: Exclude<Request["items"][number], { readonly source: "plan" }>[];
};

export const SetHomeworkRequest = z.strictObject({
  classId: id,
  items: itemsOf(z.discriminatedUnion("source", [...sources, plan])),
  ...rules,
});
export type SetHomework = Filled<z.infer<typeof SetHomeworkRequest>>;

export const ChangeHomeworkRequest = z.strictObject({
  homeworkId: id,
  items: itemsOf(z.discriminatedUnion("source", [...sources, plan, kept])),
  ...rules,
  /** What the teacher was told would come of it and agreed to: drawings hidden, and the seal of the scores shown. */
  agreed: z.strictObject({ hides: z.int().min(0), seal: z.string().max(64).nullable() }),
});
export type ChangeHomework = Filled<z.infer<typeof ChangeHomeworkRequest>>;
/** An exercise as the form sends it. */
export type AskedItem = z.infer<typeof ChangeHomeworkRequest>["items"][number];

export const CountInTimeRequest = z.strictObject({
  handInId: id,
  /** Null has it count as late again. */
  reason: z
    .string()
    .trim()
    .min(1, "Write the reason: the student sees it, and so do you next year.")
    .max(LONGEST_REASON, `A reason has at most ${LONGEST_REASON} letters.`)
    .nullable(),
});

export const ReuseHomeworkRequest = z.strictObject({ homeworkId: id, classId: id, dueAt: due });
export const ArchiveHomeworkRequest = z.strictObject({ homeworkId: id, archived: z.boolean() });
export const TermsRequest = z.strictObject({ homeworkId: id, memberId: id, dueAt: due, excused: z.boolean() });

export const HandInRequest = z.strictObject({
  id: z.string().regex(/^[A-Za-z0-9-]{16,64}$/, "This hand-in has no name of its own."),
  itemId: id,
  memberId: id,
  /** Read by the marks' own schema. */
  marks: z.unknown(),
  madeAt: moment,
});

export const ClassListRequest = z.strictObject({ classId: id, text: z.string(), put: z.boolean() });

/** As the store keeps times: ISO 8601 in UTC with milliseconds, so that they sort as text. */
function asKept(written: string): string {
  return new Date(written).toISOString();
}
