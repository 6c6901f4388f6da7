import { createHash } from "node:crypto";
import type { Kysely } from "kysely";
import type { Strictness } from "../../exercise/exercise";
import type { Grade } from "../../grading/grade";
import type { Store } from "../store/store";
import type { Tables } from "../store/tables";
import { type Written, write } from "../store/write";
import { breathe } from "./breathe";
import { gradeAgain, type Measure, readMeasure } from "./grade-again";
import { titleOf } from "./read-gradebook";

/** Scores nearer than this are one score: less than any file or page shows. */
const SAME_SCORE = 0.005;

export type Regrade = {
  readonly homeworkId: string;
  readonly strictness: "as-set" | "exercise" | Strictness;
  /** The course's files as they are now, by the exercise's id; null grades by the files as they were set. */
  readonly course: ReadonlyMap<string, string> | null;
};

export type Change = {
  readonly handInId: string;
  readonly name: string;
  readonly exercise: string;
  readonly from: number | null;
  readonly to: number | null;
};

export type Preview = {
  /** Attempts looked at. */
  readonly all: number;
  readonly changes: readonly Change[];
  /** Attempts that cannot be graded anew, and stay as they are. */
  readonly kept: readonly { readonly name: string; readonly exercise: string; readonly sentence: string }[];
  /** Tells this outcome from any other; what is applied must have been seen. */
  readonly seal: string;
};

const CHANGED = {
  ok: false,
  reason: "changed",
  sentence: "Something was handed in or changed since you looked. Nothing was changed; look once more.",
} as const;

type Regraded = { readonly id: string; readonly grade: Grade; readonly exercise: string };
type Worked = {
  readonly preview: Preview;
  readonly graded: readonly Regraded[];
  readonly strictness: Strictness | null;
  readonly files: ReadonlyMap<string, string>;
};

/** What would become of a homework's scores; writes nothing. Overrides stand whatever comes of it. */
export async function previewRegrade(store: Store, regrade: Regrade): Promise<Preview> {
  return (await work(store, regrade)).preview;
}

/** A regrade that was worked out: what would come of it, and how to write it inside a transaction. */
type PreparedRegrade = {
  readonly preview: Preview;
  /** False, with nothing written, where something came in since: it would be left by the old measure. */
  readonly put: (all: Kysely<Tables>, engineVersion: string) => Promise<boolean>;
};

/** Works a regrade out, to be written with other changes or not at all. */
export async function prepareRegrade(store: Store, regrade: Regrade): Promise<PreparedRegrade> {
  const worked = await work(store, regrade);
  return { preview: worked.preview, put: (all, engineVersion) => put(all, regrade, worked, engineVersion) };
}

/**
 * Writes what was previewed: scores, grades, and what the homework now asks, all or nothing. Nothing is written if it would
 * come out otherwise than by `seal`. `engineVersion` is noted with every attempt.
 */
export async function applyRegrade(
  store: Store,
  regrade: Regrade,
  seal: string,
  engineVersion: string,
): Promise<Written<Preview> | typeof CHANGED> {
  const prepared = await prepareRegrade(store, regrade);
  if (prepared.preview.seal !== seal) return CHANGED;
  const written = await write(store, (all) => prepared.put(all, engineVersion));
  if (!written.ok) return written;
  return written.value ? { ok: true, value: prepared.preview } : CHANGED;
}

async function put(
  all: Kysely<Tables>,
  regrade: Regrade,
  { preview, graded, strictness, files }: Worked,
  engineVersion: string,
): Promise<boolean> {
  const there = await all
    .selectFrom("hand_in")
    .innerJoin("homework_item", "homework_item.id", "hand_in.item_id")
    .select("hand_in.id")
    .where("homework_item.homework_id", "=", regrade.homeworkId)
    .execute();
  if (there.length !== preview.all) return false;
  for (const { id, grade, exercise } of graded)
    await all
      .updateTable("hand_in")
      .set({ score: grade.score, grade: JSON.stringify(grade), exercise, engine_version: engineVersion })
      .where("id", "=", id)
      .execute();
  if (regrade.strictness !== "as-set")
    await all.updateTable("homework").set({ strictness }).where("id", "=", regrade.homeworkId).execute();
  for (const [id, exercise] of files)
    await all.updateTable("homework_item").set({ exercise }).where("id", "=", id).execute();
  return true;
}

async function work({ db }: Store, { homeworkId, strictness, course }: Regrade): Promise<Worked> {
  const homework = await db
    .selectFrom("homework")
    .select("strictness")
    .where("id", "=", homeworkId)
    .executeTakeFirstOrThrow();
  const items = await db.selectFrom("homework_item").selectAll().where("homework_id", "=", homeworkId).execute();
  const handIns = await db
    .selectFrom("hand_in")
    .innerJoin("member", "member.id", "hand_in.member_id")
    .innerJoin("homework_item", "homework_item.id", "hand_in.item_id")
    .select(["hand_in.id", "item_id", "name", "score", "hand_in.exercise", "marks"])
    .where("homework_item.homework_id", "=", homeworkId)
    .orderBy("hand_in.received_at")
    .orderBy("hand_in.id")
    .execute();
  const strict = strictness === "as-set" ? homework.strictness : strictness === "exercise" ? null : strictness;
  const files = new Map(
    items.flatMap(({ id, source, exercise_id }): [string, string][] => {
      const now = source === "course" && exercise_id !== null ? course?.get(exercise_id) : undefined;
      return now === undefined ? [] : [[id, now]];
    }),
  );
  const measures = new Map<string, Measure>();
  const graded: Regraded[] = [];
  const changes: Change[] = [];
  const kept: Preview["kept"][number][] = [];
  for (const { id, item_id, name, score, exercise, marks } of handIns) {
    const file = fileOf(items, files, item_id, exercise);
    const said = { name, exercise: titleOf(items.find((item) => item.id === item_id) as (typeof items)[number]) };
    const measure = measures.get(file) ?? readMeasure(file, strict);
    measures.set(file, measure);
    await breathe();
    const again = gradeAgain(measure, marks);
    if (!again.ok) {
      kept.push({ ...said, sentence: again.sentence });
      continue;
    }
    graded.push({ id, grade: again.grade, exercise: file });
    if (!sameScore(score, again.grade.score))
      changes.push({ ...said, handInId: id, from: score, to: again.grade.score });
  }
  const seal = createHash("sha256")
    .update(JSON.stringify([strict, [...files], graded.map(({ id, grade }) => [id, grade.score]), kept]))
    .digest("hex");
  return { preview: { all: handIns.length, changes, kept, seal }, graded, strictness: strict, files };
}

/** A variant is each student's own and stays what it was; the rest is graded by the file of its exercise. */
function fileOf(
  items: readonly { readonly id: string; readonly source: string; readonly exercise: string | null }[],
  files: ReadonlyMap<string, string>,
  itemId: string,
  asDrawn: string,
): string {
  const item = items.find(({ id }) => id === itemId);
  return files.get(itemId) ?? (item?.source === "variant" ? null : item?.exercise) ?? asDrawn;
}

function sameScore(a: number | null, b: number | null): boolean {
  return a === null || b === null ? a === b : Math.abs(a - b) < SAME_SCORE;
}
