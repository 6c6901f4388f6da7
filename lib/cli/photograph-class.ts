import { randomUUID } from "node:crypto";
import { join } from "node:path";
import { makeAuth } from "../classroom/accounts/auth";
import { makeClass } from "../classroom/accounts/classes";
import { makeFirstTeacher } from "../classroom/accounts/first-teacher";
import { joinClass } from "../classroom/accounts/join-class";
import { cookieSecret } from "../classroom/accounts/settings";
import { courseText } from "../classroom/homework/course-text";
import { handIn } from "../classroom/homework/hand-in";
import { setHomework } from "../classroom/homework/set-homework";
import { keepPlan } from "../classroom/library/keep-plan";
import { sharePlan } from "../classroom/library/share-plan";
import { openVote } from "../classroom/live/open-vote";
import { putGuesses } from "../classroom/live/put-guesses";
import { openStore } from "../classroom/store/open-store";
import type { Store } from "../classroom/store/store";
import type { Exercise } from "../exercise/exercise";
import { exercisePoints } from "../exercise/exercise-points";
import { loadExercises } from "../exercise/load-exercises";
import type { Mark } from "../exercise/marks";
import { revealedWays } from "../habits/reveal";
import type { PicturePoint } from "../stage/frame";

/** A class at work, for the photographs: whom the pages may be opened as, and where they are. */
export type DrawnClass = {
  /** `name=value` of the session cookies. */
  readonly teacher: readonly string[];
  readonly student: readonly string[];
  readonly classId: string;
  readonly homeworkId: string;
  /** A drawing that a habit explains. */
  readonly handInId: string;
  readonly voteId: string;
  readonly voteCode: string;
  /** A plan of the teacher's library, with an earlier version, shared by a word. */
  readonly planId: string;
  readonly planWord: string;
};

const EXERCISES = ["points-on-the-floor", "square-and-parallel"] as const;
/** Who is in the class, how far off their hand is on paper, and the habit that some of them have. */
const STUDENTS: readonly (readonly [name: string, offMm: number, habit?: string])[] = [
  ["Anneke", 0.6],
  ["Basil", 1.4, "plan-depth"],
  ["Cato", 2.2],
  ["Demi", 1.1, "plan-depth"],
  ["Ewout", 0.9],
  ["Floor", 1.8, "plan-depth"],
  ["Gwen", 3.1],
  ["Hidde", 0.4],
  ["Ilse", 1.2],
];
const ADDRESS = "127.0.0.1";
const DAY_MS = 24 * 60 * 60 * 1000;

/** Fills an empty store in a folder: a teacher, nine students, a homework that most have handed in, an open vote. */
export async function drawClass(folder: string): Promise<DrawnClass> {
  const opening = await openStore({ folder });
  if (!opening.ok) throw new Error(opening.refusal.sentence);
  try {
    return await fillStore(opening.store);
  } finally {
    await opening.store.close();
  }
}

async function fillStore(store: Store): Promise<DrawnClass> {
  const auth = makeAuth(store, { secret: await cookieSecret(store), secure: false });
  const teacher = sure(
    await makeFirstTeacher(store, auth, {
      name: "Ida Brandt",
      email: "ida@tidemill.example",
      password: randomUUID(),
      word: "",
      address: ADDRESS,
      atTheServer: true,
    }),
  );
  const { classId, code } = sure(await makeClass(store, teacher.userId, "First year, Thursday"));
  const folder = join(process.cwd(), "exercises");
  const { homeworkId } = sure(
    await setHomework(
      store,
      {
        classId,
        title: "Week one: depth by eye",
        items: EXERCISES.map((exerciseId) => ({ source: "course", exerciseId, weight: 1 })),
        dueAt: new Date(Date.now() + 3 * DAY_MS).toISOString(),
        attempts: 2,
        counts: "best",
        feedback: "at-once",
        strictness: null,
        hints: "allowed",
        weight: 1,
        criteria: [{ name: "Line quality", points: 10 }],
        toWhom: { kind: "all" },
      },
      (id) => courseText(folder, id),
    ),
  );
  const items = await store.db.selectFrom("homework_item").select(["id", "place"]).orderBy("place").execute();
  const course = (await loadExercises(folder)).flatMap((entry) => (entry.ok ? [entry.exercise] : []));
  const exercises = EXERCISES.flatMap((id) => course.find((each) => each.id === id) ?? []);
  const joined: { readonly memberId: string; readonly cookies: readonly string[] }[] = [];
  let shown = "";
  for (const [i, [name, offMm, habit]] of STUDENTS.entries()) {
    const { memberId, cookies } = sure(
      await joinClass(store, auth, { code, name, address: `${ADDRESS}#${i}`, userId: null }),
    );
    joined.push({ memberId, cookies });
    for (const [at, exercise] of exercises.entries()) {
      // Some have not come to the second one yet.
      if (at === 1 && i % 3 === 2) continue;
      const id = randomUUID();
      const marks = {
        format: "plasterline.marks/1",
        exercise: exercise.id,
        version: exercise.version,
        marks: drawn(exercise, offMm, i, habit),
      };
      const itemId = items[at]?.id ?? "";
      sure(await handIn(store, { id, itemId, memberId, marks, madeAt: new Date().toISOString() }));
      if (habit !== undefined && at === 0) shown = id;
    }
  }
  const [exercise] = exercises;
  const point = exercise?.task.marks[2];
  if (!exercise || point === undefined) throw new Error(`The course has no ${EXERCISES[0]}.`);
  const vote = sure(await openVote(store, { classId, exercise, point }));
  const guesses = STUDENTS.map(([, offMm, habit], i) => {
    const at = drawn(exercise, 1 + offMm, i, habit).find((mark) => mark.point === point)?.at as PicturePoint;
    return { round: 1, person: joined[i]?.memberId ?? "", at };
  });
  sure(await putGuesses(store, vote.voteId, guesses));
  const { planId, planWord } = await fillLibrary(store, teacher.userId, folder);
  const student = joined[1]?.cookies ?? [];
  return {
    teacher: teacher.cookies.map(pair),
    student: student.map(pair),
    classId,
    homeworkId,
    handInId: shown,
    voteId: vote.voteId,
    voteCode: vote.code,
    planId,
    planWord,
  };
}

/** Two plans in a teacher's library; the first has an earlier version, and a link. */
async function fillLibrary(store: Store, ownerId: string, folder: string) {
  const [kitchen, landing] = [await textOf(folder, "tallow-kitchen"), await textOf(folder, "ferry-landing")];
  const [planId, otherId] = [randomUUID(), randomUUID()];
  const earlier = kitchen.replace('"level": 4', '"level": 3');
  sure(await keepPlan(store, { ownerId, planId, base: 0, text: earlier, words: "before the table was moved" }));
  sure(await keepPlan(store, { ownerId, planId, base: 1, text: kitchen, words: "" }));
  sure(await keepPlan(store, { ownerId, planId: otherId, base: 0, text: landing, words: "" }));
  return { planId, planWord: sure(await sharePlan(store, planId, true)).value ?? "" };
}

async function textOf(folder: string, id: string): Promise<string> {
  const found = await courseText(folder, id);
  if (found === undefined) throw new Error(`The course has no ${id}.`);
  return found;
}

/** A student's marks: the true places or a habit's, each swayed its own way. */
function drawn(exercise: Exercise, offMm: number, who: number, habit?: string): readonly Mark[] {
  const points = exercisePoints(exercise);
  const way = revealedWays(exercise).find(({ id }) => id === habit);
  const metres = (offMm * exercise.scaleRatio) / 1000;
  return exercise.task.marks.map((point, i) => {
    const [X, Z] = way?.places[i] ?? points.get(point)?.picture ?? [0, 0];
    return { point, at: [X + metres * Math.sin(who * 2.1 + i * 1.3), Z + metres * 0.6 * Math.cos(who * 1.7 + i)] };
  });
}

/** Of a line for `Set-Cookie`, what the browser sends back. */
function pair(line: string): string {
  return line.split(";")[0] ?? "";
}

function sure<Answer extends { readonly ok: boolean }>(answer: Answer): Extract<Answer, { readonly ok: true }> {
  if (!answer.ok) throw new Error(JSON.stringify(answer));
  return answer as Extract<Answer, { readonly ok: true }>;
}
