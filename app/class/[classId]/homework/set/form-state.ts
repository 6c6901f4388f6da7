import type { AskedItem, ChangeHomework, SetHomework } from "@/lib/classroom/homework/requests";

/** An exercise chosen, with what it is called in the list and its weight as it was written. */
export type Item = {
  readonly key: string;
  readonly words: string;
  readonly chosen: DistributiveOmit<AskedItem, "weight">;
  readonly weight: string;
};
type DistributiveOmit<Value, Key extends PropertyKey> = Value extends unknown ? Omit<Value, Key> : never;

/** An exercise that the homework has already, or had once. */
export type KnownItem = Item & { readonly drawings: number; readonly takenOut: boolean };

/** The form as it was written. */
export type FormState = {
  readonly title: string;
  readonly items: readonly Item[];
  /** As the browser's own date field has it: local, without a zone. */
  readonly due: string;
  readonly attempts: string;
  readonly counts: SetHomework["counts"];
  readonly feedback: SetHomework["feedback"];
  readonly strictness: NonNullable<SetHomework["strictness"]> | "own";
  readonly hints: SetHomework["hints"];
  readonly weight: string;
  readonly criteria: string;
  readonly toWhom: SetHomework["toWhom"]["kind"];
  readonly memberIds: readonly string[];
  readonly habit: string;
};

export const EMPTY: FormState = {
  title: "",
  items: [],
  due: "",
  attempts: "",
  counts: "best",
  feedback: "at-once",
  strictness: "own",
  hints: "allowed",
  weight: "1",
  criteria: "",
  toWhom: "all",
  memberIds: [],
  habit: "",
};

/** A plan of the teacher's library. */
export function planItem({ id, title }: { readonly id: string; readonly title: string }): Item {
  return { key: `plan ${id}`, words: title, chosen: { source: "plan", planId: id }, weight: "1" };
}

/** An exercise that the drafting desk passed on. */
export function deskItem({ title, text }: { readonly title: string; readonly text: string }): Item {
  return { key: `own desk ${title}`, words: title, chosen: { source: "own", text }, weight: "1" };
}

/** The exercises with one more at the end; one that goes by the same key makes way for it. */
export function withItem(items: readonly Item[], item: Item): readonly Item[] {
  return [...items.filter(({ key }) => key !== item.key), item];
}

/** What is sent of the form, whether homework is set or changed. */
export type Wanted = Omit<ChangeHomework, "homeworkId" | "agreed" | "items"> & { readonly items: readonly AskedItem[] };

/** What is sent; a sentence where something written cannot be read. */
export function readForm(form: FormState): Wanted | string {
  const weight = readNumber(form.weight);
  const attempts = form.attempts.trim() === "" ? 0 : readNumber(form.attempts);
  const due = form.due === "" ? null : new Date(form.due);
  const criteria = readCriteria(form.criteria);
  if (attempts === undefined || !Number.isInteger(attempts)) return "Write a whole number of attempts, or nothing.";
  if (weight === undefined) return "The weight of the homework is a number, for example 1 or 2.5.";
  if (due && Number.isNaN(due.getTime())) return "The due date cannot be read. Choose it once more.";
  if (typeof criteria === "string") return criteria;
  const items: AskedItem[] = [];
  for (const { words, chosen, weight: written } of form.items) {
    const share = readNumber(written);
    if (share === undefined) return `The weight of ${words} is a number, for example 1 or 2.5.`;
    items.push({ ...chosen, weight: share });
  }
  const { title, counts, feedback, hints } = form;
  const strictness = form.strictness === "own" ? null : form.strictness;
  const dueAt = due?.toISOString() ?? null;
  return {
    title,
    items,
    dueAt,
    attempts,
    counts,
    feedback,
    strictness,
    hints,
    weight,
    criteria,
    toWhom: toWhomOf(form),
  };
}

function toWhomOf({ toWhom, memberIds, habit }: FormState): SetHomework["toWhom"] {
  if (toWhom === "some") return { kind: "some", memberIds: [...memberIds] };
  return toWhom === "habit" ? { kind: "habit", habit } : { kind: "all" };
}

/** One criterion a line: its name, then its points. */
function readCriteria(written: string): SetHomework["criteria"] | string {
  const lines = written.split("\n").filter((line) => line.trim() !== "");
  const read = lines.map((line) => {
    const [, name, points] = /^(.*\S)[\s,;:]+(\d+(?:[.,]\d+)?)\s*$/.exec(line) ?? [];
    return name && points ? { name: name.replace(/[\s,;:]+$/, ""), points: Number(points.replace(",", ".")) } : line;
  });
  const unread = read.find((each) => typeof each === "string");
  if (unread) return `A criterion is a name and its points, for example "Line quality, 10". This is not: ${unread}`;
  return read.filter((each) => typeof each !== "string");
}

/** Either decimal sign; undefined for what is no number. */
function readNumber(written: string): number | undefined {
  const plain = written.trim().replace(",", ".");
  const value = Number(plain);
  return plain === "" || !Number.isFinite(value) ? undefined : value;
}
