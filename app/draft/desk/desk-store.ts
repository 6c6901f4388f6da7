import { createStore } from "zustand/vanilla";
import type { Draft, Thing } from "@/lib/draft/draft";
import type { Edit } from "@/lib/draft/edit";
import { applyEdit } from "@/lib/draft/edits/apply-edit";
import { edit, type History, redo, startHistory, undo } from "@/lib/draft/history";
import { newDraft } from "@/lib/draft/new-draft";
import type { LengthUnits } from "@/lib/measure/length";
import { backOut, CHOOSING, editInHand, editOfOpening, endHand, isUnderWay, type SetDown, setDown } from "../hand/hand";
import { firstGrid, usualMeasures } from "../hand/measures";
import { sayThings } from "../things/thing-words";
import type { Desk, DeskStore } from "./desk";
import { followChosen } from "./follow-chosen";
import { stillThere } from "./still-there";

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
        kept: null,
        measures: usualMeasures(units),
        grid: firstGrid(units),
        drawer: "stage",
      }) as const;
    const goTo = (history: History, said: string) => {
      const chosen = get().chosen.filter((thing) => stillThere(thing, history.draft.exercise.plan));
      set({ history, chosen, grip: null, trying: null, said, trouble: "" });
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
      const edited = change ? applyEdit(withoutMarks(history.draft), change) : null;
      set({ trying: edited?.ok ? edited.draft : null });
    };
    return {
      ...fresh(units),
      apply: (change, { joins = false } = {}) => {
        get().recall();
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
            chosen: followChosen(get().chosen, change, draft.exercise.plan),
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
        const edited = applyEdit(withoutMarks(get().history.draft), change);
        set(edited.ok ? { trying: edited.draft, moves: true, trouble: "" } : { trouble: edited.say });
      },
      undo: () => {
        get().recall();
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
        get().recall();
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
          grip: null,
          hand: CHOOSING,
          aim: null,
          trying: null,
          trouble: "",
          said: chosen.length === 0 ? "Nothing chosen." : `Chosen: ${sayThings(chosen, history.draft.exercise.plan)}.`,
          ...(chosen.length > 0 ? { drawer } : {}),
        })),
      hold: (grip) => set({ grip }),
      showSight: (sight) => set({ sight }),
      setSpot: (spot) => set({ spot }),
      take: (hand) => set({ hand, aim: null, chosen: [], grip: null, trouble: "", trying: null, drawer: "draw" }),
      setAim: (aim, { said, moves = false } = {}) => {
        set(said === undefined ? { aim, moves } : { aim, moves, said });
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
      setDrawer: (drawer) => set({ drawer, spot: null, noted: "" }),
      say: (said) => set({ said, noted: "" }),
      note: (noted) => set({ noted }),
      begin: (units) => set(fresh(units)),
      recall: (mayGoOn = () => true) => {
        const all = get().kept?.goOn(mayGoOn);
        if (all) set({ history: all.history, done: all.done, undone: all.undone, kept: null });
      },
      open: ({ history, done, undone, hand, measures }, kept) => {
        const { units } = history.draft.exercise;
        const begun = history.draft.exercise.plan.corners.size > 0;
        set({
          ...NOTHING_UNDER_WAY,
          history,
          done,
          undone,
          kept: kept ?? null,
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
  moves: false,
  chosen: [],
  grip: null,
  sight: null,
  spot: null,
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

/** A draft that is only looked at while something moves: its marks are not worked out at every step. */
function withoutMarks(draft: Draft): Draft {
  const { exercise } = draft;
  return { ...draft, marksBy: "author", exercise: { ...exercise, task: { ...exercise.task, marks: [], given: [] } } };
}
