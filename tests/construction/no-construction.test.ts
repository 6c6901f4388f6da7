import { describe, expect, it } from "vitest";
import { constructPoint } from "@/lib/construction/construct-point";
import { proved } from "./proved";
import { smallBoard } from "./small-board";
import { alone, opening, raking, wall } from "./small-plans";

describe("what needs no construction or has none", () => {
  it("is a point that is placed, under its own name or another", () => {
    // the passage begins in the corner itself, so that its sill is A's foot
    const plan = { ...raking, walls: [wall({ openings: [opening(0, 1)] })] };
    const board = smallBoard({ plan, placed: ["A.foot"] });
    expect(proved(board, "A.foot").method).toBe("on the sheet already");
    expect(proved(board, "W1.door.start.sill").steps.map((step) => step.do)).toEqual(["mark"]);
  });

  it("is not a point that only looks like one that is placed", () => {
    // (1, 4, 0) is drawn at (2/3, 2/3), where a top 2/3 m high stands on the plaster line itself.
    const plan = {
      corners: new Map([["Q", [1, 4]]] as const),
      columns: [{ id: "K1", at: [2 / 3, 0] as const, diameter: 0.2, height: 2 / 3, base: 0 }],
    };
    expect(proved(smallBoard({ plan, placed: ["Q.foot"] }), "K1.centre.top").method).toBe("true size");
  });

  it("is a point straight before the eye at its height: the CVP", () => {
    const plan = { columns: [{ id: "K1", at: [0, 5] as const, diameter: 0.2, height: 2, base: 0 }] };
    expect(proved(smallBoard({ plan }), "K1.centre.top").steps).toMatchObject([{ do: "mark", at: [0, 2] }]);
  });

  it.each([
    ["level with the eye", -8],
    ["behind it", -9],
  ])("is a point %s", (_, y) => {
    const result = constructPoint(smallBoard({ plan: alone(1, y) }), "Q.foot");
    expect(result).toEqual({ found: false, reason: "Q.foot is level with the eye or behind it" });
  });

  it("is a name that names nothing", () => {
    expect(constructPoint(smallBoard({}), "Q.foot")).toEqual({
      found: false,
      reason: "Q.foot names no point of the plan",
    });
  });
});
