import type { YesNo } from "./yes-no";

export type PlanTable = {
  /** Made by the browser that first kept it, so that the same plan sent twice is kept once. */
  id: string;
  owner_id: string;
  title: string;
  /** JSON: the exercise file, as its author last kept it. */
  text: string;
  /** How much room the text takes. */
  bytes: number;
  /** What its author wrote beside it when it was last kept; may be empty. */
  words: string;
  /** One more with every change: whoever changes an older one is told. */
  edition: number;
  made_at: string;
  changed_at: string;
  /** When it was thrown away; null while it is there. After a while it is erased. */
  thrown_at: string | null;
  /** The word of its link; null while it is not shared. */
  share_word: string | null;
};

export type PlanVersionTable = {
  id: string;
  plan_id: string;
  /** When it was kept. */
  at: string;
  words: string;
  /** JSON: the exercise file. */
  text: string;
  bytes: number;
  /** Whether it never was the plan itself: it came from a browser that had not seen what was kept from another. */
  beside: YesNo;
};
