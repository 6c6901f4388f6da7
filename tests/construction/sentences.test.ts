import { describe, expect, it } from "vitest";
import type { Board } from "@/lib/construction/board";
import { constructPoint } from "@/lib/construction/construct-point";
import { proved } from "./proved";
import { smallBoard } from "./small-board";
import { alone, column, withDoor } from "./small-plans";

describe("the sentences", () => {
  const said = (board: Board, name: string) => proved(board, name).steps.map((step) => step.say);

  it("of a place by the half distance point", () => {
    expect(said(smallBoard({ plan: alone(1.3, 3) }), "Q.foot")).toEqual([
      "Measure 1300 mm stage left of the centre line on the plaster line, where sizes are true.",
      "Draw from mark 1 to the CVP: lines square to the plaster line all go there.",
      "Measure 1500 mm to the left of mark 1, on the plaster line.",
      "Draw from mark 3 to the right half distance point: it lies 1500 mm left of mark 1, half the depth of 3000 mm, and half the distance goes with half the depth.",
      "Lines 2 and 4 cross at the foot of Q.",
    ]);
  });

  it("of a place on the apron", () => {
    expect(said(smallBoard({ viewer: { distance: 5 }, plan: alone(1.3, -0.6) }), "Q.foot")).toEqual([
      "Measure 1300 mm stage left of the centre line on the plaster line, where sizes are true.",
      "Draw from the CVP through mark 1 and run the line on forward, over the apron: lines square to the plaster line all go there.",
      "Measure 600 mm to the right of mark 1, on the plaster line.",
      "Draw from the right distance point through mark 3 and run the line on forward: it lies 600 mm right of mark 1, the whole way to the plaster line, and lines at 45° go there.",
      "Lines 2 and 4 cross at the foot of Q.",
    ]);
  });

  it("of a height by the horizon", () => {
    expect(said(smallBoard({ plan: column(7, 8), placed: ["K1.centre.foot"] }), "K1.centre.top")).toEqual([
      "Draw upright from the centre of K1's foot: uprights stay upright.",
      "Begin at the right corner of the opening: the opening's edge is an upright at true size.",
      "Measure 3000 mm up that edge, true size.",
      "Draw from the right corner of the opening through the centre of K1's foot and on to the horizon.",
      "Draw the horizon level through the CVP: it cuts every upright at eye height.",
      "Lines 4 and 5 cross where level lines of that direction vanish.",
      "Draw from mark 3 to crossing 6: the height keeps its ratio to the eye height all the way.",
      "Lines 1 and 7 cross at the centre of K1's top.",
    ]);
  });

  it("speak of marks and lines that are there", () => {
    const board = smallBoard({ plan: alone(1.3, 1), favour: "crossing diagonals" });
    const { steps } = proved(board, "Q.foot");
    for (const [i, { say }] of steps.entries())
      for (const [, kind, number] of say.matchAll(/\b(mark|crossing|step|[Ll]ines?|and) (\d+)\b/g)) {
        const step = steps[Number(number) - 1];
        expect(Number(number)).toBeLessThanOrEqual(i);
        const expected = { mark: "measure", crossing: "meet" }[kind as string] ?? "line";
        expect(step?.do).toBe(expected);
      }
  });
});

describe("a construction", () => {
  it("is the same each time, and leaves the board as it was", () => {
    const board = smallBoard({ plan: withDoor, placed: ["A.foot"] });
    const before = JSON.stringify([...board.placed]);
    expect(constructPoint(board, "W1.door.end.head")).toEqual(constructPoint(board, "W1.door.end.head"));
    expect(JSON.stringify([...board.placed])).toBe(before);
  });

  it("stays on the paper where it can", () => {
    const { steps } = proved(smallBoard({ plan: alone(-2.2, 3) }), "Q.foot");
    const across = steps.flatMap((step) => (step.do === "line" ? step.through : [step.at])).map(([X]) => Math.abs(X));
    expect(Math.max(...across)).toBeLessThanOrEqual(6.25);
  });
});
