import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  adviseOn,
  FIRST_STAGE,
  MOST_ROUNDS,
  stepVote,
  VOTE_MOVES,
  type VoteMove,
  type VoteStage,
} from "@/lib/classroom/live/vote-stage";

const at = (round: number, state: VoteStage["state"]): VoteStage => ({ round, state });

describe("how a vote goes on", () => {
  const cases: readonly (readonly [VoteStage, VoteMove, VoteStage | null])[] = [
    [at(1, "open"), "show", at(1, "revealed")],
    [at(1, "open"), "tell", at(1, "closed")],
    [at(1, "open"), "again", null],
    [at(1, "revealed"), "show", null],
    [at(1, "revealed"), "tell", at(1, "closed")],
    [at(1, "revealed"), "again", at(2, "open")],
    [at(2, "open"), "show", at(2, "revealed")],
    [at(2, "revealed"), "tell", at(2, "closed")],
    [at(2, "closed"), "show", null],
    [at(2, "closed"), "tell", null],
    [at(2, "closed"), "again", at(3, "open")],
    [at(MOST_ROUNDS, "closed"), "again", null],
  ];
  it.each(cases)("%o, %s: %o", (stage, move, next) => {
    expect(stepVote(stage, move)).toEqual(next);
  });

  it("never goes back, and marks are taken in a round once only", () => {
    fc.assert(
      fc.property(fc.array(fc.constantFrom(...VOTE_MOVES), { maxLength: 40 }), (moves) => {
        const order = ["open", "revealed", "closed"];
        let stage = FIRST_STAGE;
        for (const move of moves) {
          const next = stepVote(stage, move);
          if (!next) continue;
          const forward =
            next.round > stage.round ||
            (next.round === stage.round && order.indexOf(next.state) > order.indexOf(stage.state));
          expect(forward).toBe(true);
          expect(next.round).toBeLessThanOrEqual(MOST_ROUNDS);
          stage = next;
        }
      }),
    );
  });
});

describe("whether to place again", () => {
  // Crouch and Mazur 2001 advise discussion between about 35 and 70 per cent right; the figures are from memory.
  it.each([
    [0, "explain"],
    [0.34, "explain"],
    [0.35, "again"],
    [0.5, "again"],
    [0.7, "again"],
    [0.71, "go-on"],
    [1, "go-on"],
  ] as const)("%d right: %s", (share, advice) => {
    expect(adviseOn(share)).toBe(advice);
  });
});
