import type { Task } from "../exercise/exercise";
import type { Column, Furniture, Masking, Opening, Platform, Stair, Wall } from "../plan/plan";
import type { PlanPoint } from "../stage/frame";
import type { Stage } from "../stage/stage";
import type { Viewer } from "../stage/viewer";
import type { Draft, Thing } from "./draft";

/** Walls of a brought drawing that go on from each other, one between each two corners; they carry their own openings. */
export type BroughtRun = {
  readonly corners: readonly PlanPoint[];
  readonly closed: boolean;
  readonly walls: readonly (Pick<Wall, "thickness" | "onstage"> & {
    readonly openings: readonly Omit<Opening, "id">[];
  })[];
};

/** One change of a draft, as data: it can be kept, sent and done again. Lengths in metres, angles radians. */
export type Edit =
  | { readonly edit: "set-stage"; readonly stage: Stage }
  | { readonly edit: "set-viewer"; readonly viewer: Viewer }
  /** The eye's distance from where the back wall's foot is to stand in the picture; null goes back to a distance of its own. */
  | { readonly edit: "set-back-wall-rise"; readonly rise: number | null }
  | { readonly edit: "set-sheet"; readonly units: "ft-in" | "m"; readonly scale: string }
  /** A run of corners joined by walls, from stage right round to stage left; `closed` joins the last to the first. Names are given. */
  | {
      readonly edit: "add-walls";
      readonly corners: readonly (PlanPoint | string)[];
      readonly closed: boolean;
      readonly height: number;
      readonly thickness: number;
    }
  /** All that was found of a drawing, of one height. What of it the plan cannot take is left out. */
  | { readonly edit: "bring-walls"; readonly runs: readonly BroughtRun[]; readonly height: number }
  | { readonly edit: "add-point"; readonly at: PlanPoint }
  | { readonly edit: "add-opening"; readonly wall: string; readonly opening: Omit<Opening, "id"> }
  | { readonly edit: "add-platform"; readonly platform: Omit<Platform, "id"> }
  | { readonly edit: "add-stair"; readonly stair: Omit<Stair, "id"> }
  | { readonly edit: "add-furniture"; readonly furniture: Omit<Furniture, "id"> }
  | { readonly edit: "add-column"; readonly column: Omit<Column, "id"> }
  | { readonly edit: "add-masking"; readonly masking: Omit<Masking, "id"> }
  /** Changes the members given; `id` renames, and what speaks of the old name follows. */
  | {
      readonly edit: "change-wall";
      readonly id: string;
      readonly change: Partial<Omit<Wall, "from" | "to" | "openings">>;
    }
  | { readonly edit: "change-opening"; readonly wall: string; readonly id: string; readonly change: Partial<Opening> }
  | { readonly edit: "change-platform"; readonly id: string; readonly change: Partial<Platform> }
  /** A new corner in a platform's outline after one that is there, and one taken out; corners are counted from 1. */
  | { readonly edit: "add-platform-corner"; readonly id: string; readonly after: number; readonly at: PlanPoint }
  | { readonly edit: "take-platform-corner"; readonly id: string; readonly corner: number }
  | { readonly edit: "change-stair"; readonly id: string; readonly change: Partial<Stair> }
  | { readonly edit: "change-furniture"; readonly id: string; readonly change: Partial<Furniture> }
  | { readonly edit: "change-column"; readonly id: string; readonly change: Partial<Column> }
  | { readonly edit: "change-masking"; readonly id: string; readonly change: Partial<Masking> }
  | { readonly edit: "rename-corner"; readonly id: string; readonly to: string }
  | { readonly edit: "move-corner"; readonly id: string; readonly to: PlanPoint }
  /** The corner at the far end goes so far that the wall is so long; its direction stays, or turns to `angle` (from + x, counter-clockwise). */
  | { readonly edit: "set-wall-length"; readonly id: string; readonly length: number; readonly angle?: number }
  | { readonly edit: "split-wall"; readonly id: string; readonly at: number }
  | { readonly edit: "move"; readonly things: readonly Thing[]; readonly by: PlanPoint }
  | { readonly edit: "turn"; readonly things: readonly Thing[]; readonly about: PlanPoint; readonly angle: number }
  | { readonly edit: "copy"; readonly things: readonly Thing[]; readonly by: PlanPoint }
  /** A mirrored copy across the line x = `x`, or the things themselves where `copy` is false. */
  | { readonly edit: "mirror"; readonly things: readonly Thing[]; readonly x: number; readonly copy: boolean }
  | { readonly edit: "take-away"; readonly things: readonly Thing[] }
  | { readonly edit: "set-task"; readonly task: Partial<Task>; readonly marksBy?: Draft["marksBy"] }
  | {
      readonly edit: "set-words";
      readonly words: Partial<
        Pick<Draft["exercise"], "id" | "title" | "brief" | "scenario" | "notes" | "unit" | "level">
      >;
    };

/** What came of an edit: the draft after it and the things it made, or why it cannot be done, in a sentence for the author. */
export type Edited =
  | { readonly ok: true; readonly draft: Draft; readonly made: readonly Thing[] }
  | { readonly ok: false; readonly say: string };
