import type { Problem } from "./problem";

/** What the sense checks say: a fault stops an exercise from being used; a note is for the author to weigh. */
export type Finding = Problem & { readonly weight: "fault" | "note" };

export function fault(where: string, message: string, hint: string): Finding {
  return { where, message, hint, weight: "fault" };
}

export function note(where: string, message: string, hint: string): Finding {
  return { where, message, hint, weight: "note" };
}
