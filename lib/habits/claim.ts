import type { PicturePoint } from "../stage/frame";

/** A habit claimed over a set of marks. */
export type HabitClaim = {
  readonly id: string;
  /** Odds against no habit at all, or against the other claimed habits alone; capped. */
  readonly odds: number;
  /** The marks that lie nearer to the habit's place than to the true one. */
  readonly marks: readonly string[];
  /** The fitted amount, of habits that have one. */
  readonly amount: number | null;
};

/** What the classifier says of one mark. */
export type MarkHabit = {
  readonly id: string;
  /** Where the habit puts the mark, in the picture. */
  readonly place: PicturePoint;
  /** True where it is only likely at this one mark: to be put as a question. */
  readonly question: boolean;
  readonly amount: number | null;
};
