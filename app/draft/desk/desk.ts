import type { StoreApi } from "zustand/vanilla";
import type { Draft, Thing } from "@/lib/draft/draft";
import type { Edit, Edited } from "@/lib/draft/edit";
import type { MarkPlane } from "@/lib/draft/exercise-desk/mark-places";
import type { History } from "@/lib/draft/history";
import type { HandleName } from "@/lib/draft/reshape/handle";
import type { Sight } from "@/lib/draft/sense/sightlines/sight";
import type { Snapped } from "@/lib/draft/snapping/snap";
import type { LengthUnits } from "@/lib/measure/length";
import type { Hand } from "../hand/hand";
import type { Measures } from "../hand/measures";
import type { KeptWork, Step, Work } from "../kept/kept-plans";

export const DRAWERS = ["stage", "draw", "things", "notes", "exercise"] as const;
/** What lies open beside the drawing. */
export type Drawer = (typeof DRAWERS)[number];

/** Where the pencil is held: a place of the plan, or a place along a wall for an opening. */
export type Aim =
  | ({ readonly kind: "place" } & Snapped)
  | { readonly kind: "on-wall"; readonly wall: string; readonly at: number };

export type Spot = { readonly plane: MarkPlane; readonly name: string };

export type Desk = {
  readonly history: History;
  readonly done: readonly Step[];
  readonly undone: readonly Step[];
  /** What leads to the steps of a plan that was kept, until they have been done again. */
  readonly kept: KeptWork | null;
  /** The draft as it would be if what is being dragged were let go here; null at rest. */
  readonly trying: Draft | null;
  /** Whether what is aimed or dragged is on its way: what is written of it may wait until it rests. */
  readonly moves: boolean;
  readonly chosen: readonly Thing[];
  /** The handle of the one chosen thing that is held; null for none. */
  readonly grip: HandleName | null;
  /** What the seat that is looked from sees; null while no seat is chosen, or its drawer is closed. */
  readonly sight: Sight | null;
  /** The point that was chosen last on a drawing while the exercise is made. */
  readonly spot: Spot | null;
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
  /** Takes hold of a handle of what is chosen, or lets it go. */
  readonly hold: (grip: HandleName | null) => void;
  readonly showSight: (sight: Sight | null) => void;
  readonly setSpot: (spot: Spot | null) => void;
  readonly take: (hand: Hand) => void;
  /** Holds the pencil there. `moves` tells that it is on its way, by a pointer or by keys, and not set there by a form. */
  readonly setAim: (aim: Aim | null, how?: { readonly said?: string; readonly moves?: boolean }) => void;
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
  /** Opens a plan; `kept` is what leads to its steps, where they are not there yet. */
  readonly open: (work: Work, kept?: KeptWork) => void;
  /** Goes on with the steps of the plan that was opened, as long as it may; all of them before anything is done to it. */
  readonly recall: (mayGoOn?: () => boolean) => void;
};

export type DeskStore = StoreApi<Desk>;

/** The draft on the sheet: as it is, or as it would be while something is dragged. */
export function shownDraft({ trying, history }: Pick<Desk, "trying" | "history">): Draft {
  return trying ?? history.draft;
}
