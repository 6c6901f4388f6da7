import { createStore, type StoreApi } from "zustand/vanilla";
import type { Draft, Thing } from "@/lib/draft/draft";
import type { Edit, Edited } from "@/lib/draft/edit";
import { applyEdit } from "@/lib/draft/edits/apply-edit";
import { edit, type History, redo, startHistory, undo } from "@/lib/draft/history";
import { newDraft } from "@/lib/draft/new-draft";
import type { Snapped } from "@/lib/draft/snapping/snap";
import type { LengthUnits } from "@/lib/measure/length";
import {
  backOut,
  CHOOSING,
  editInHand,
  editOfOpening,
  endHand,
  type Hand,
  isSameThing,
  isUnderWay,
  type SetDown,
  setDown,
} from "./hand";
import type { Step, Work } from "./kept-plans";
import { firstGrid, type Measures, usualMeasures } from "./measures";
import { stillThere } from "./still-there";
import { sayThings } from "./thing-words";

export const DRAWERS = ["stage", "draw", "things", "notes", "exercise"] as const;
/** What lies open beside the drawing. */
export type Drawer = (typeof DRAWERS)[number];

/** Where the pencil is held: a place of the plan, or a place along a wall for an opening. */
export type Aim =
  | ({ readonly kind: "place" } & Snapped)
  | { readonly kind: "on-wall"; readonly wall: string; readonly at: number };

export type Desk = {
  readonly history: History;
  readonly done: readonly Step[];
  readonly undone: readonly Step[];
  /** The draft as it would be if what is being dragged were let go here; null at rest. */
  readonly trying: Draft | null;
  readonly chosen: readonly Thing[];
  readonly hand: Hand;
  readonly aim: Aim | null;
  readonly measures: Measures;
  /** What the pencil steps along, metres. */
  readonly grid: number;
  readonly drawer: Drawer;
  /** Said to readers of the screen. */
  readonly said: string;
  /** Where what is being dragged would come to, in words. */
  readonly noted: string;
  /** Why the last change could not be made; empty when it could. */
  readonly trouble: string;
  readonly apply: (change: Edit, options?: { readonly joins?: boolean }) => Edited;
  /** Shows a change without making it; null goes back. */
  readonly tryOut: (change: Edit | null) => void;
  readonly undo: () => void;
  readonly redo: () => void;
  /** Chooses things, and opens what is beside the drawing to change them, or another place there. */
  readonly choose: (things: readonly Thing[], drawer?: Drawer) => void;
  readonly take: (hand: Hand) => void;
  readonly setAim: (aim: Aim | null, said?: string) => void;
  /** Sets the pencil down where it is held. */
  readonly setDown: () => void;
  readonly backOut: () => void;
  readonly end: () => void;
  readonly setMeasures: (change: Partial<Measures>) => void;
  readonly setGrid: (grid: number) => void;
  readonly setDrawer: (drawer: Drawer) => void;
  readonly say: (words: string) => void;
  readonly note: (words: string) => void;
  readonly begin: (units: LengthUnits) => void;
  readonly open: (work: Work) => void;
};

export type DeskStore = StoreApi<Desk>;

/** The draft on the sheet: as it is, or as it would be while something is dragged. */
export function shownDraft({ trying, history }: Pick<Desk, "trying" | "history">): Draft {
  return trying ?? history.draft;
}

/** Edits that go on from where things are; of every other kind the last one says it all. */
const ADDING_UP: readonly Edit["edit"][] = ["move", "turn"];

/** The drafting desk: the plan with all that can be undone, what the pencil is doing, and what is chosen. */
export function createDesk(units: LengthUnits): DeskStore {
  return createStore<Desk>((set, get) => {
    const fresh = (units: LengthUnits) =>
      ({
        ...NOTHING_UNDER_WAY,
        history: startHistory(newDraft(units)),
        done: [],
        undone: [],
        measures: usualMeasures(units),
        grid: firstGrid(units),
        drawer: "stage",
      }) as const;
    const goTo = (history: History, said: string) => {
      const chosen = get().chosen.filter((thing) => stillThere(thing, history.draft.exercise.plan));
      set({ history, chosen, trying: null, said, trouble: "" });
    };
    const put = ({ hand, edit: change }: SetDown) => {
      if (!change) set({ hand, trouble: "" });
      else if (get().apply(change).ok) set({ hand });
      showHand();
    };
    /** What is under way stands on the plan and in the picture as if it were done. */
    const showHand = () => {
      const { hand, aim, history, measures } = get();
      if (hand.kind === "choose") return;
      const { plan } = history.draft.exercise;
      const wall = aim?.kind === "on-wall" && plan.walls.find(({ id }) => id === aim.wall);
      const change =
        hand.kind === "opening"
          ? wall && editOfOpening(wall, aim.at, measures)
          : editInHand(hand, aim?.kind === "place" ? aim.at : null, plan, measures);
      const edited = change ? applyEdit(history.draft, change) : null;
      set({ trying: edited?.ok ? edited.draft : null });
    };
    return {
      ...fresh(units),
      apply: (change, { joins = false } = {}) => {
        const { history, done } = get();
        const edited = edit(history, change, { joins });
        if (!edited.ok) {
          set({ trouble: edited.say, said: edited.say, trying: null });
          return edited;
        }
        const { draft } = edited.history;
        if (edited.history !== history) {
          const joined = edited.history.past.length === history.past.length;
          const before = joined ? (done.at(-1) ?? []) : [];
          const step = [...(ADDING_UP.includes(change.edit) ? before : []), change];
          set({
            history: edited.history,
            done: [...(joined ? done.slice(0, -1) : done), step],
            undone: [],
            chosen: get()
              .chosen.map((thing) => renamed(thing, change))
              .filter((thing) => stillThere(thing, draft.exercise.plan)),
          });
        }
        set({ trouble: "", trying: null, said: sayMade(edited.made, draft) });
        return { ok: true, draft, made: edited.made };
      },
      tryOut: (change) => {
        if (change === null) {
          set({ trying: null });
          return;
        }
        const edited = applyEdit(get().history.draft, change);
        set(edited.ok ? { trying: edited.draft, trouble: "" } : { trouble: edited.say });
      },
      undo: () => {
        const { history, done, undone, hand } = get();
        if (isUnderWay(hand)) {
          get().backOut();
          return;
        }
        const step = done.at(-1);
        const before = undo(history);
        if (before === history) return;
        set({ done: done.slice(0, -1), undone: step ? [...undone, step] : undone });
        goTo(before, "Undone.");
      },
      redo: () => {
        const { history, done, undone } = get();
        const step = undone.at(-1);
        const after = redo(history);
        if (after === history) return;
        set({ done: step ? [...done, step] : done, undone: undone.slice(0, -1) });
        goTo(after, "Done again.");
      },
      choose: (chosen, drawer = "things") =>
        set(({ history }) => ({
          chosen,
          hand: CHOOSING,
          aim: null,
          trying: null,
          trouble: "",
          said: chosen.length === 0 ? "Nothing chosen." : `Chosen: ${sayThings(chosen, history.draft.exercise.plan)}.`,
          ...(chosen.length > 0 ? { drawer } : {}),
        })),
      take: (hand) => set({ hand, aim: null, chosen: [], trouble: "", trying: null, drawer: "draw" }),
      setAim: (aim, said) => {
        set(said === undefined ? { aim } : { aim, said });
        showHand();
      },
      setDown: () => {
        const { hand, aim, history, measures } = get();
        const { plan } = history.draft.exercise;
        if (aim?.kind === "on-wall") {
          const wall = plan.walls.find(({ id }) => id === aim.wall);
          if (wall) put({ hand, edit: editOfOpening(wall, aim.at, measures) });
        } else if (aim) put(setDown(hand, aim.at, plan, measures));
      },
      backOut: () => {
        set(({ hand }) => ({ hand: backOut(hand), aim: null, trying: null, trouble: "" }));
        showHand();
      },
      end: () => put(endHand(get().hand, get().measures)),
      setMeasures: (change) => {
        set(({ measures }) => ({ measures: { ...measures, ...change } }));
        showHand();
      },
      setGrid: (grid) => set({ grid }),
      setDrawer: (drawer) => set({ drawer }),
      say: (said) => set({ said, noted: "" }),
      note: (noted) => set({ noted }),
      begin: (units) => set(fresh(units)),
      open: ({ history, done, undone, hand, measures }) => {
        const { units } = history.draft.exercise;
        const begun = history.draft.exercise.plan.corners.size > 0;
        set({
          ...NOTHING_UNDER_WAY,
          history,
          done,
          undone,
          hand,
          measures: measures ?? usualMeasures(units),
          grid: firstGrid(units),
          drawer: begun || hand.kind !== "choose" ? "draw" : "stage",
        });
        showHand();
      },
    };
  });
}

const NOTHING_UNDER_WAY = {
  trying: null,
  chosen: [],
  hand: CHOOSING,
  aim: null,
  said: "",
  noted: "",
  trouble: "",
} as const;

function sayMade(made: readonly Thing[], { exercise }: Draft): string {
  const [first] = made.filter(({ kind }) => kind !== "corner");
  const named = first ?? made[0];
  if (!named) return "";
  const alike = made.filter(({ kind }) => kind === named.kind);
  return alike.length > 1
    ? `${alike.length} ${named.kind}s are on the plan.`
    : `On the plan: ${sayThings(alike, exercise.plan)}.`;
}

/** What is chosen goes by its new name after an edit that gives it one. */
function renamed(thing: Thing, change: Edit): Thing {
  if (change.edit === "rename-corner")
    return thing.kind === "corner" && thing.id === change.id ? { ...thing, id: change.to } : thing;
  if (!("change" in change) || change.change.id === undefined) return thing;
  const { id } = change.change;
  if (change.edit === "change-wall" && thing.kind === "opening" && thing.wall === change.id)
    return { ...thing, wall: id };
  const changed: Thing =
    change.edit === "change-opening"
      ? { kind: "opening", wall: change.wall, id: change.id }
      : { kind: KIND_OF_CHANGE[change.edit], id: change.id };
  return isSameThing(thing, changed) ? { ...thing, id } : thing;
}

const KIND_OF_CHANGE = {
  "change-wall": "wall",
  "change-platform": "platform",
  "change-stair": "stair",
  "change-furniture": "furniture",
  "change-column": "column",
  "change-masking": "masking",
} as const;

/** Chosen or not, one more or one less. */
export function withThing(chosen: readonly Thing[], thing: Thing): readonly Thing[] {
  const without = chosen.filter((each) => !isSameThing(each, thing));
  return without.length < chosen.length ? without : [...chosen, thing];
}
