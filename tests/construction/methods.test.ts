import { describe, expect, it } from "vitest";
import type { Board } from "@/lib/construction/board";
import { proved } from "./proved";
import { smallBoard } from "./small-board";
import { alone, column, farOff, flat, platform, raking, stair, wall, withDoor } from "./small-plans";

describe("the method chosen", () => {
  it.each<[what: string, board: Board, point: string, method: string, steps: number]>([
    ["on the plaster line", smallBoard({ plan: alone(1.3, 0) }), "Q.foot", "true size", 1],
    ["at a corner of the opening", smallBoard({ plan: alone(-4, 0) }), "Q.foot", "on the sheet already", 1],
    ["at a corner of the apron", smallBoard({ plan: alone(4, -1) }), "Q.foot", "on the sheet already", 1],
    // the distance points at 5 m are on the paper
    ["with the eye near", smallBoard({ viewer: { distance: 5 }, plan: alone(1.3, 3) }), "Q.foot", "distance point", 5],
    ["with the eye farther off", smallBoard({ plan: alone(1.3, 3) }), "Q.foot", "half distance point", 5],
    // of the third, 5.3 m, and the quarter, 4 m, the third begins at the foot of the centre line: 1.3 = 3.9 / 3
    [
      "where a third of the depth is the offset",
      smallBoard({ viewer: { distance: 16 }, plan: alone(1.3, 3.9) }),
      "Q.foot",
      "third distance point",
      4,
    ],
    [
      "with the eye far off",
      smallBoard({ viewer: { distance: 20 }, plan: alone(1.3, 3) }),
      "Q.foot",
      "quarter distance point",
      5,
    ],
    // no part of the distance fits the paper: the quarter is at 10 m
    [
      "with the eye very far off",
      smallBoard({ viewer: { distance: 40 }, plan: alone(1.3, 3) }),
      "Q.foot",
      "floor diagonals",
      8,
    ],
    // the diagonal from the right corner is at x = 4 (1 - 2 y/8): at 2 when 2 m deep
    ["on the floor's diagonal", smallBoard({ plan: alone(2, 2) }), "Q.foot", "floor diagonal", 4],
    ["in the middle of the floor", smallBoard({ plan: alone(0, 4) }), "Q.foot", "floor diagonal", 3],
    [
      "in the middle of the floor, in a lesson on diagonals",
      smallBoard({ plan: alone(0, 4), favour: "crossing diagonals" }),
      "Q.foot",
      "crossing diagonals",
      3,
    ],
    ["at the back wall", smallBoard({ plan: alone(1.3, 8) }), "Q.foot", "back wall's foot", 4],
    [
      "before the plaster line",
      smallBoard({ plan: alone(1.3, -0.6) }),
      "Q.foot",
      "ray run forward, half distance point",
      5,
    ],
    [
      "of a depth that is on the sheet",
      smallBoard({
        plan: {
          corners: new Map([
            ["P", [-2, 3]],
            ["Q", [1.3, 3]],
          ]),
        },
        placed: ["P.foot"],
      }),
      "Q.foot",
      "level across",
      4,
    ],
    [
      "on a raking wall whose near end is there",
      smallBoard({ plan: raking, placed: ["A.foot"] }),
      "B.foot",
      "wall's vanishing point",
      4,
    ],
    [
      "of its far top, over its foot",
      smallBoard({ plan: raking, placed: ["A.foot", "A.top", "B.foot"] }),
      "B.top",
      "top edge to the wall's vanishing point",
      3,
    ],
    // the quarter distance point is at 10 m, the measuring point at D (sqrt(26) - 5) = 3.96 m
    [
      "on a wall nearly parallel to the plaster line",
      smallBoard({ viewer: { distance: 40 }, plan: { ...flat, walls: [wall()] } }),
      "B.foot",
      "measuring point",
      6,
    ],
    [
      "on the same wall listed the other way",
      smallBoard({ viewer: { distance: 40 }, plan: { ...flat, walls: [wall({ from: "B", to: "A" })] } }),
      "B.foot",
      "measuring point",
      6,
    ],
    [
      "of a top over its foot",
      smallBoard({ plan: column(1.3, 3), placed: ["K1.centre.foot"] }),
      "K1.centre.top",
      "true height",
      5,
    ],
    // straight before the eye the upright and the ray are one line
    [
      "of a top straight before the eye",
      smallBoard({ plan: column(0, 3), placed: ["K1.centre.foot"] }),
      "K1.centre.top",
      "half distance point",
      5,
    ],
    // 7 m off the centre line the plaster line is off the paper: only the horizon tells the height
    [
      "of a top far off",
      smallBoard({ plan: column(7, 8), placed: ["K1.centre.foot"] }),
      "K1.centre.top",
      "horizon ratio",
      8,
    ],
    [
      "of a jamb in a drawn wall",
      smallBoard({ plan: withDoor, placed: ["A.foot", "B.foot"] }),
      "W1.door.start.sill",
      "along the drawn wall",
      4,
    ],
    [
      "of a jamb in the middle of a wall far off",
      smallBoard({ plan: farOff, placed: ["A.foot", "A.top", "B.foot", "B.top"] }),
      "W1.door.start.sill",
      "along the drawn wall, wall diagonals",
      6,
    ],
    ["of a platform's top", smallBoard({ plan: platform, placed: ["P1.1.foot"] }), "P1.1.top", "true height", 5],
    [
      "of a platform's next top",
      smallBoard({ plan: platform, placed: ["P1.1.top", "P1.2.foot"] }),
      "P1.2.top",
      "level across",
      3,
    ],
    ["of a nosing", smallBoard({ plan: stair }), "S1.2.start", "true height, half distance point", 7],
    [
      "of a nosing's other end",
      smallBoard({ plan: stair, placed: ["S1.2.start"] }),
      "S1.2.end",
      "true height, level across",
      5,
    ],
    [
      "on a rake",
      smallBoard({ stage: { rake: 1 / 20 }, plan: alone(1.3, 3) }),
      "Q.foot",
      "true height, half distance point",
      7,
    ],
  ])("%s", (_, board, point, method, steps) => {
    const construction = proved(board, point);
    expect([construction.method, construction.steps.length]).toEqual([method, steps]);
  });

  it.each([
    // two lines for the offset; for each halving two diagonals, their crossing and a level line; between two halvings the
    // two edges of the floor (drawn once) and the two crossings on them; and the last crossing
    [1 / 2, 2 + 4 + 1],
    [1 / 4, 2 + 4 + 4 + 4 + 1],
    [3 / 4, 2 + 4 + 4 + 4 + 1],
    [1 / 8, 2 + 4 + 4 + 4 + 2 + 4 + 1],
    [3 / 8, 2 + 4 + 4 + 4 + 2 + 4 + 1],
    [5 / 8, 2 + 4 + 4 + 4 + 2 + 4 + 1],
    [7 / 8, 2 + 4 + 4 + 4 + 2 + 4 + 1],
  ])("is crossing diagonals where the lesson is about them: %f of the depth", (share, steps) => {
    const construction = proved(smallBoard({ plan: alone(1.3, share * 8), favour: "crossing diagonals" }), "Q.foot");
    expect(construction.method).toBe("crossing diagonals");
    expect(construction.steps.length).toBe(steps);
  });

  it("is another where eighths do not reach", () => {
    const board = smallBoard({ plan: alone(1.3, 3.1), favour: "crossing diagonals" });
    expect(proved(board, "Q.foot").method).toBe("half distance point");
  });
});
