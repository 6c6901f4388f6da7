import type { VoteTable } from "../store/tables/class-tables";

/**
 * How far a vote has come. `open`: marks may be placed and moved. `revealed`: they may not; the room sees where they all
 * are, and the true point is still kept. `closed`: the true point is shown as well.
 */
export type VoteStage = { readonly round: number; readonly state: VoteTable["state"] };

/** `show` the cloud, `tell` the true point (with the cloud, if it was not shown before), or have everyone place it `again`. */
export const VOTE_MOVES = ["show", "tell", "again"] as const;
export type VoteMove = (typeof VOTE_MOVES)[number];

/** After so many rounds a class has talked enough about one corner. */
export const MOST_ROUNDS = 5;

export const FIRST_STAGE: VoteStage = { round: 1, state: "open" };

/** The stage that a move leads to, or null where it leads nowhere from here. */
export function stepVote({ round, state }: VoteStage, move: VoteMove): VoteStage | null {
  if (move === "show") return state === "open" ? { round, state: "revealed" } : null;
  if (move === "tell") return state === "closed" ? null : { round, state: "closed" };
  return state !== "open" && round < MOST_ROUNDS ? { round: round + 1, state: "open" } : null;
}

/** Between these shares of right answers a vote taken again after discussion gains most (Crouch and Mazur 2001, from memory). */
export const WORTH_AGAIN = { least: 0.35, most: 0.7 } as const;

export type Advice = "again" | "explain" | "go-on";

/** What a share of right marks advises: explain first when few have it, discuss and place again, or go on when most have. */
export function adviseOn(shareWithin: number): Advice {
  if (shareWithin < WORTH_AGAIN.least) return "explain";
  return shareWithin <= WORTH_AGAIN.most ? "again" : "go-on";
}
