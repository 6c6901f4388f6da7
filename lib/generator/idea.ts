import type { TaskKind } from "../exercise/exercise";
import type { Plan } from "../plan/plan";
import type { Frame } from "./choose-frame";
import type { Wanted } from "./choose-marks";
import type { Dice } from "./dice";
import type { Demands, Level } from "./levels";

/** What a draw is made with. */
export type Draw = {
  readonly dice: Dice;
  readonly level: Level;
  readonly demands: Demands;
  readonly frame: Frame;
  /** The most marks to ask. */
  readonly most: number;
  /** How far upstage the set may go, feet. */
  readonly deepest: number;
};

/** A set with what to ask about it, before it is known whether enough of that can be asked fairly. */
export type Idea = {
  readonly plan: Plan;
  readonly kind: TaskKind;
  readonly given: readonly string[];
  readonly wanted: readonly Wanted[];
  readonly skills: readonly string[];
  /** Wrong ideas that the set is there for: it must be able to tell them. */
  readonly mustTell?: readonly string[];
  readonly place: "floor" | "room";
  /** What is asked, in plain words, for the marks that were chosen. */
  brief(marks: readonly string[]): string;
};

/** Thinks out one exercise of a unit; null where the draw gives no set. */
export type ThinkOut = (draw: Draw) => Idea | null;
