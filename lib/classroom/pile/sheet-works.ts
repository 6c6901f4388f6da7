import type { Exercise } from "../../exercise/exercise";

/** One exercise of one homework that a sheet may belong to. */
export type SheetWork = {
  readonly itemId: string;
  readonly homeworkId: string;
  readonly homework: string;
  readonly setAt: string;
  readonly dueAt: string | null;
  readonly archived: boolean;
  /** Students it can be handed in for. Of an exercise made for one student alone, that one. */
  readonly memberIds: readonly string[];
  /** Whether the sheet can be nobody else's: the exercise was made for one student. */
  readonly ownVariant: boolean;
  /** Students who are excused from it. */
  readonly excused: readonly string[];
  /** How often it has been handed in, by student; none is left out. */
  readonly handedIn: Readonly<Record<string, number>>;
};

/** What the class knows of a sheet's code. */
export type FoundSheet =
  | {
      readonly kind: "set";
      /** As it was set: what the sheet was printed from. */
      readonly exercise: Exercise;
      /** The newest first. */
      readonly works: readonly SheetWork[];
    }
  /** It was set in other versions, which ask other things. */
  | { readonly kind: "other-version"; readonly title: string; readonly versions: readonly number[] }
  | { readonly kind: "not-set" };

/** The same as JSON carries it: the exercise as frozen text. */
export type SentSheet =
  | Exclude<FoundSheet, { readonly kind: "set" }>
  | (Omit<Extract<FoundSheet, { readonly kind: "set" }>, "exercise"> & { readonly exercise: string });
