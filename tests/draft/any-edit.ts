import fc from "fast-check";
import type { Draft, Thing } from "@/lib/draft/draft";
import type { Edit } from "@/lib/draft/edit";
import { newDraft } from "@/lib/draft/new-draft";
import { STRICTNESSES } from "@/lib/exercise/exercise";
import { namePoints } from "@/lib/plan/name-points";
import { anyAddition } from "./any-addition";
import { angle, length, one, pick, place } from "./any-length";
import { edited, fiveWalls } from "./edits/five-walls";
import type { Making } from "./making";

/** Whole sets, stages with a wall or two, and empty ones; with marks that are worked out, and with an author's. */
export const anyStart: fc.Arbitrary<Draft> = fc
  .record({ units: fc.constantFrom("ft-in" as const, "m" as const), walled: fc.boolean(), byAuthor: fc.boolean() })
  .map(({ units, walled, byAuthor }) => {
    const started = walled ? fiveWalls() : newDraft(units);
    const { exercise } = edited(started, { edit: "set-sheet", units, scale: "1:48" });
    const draft: Draft = { ...started, exercise };
    const { marks } = exercise.task;
    return byAuthor ? edited(draft, { edit: "set-task", task: { marks, given: marks.slice(0, 3) } }) : draft;
  });

const newName = fc.constantFrom("Q", "7", "entry", "A", "W1", "P1", "a b", "", "__proto__", "toString", "door", "Ä-1");

/** Everything that can be chosen on a draft. */
export function everything({ exercise: { plan } }: Draft): readonly Thing[] {
  const of = (kind: Exclude<Thing["kind"], "opening">, items: readonly { readonly id: string }[]) =>
    items.map(({ id }): Thing => ({ kind, id }));
  return [
    ...[...plan.corners.keys()].map((id): Thing => ({ kind: "corner", id })),
    ...of("wall", plan.walls),
    ...plan.walls.flatMap(({ id: wall, openings }) => openings.map(({ id }): Thing => ({ kind: "opening", wall, id }))),
    ...of("platform", plan.platforms),
    ...of("stair", plan.stairs),
    ...of("furniture", plan.furniture),
    ...of("column", plan.columns),
    ...of("masking", plan.masking),
  ];
}

const someThings = fc.array(pick, { minLength: 1, maxLength: 4 });
const choose = (draft: Draft, picks: readonly number[]) => picks.flatMap((n) => one(everything(draft), n) ?? []);

/** The `change-` edit of a thing with a new name, a new height or a new base. */
function changeOf(thing: Thing, name: string | null, height: number): Edit {
  const id = name === null ? {} : { id: name };
  if (thing.kind === "corner") return { edit: "rename-corner", id: thing.id, to: name ?? thing.id };
  if (thing.kind === "opening")
    return { edit: "change-opening", wall: thing.wall, id: thing.id, change: { ...id, head: height } };
  if (thing.kind === "stair") return { edit: "change-stair", id: thing.id, change: { ...id, riser: height / 10 } };
  return { edit: `change-${thing.kind}`, id: thing.id, change: { ...id, height } };
}

const changing: fc.Arbitrary<Making> = fc.oneof(
  fc.tuple(pick, fc.option(newName), length(1, 5)).map(
    ([n, name, height]): Making =>
      (draft) => {
        const thing = one(everything(draft), n);
        return thing ? changeOf(thing, name, height) : { edit: "rename-corner", id: "none", to: "Q" };
      },
  ),
  fc.tuple(pick, place).map(
    ([n, to]): Making =>
      (draft) => ({
        edit: "move-corner",
        id: one([...draft.exercise.plan.corners.keys()], n) ?? "none",
        to,
      }),
  ),
  fc.tuple(pick, fc.integer({ min: 0, max: 7 }), fc.option(place)).map(
    ([n, corner, at]): Making =>
      (draft) => {
        const id = one(draft.exercise.plan.platforms, n)?.id ?? "none";
        return at === null
          ? { edit: "take-platform-corner", id, corner }
          : { edit: "add-platform-corner", id, after: corner, at };
      },
  ),
  fc.tuple(pick, length(0.5, 6), fc.option(angle)).map(
    ([n, long, turned]): Making =>
      (draft) => ({
        edit: "set-wall-length",
        id: one(draft.exercise.plan.walls, n)?.id ?? "none",
        length: long,
        ...(turned === null ? {} : { angle: turned }),
      }),
  ),
  fc.tuple(pick, length(0, 5)).map(
    ([n, at]): Making =>
      (draft) => ({
        edit: "split-wall",
        id: one(draft.exercise.plan.walls, n)?.id ?? "none",
        at,
      }),
  ),
);

const placing: fc.Arbitrary<Making> = fc.oneof(
  fc.tuple(someThings, place).map(
    ([n, by]): Making =>
      (draft) => ({ edit: "move", things: choose(draft, n), by }),
  ),
  fc.tuple(someThings, place, angle).map(
    ([n, about, by]): Making =>
      (draft) => ({
        edit: "turn",
        things: choose(draft, n),
        about,
        angle: by,
      }),
  ),
  fc.tuple(someThings, place).map(
    ([n, by]): Making =>
      (draft) => ({ edit: "copy", things: choose(draft, n), by }),
  ),
  fc.tuple(someThings, fc.oneof(fc.constant(0), length(-3, 3)), fc.boolean()).map(
    ([n, x, copy]): Making =>
      (draft) => ({
        edit: "mirror",
        things: choose(draft, n),
        x,
        copy,
      }),
  ),
  someThings.map(
    (n): Making =>
      (draft) => ({ edit: "take-away", things: choose(draft, n.slice(0, 2)) }),
  ),
);

/** Some of the named points of a draft. */
function points({ exercise: { plan, stage } }: Draft, picks: readonly number[]): readonly string[] {
  const names = [...namePoints(plan, stage).keys()];
  return [...new Set(picks.flatMap((n) => one(names, n) ?? []))];
}

const setting: fc.Arbitrary<Making> = fc.oneof(
  fc.tuple(length(5, 15), length(3, 8), length(4, 10), fc.constantFrom(0, 1 / 20, 0.033)).map(
    ([width, high, depth, rake]): Making =>
      () => ({
        edit: "set-stage",
        stage: { opening: { width, height: high }, depth, apron: 1, rake },
      }),
  ),
  fc.tuple(length(4, 20), length(1, 4), fc.boolean()).map(
    ([distance, eyeHeight, keep]): Making =>
      ({ exercise }) => ({
        edit: "set-viewer",
        viewer: { distance: keep ? exercise.viewer.distance : distance, eyeHeight, offset: 0 },
      }),
  ),
  fc.option(length(0.3, 1.5)).map(
    (rise): Making =>
      () => ({ edit: "set-back-wall-rise", rise }),
  ),
  fc.constantFrom(["ft-in", "1/2in=1ft"] as const, ["m", "1:50"] as const, ["m", "1:0"] as const).map(
    ([units, scale]): Making =>
      () => ({ edit: "set-sheet", units, scale }),
  ),
  fc.tuple(fc.array(pick, { maxLength: 6 }), fc.array(pick, { maxLength: 3 })).map(
    ([marks, given]): Making =>
      (draft) => ({
        edit: "set-task",
        task: { marks: points(draft, marks), given: points(draft, given) },
      }),
  ),
  fc.constantFrom(...STRICTNESSES).map(
    (strictness): Making =>
      () => ({ edit: "set-task", task: { strictness }, marksBy: "order" }),
  ),
  fc.constantFrom("picture-to-plan" as const, "plan-to-picture" as const).map(
    (kind): Making =>
      () => ({ edit: "set-task", task: { kind } }),
  ),
  fc.string({ maxLength: 20 }).map(
    (title): Making =>
      () => ({ edit: "set-words", words: { title, level: 3 } }),
  ),
);

/** Any edit there is, in the proportions of a morning's drafting. */
export const anyMaking: fc.Arbitrary<Making> = fc.oneof(
  { arbitrary: anyAddition, weight: 4 },
  { arbitrary: changing, weight: 3 },
  { arbitrary: placing, weight: 4 },
  { arbitrary: setting, weight: 2 },
);
