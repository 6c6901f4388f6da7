import { describe, expect, it } from "vitest";
import { runCommand } from "@/lib/cli/run-command";
import { boardOf } from "@/lib/exercise/exercise-board";
import { faultsOf, projected } from "../construction/referee";
import { readTideOffice } from "../fixtures/tide-office";
import { commandFiles, FOOT_M, printed, refusal } from "./call-in-process";

const files = commandFiles();

/** The tide office's B stands at (-7, 14) ft: s = 36/50, so X = -5.04 ft and Z = 8 - 8 x 0.72 = 2.24 ft. */
const B_FOOT = [-5.04 * FOOT_M, 2.24 * FOOT_M] as const;

describe("construct", () => {
  it("prints the point, the method and steps that the referee passes", async () => {
    const construction = await printed(0, "construct", files.exercise(), "B.foot");
    expect(Object.keys(construction)).toEqual(["point", "method", "steps"]);
    expect(construction.point).toBe("B.foot");
    // on paper at 1/4 in the distance point is 36 ft off, past the opening's 16 ft; its half is on the paper
    expect(construction.method).toBe("half distance point");
    const board = boardOf(readTideOffice(), []);
    expect(projected(board, [-7 * FOOT_M, 14 * FOOT_M, 0])[0]).toBeCloseTo(B_FOOT[0], 12);
    expect(faultsOf(board, construction, B_FOOT)).toEqual([]);
  });

  it("prints each step with its own fields and no others", async () => {
    const { steps } = await printed(0, "construct", files.exercise(), "W3.lookout.start.head");
    const fields: Readonly<Record<string, readonly string[]>> = {
      measure: ["do", "on", "from", "length", "at", "say"],
      line: ["do", "through", "toward", "say"],
      meet: ["do", "lines", "at", "say"],
      mark: ["do", "at", "say"],
    };
    for (const step of steps) expect(Object.keys(step)).toEqual(fields[step.do]);
    expect(steps.at(-1).do).toBe("meet");
  });

  it("begins from what is given", async () => {
    const given = files.exercise(["/task/given", ["A.foot", "A.top"]], ["/task/marks", ["B.foot", "B.top"]]);
    const { method, steps } = await printed(0, "construct", given, "A.top");
    expect(method).toBe("on the sheet already");
    expect(steps).toEqual([
      { do: "mark", at: [expect.any(Number), expect.any(Number)], say: "The top of A is on the sheet already." },
    ]);
    // A's top by hand: s = 36/39
    expect(steps[0].at[0]).toBeCloseTo((-12 * FOOT_M * 36) / 39, 12);
    expect(steps[0].at[1]).toBeCloseTo((8 + (6 * 36) / 39) * FOOT_M, 12);
  });

  it("says it for people, a numbered sentence a step, ending with the place", async () => {
    const { exitCode, out } = await runCommand(["construct", files.exercise(), "B.foot", "--text"]);
    expect(exitCode).toBe(0);
    expect(out).not.toMatch(/NaN|undefined|Infinity/);
    const lines = out.trimEnd().split("\n");
    expect(lines.slice(0, 3)).toEqual([
      "B.foot, by half distance point",
      "  1. Measure 7'-0\" stage right of the centre line on the plaster line, where sizes are true.",
      "  2. Draw from mark 1 to the CVP: lines square to the plaster line all go there.",
    ]);
    // 5.04 ft = 5'-0 1/2", 2.24 ft = 2'-2 7/8"
    expect(lines.at(-1)).toContain("5'-0 1/2\"");
    expect(lines.at(-1)).toContain("2'-2 7/8\"");
  });

  it("refuses a point that is not there, and names the nearest", async () => {
    expect(await refusal("construct", files.exercise(), "B.fot")).toMatchObject({
      message: "B.fot names no point of the plan",
      hint: "did you mean B.foot?",
    });
  });

  it("refuses a point behind the eye", async () => {
    const behind = files.exercise(["/plan/corners/Q", [0, -40]]);
    expect((await refusal("construct", behind, "Q.foot")).message).toMatch(/eye/);
  });

  it.each([[[]], [["B.foot", "C.foot"]]])("wants one point, not %o", async (names) => {
    expect((await refusal("construct", files.exercise(), ...names)).hint).toContain("construct EXERCISE POINT");
  });
});
