import { isRecord } from "@/app/_parts/kept-work/read-attempt";
import { keysOf, PLAN_KEY, put, type Shelf, take } from "@/app/_parts/kept-work/shelf";
import type { Draft } from "@/lib/draft/draft";
import type { Edit } from "@/lib/draft/edit";
import { edit, type History, startHistory, undo } from "@/lib/draft/history";
import { writeDraft } from "@/lib/draft/write-draft";
import { forgetVersions } from "../exercise/kept-versions";
import { CHOOSING, type Hand } from "../hand/hand";
import type { Measures } from "../hand/measures";
import { forgetLink } from "../library/kept-links";

const OPEN_KEY = "plasterline.draft.open";
const FORMAT = "plasterline.draft/1";

/** The most steps that can still be undone after a reload; in the page itself there is no end to them. */
const MOST_STEPS = 200;

/** One step of a plan's making: an edit, or those that a drag or a held key joined into one. */
export type Step = readonly Edit[];

/** A plan under way, as the page has it. */
export type Work = {
  readonly history: History;
  readonly done: readonly Step[];
  /** The one to come back first at the end. */
  readonly undone: readonly Step[];
  readonly hand: Hand;
  readonly measures: Measures | null;
};

export type KeptPlan = { readonly key: string; readonly title: string; readonly changed: string };

/** Keeps a plan; false when the storage refuses. */
export function keepPlan(shelf: Shelf, key: string, work: Work, now: string): boolean {
  const { history, hand, measures } = work;
  const done = work.done.slice(-Math.min(MOST_STEPS, history.past.length));
  const base = history.past[history.past.length - done.length] ?? history.draft;
  const kept = put(shelf, PLAN_KEY + key, {
    format: FORMAT,
    title: history.draft.exercise.title,
    changed: now,
    now: writeDraft(history.draft),
    base: writeDraft(done.length === 0 ? history.draft : base),
    done,
    undone: work.undone,
    hand,
    measures,
  });
  return put(shelf, OPEN_KEY, key) && kept;
}

/** The plans kept, the one changed last first. */
export function keptPlans(shelf: Shelf): readonly KeptPlan[] {
  return keysOf(shelf, PLAN_KEY)
    .flatMap((name): KeptPlan[] => {
      const kept = take(shelf, name);
      if (!isRecord(kept) || typeof kept.title !== "string" || typeof kept.changed !== "string") return [];
      return [{ key: name.slice(PLAN_KEY.length), title: kept.title, changed: kept.changed }];
    })
    .sort((a, b) => (a.changed < b.changed ? 1 : -1));
}

/** When the plan of a key was kept last, which tells one keeping from another; null where there is none. */
export function keptAt(shelf: Shelf, key: string): string | null {
  const kept = take(shelf, PLAN_KEY + key);
  return isRecord(kept) && typeof kept.changed === "string" ? kept.changed : null;
}

/** The plan that was open last; null where there is none. */
export function lastOpen(shelf: Shelf): string | null {
  const key = take(shelf, OPEN_KEY);
  return typeof key === "string" && shelf.getItem(PLAN_KEY + key) !== null ? key : null;
}

/** A key that no kept plan has. */
export function freshKey(shelf: Shelf): string {
  const taken = keysOf(shelf, PLAN_KEY).map((name) => Number(name.slice(PLAN_KEY.length)) || 0);
  return String(Math.max(0, ...taken) + 1);
}

/** Has the desk open a kept plan next. */
export function openNext(shelf: Shelf, key: string): boolean {
  return put(shelf, OPEN_KEY, key);
}

/** A kept plan as it is, without its steps; null for none. `read` reads the text of a plan. */
export function keptDraft(shelf: Shelf, key: string, read: (text: string) => Draft | null): Draft | null {
  const kept = take(shelf, PLAN_KEY + key);
  return isRecord(kept) && kept.format === FORMAT ? read(JSON.stringify(kept.now)) : null;
}

/** Forgets a plan, its versions and where it lies in a library: the next plan may get its key. */
export function forgetPlan(shelf: Shelf, key: string): void {
  shelf.removeItem(PLAN_KEY + key);
  forgetVersions(shelf, key);
  forgetLink(shelf, key);
}

/** A kept plan as it is, and what leads to all that can be undone: that takes a while where many steps were kept. */
export type KeptWork = {
  /** Without its steps. */
  readonly work: Work;
  readonly mayUndo: boolean;
  readonly mayRedo: boolean;
  /** Goes on with the steps as long as it may, and at least with one; the whole work once all are done. Its draft is that of `work`. */
  readonly goOn: (mayGoOn: () => boolean) => Work | null;
};

/**
 * A kept plan, or null for none. `read` reads the text of a plan. Its steps are done again from where they began; should that not
 * lead to the plan as it was kept, the plan counts, and its steps are gone.
 */
export function openKept(shelf: Shelf, key: string, read: (text: string) => Draft | null): KeptWork | null {
  const kept = take(shelf, PLAN_KEY + key);
  const draft = keptDraft(shelf, key, read);
  if (!isRecord(kept) || !draft) return null;
  const rest = { hand: readHand(kept.hand), measures: (kept.measures ?? null) as Measures | null };
  const [done, undone] = [stepsOf(kept.done), stepsOf(kept.undone)];
  const work: Work = { history: startHistory(draft), done: [], undone: [], ...rest };
  const steps = [...done, ...undone.toReversed()];
  const reached = (again: History): Work => {
    const history = undone.reduce(undo, again);
    const same = JSON.stringify(writeDraft(history.draft)) === JSON.stringify(kept.now);
    return same ? { history: { ...history, draft }, done, undone, ...rest } : work;
  };
  let now: History | null = null;
  let at = 0;
  const goOn = (mayGoOn: () => boolean): Work | null => {
    if (steps.length === 0) return work;
    if (!now) {
      const base = read(JSON.stringify(kept.base));
      if (!base) return work;
      now = startHistory(base);
    }
    do {
      const step = steps[at];
      now = step ? doAgain(now, step) : now;
      if (!now) return work;
      at++;
    } while (at < steps.length && mayGoOn());
    return at < steps.length ? null : reached(now);
  };
  return { work, mayUndo: done.length > 0, mayRedo: undone.length > 0, goOn };
}

/** A kept plan with all that can be undone, or null for none. */
export function keptPlan(shelf: Shelf, key: string, read: (text: string) => Draft | null): Work | null {
  return openKept(shelf, key, read)?.goOn(() => true) ?? null;
}

/** One step done again; null where it cannot be, or is no step of its own. */
function doAgain(history: History, step: Step): History | null {
  let now = history;
  try {
    for (const [i, change] of step.entries()) {
      const edited = edit(now, change, { joins: i > 0 });
      if (!edited.ok) return null;
      now = edited.history;
    }
  } catch {
    // What was kept is not what this page would have kept.
    return null;
  }
  return now.past.length === history.past.length + 1 ? now : null;
}

function stepsOf(value: unknown): readonly Step[] {
  const sound =
    Array.isArray(value) &&
    value.every((step) => Array.isArray(step) && step.every((each) => isRecord(each) && typeof each.edit === "string"));
  return sound ? (value as readonly Step[]) : [];
}

function readHand(value: unknown): Hand {
  const corners = isRecord(value) && value.kind === "walls" && Array.isArray(value.corners) ? value.corners : [];
  const sound = corners.every(
    (corner) => typeof corner === "string" || (Array.isArray(corner) && corner.every(Number.isFinite)),
  );
  return sound && corners.length > 0 ? ({ kind: "walls", corners } as Hand) : CHOOSING;
}
