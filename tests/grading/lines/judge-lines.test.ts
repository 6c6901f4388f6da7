import { describe, expect, it } from "vitest";
import { judgeLines } from "@/lib/grading/lines/judge-lines";
import type { PaperLine } from "@/lib/grading/lines/judgement";
import { readTideOffice } from "../../fixtures/tide-office";
import { FOOT_M } from "../mark-tide-office";
import { drawEdges, type Judged, judged } from "./drawn-lines";

/**
 * By hand, in feet. The eye stands 36 before the plaster line and 8 high; 1 ft is 6.35 mm at 1:48. A stands at (-12, 3), B at
 * (-7, 14), both walls' tops at 14: A.foot is drawn at (-11.077, 0.615), A.top at (-11.077, 13.538), B.foot at (-5.04, 2.24),
 * B.top at (-5.04, 12.32). W2 runs 5 across in 11 upstage, so it vanishes at (36 5/11, 8) = (16.364, 8).
 */
const FOOT_MM = 6.35;
const A_FOOT = [(-12 * 36) / 39, 8 - (8 * 36) / 39] as const;
const A_TOP = [(-12 * 36) / 39, 8 + (6 * 36) / 39] as const;
const B_FOOT = [-5.04, 2.24] as const;
const B_TOP = [-5.04, 12.32] as const;

type Feet = readonly [number, number];

function line(from: string, to: string, a: Feet, b: Feet): PaperLine {
  const metres = ([x, z]: Feet): Feet => [x * FOOT_M, z * FOOT_M];
  return { from, to, at: [metres(a), metres(b)] };
}

/** From a point on to B's upright, straight at a place, feet. */
function toward(from: Feet, [x, z]: Feet): Feet {
  const share = (B_FOOT[0] - from[0]) / (x - from[0]);
  return [B_FOOT[0], from[1] + (z - from[1]) * share];
}

/** The foot and the top of W2 drawn to a place. */
function wallToward(place: Feet): Judged {
  return judged(readTideOffice(), [
    line("A.foot", "B.foot", A_FOOT, toward(A_FOOT, place)),
    line("A.top", "B.top", A_TOP, toward(A_TOP, place)),
  ]);
}

describe("what lines on paper show", () => {
  it("says nothing of a true drawing but what is right in it", () => {
    const exercise = readTideOffice();
    const judgement = judged(exercise, drawEdges(exercise));
    expect(judgement.remarks).toEqual([]);
    expect(judgement.lines.filter(({ off, say }) => off || say !== "")).toEqual([]);
    expect(judgement.lines.map(({ rule }) => rule)).toContain("frontal");
    expect(judgement.meetings.map(({ verdict }) => verdict)).toEqual(judgement.meetings.map(() => "true"));
    expect(judgement.eye).toMatchObject({
      kind: "told",
      distance: { metres: expect.closeTo(36 * FOOT_M, 6) },
      eyeHeight: { metres: expect.closeTo(8 * FOOT_M, 6) },
      offset: { metres: expect.closeTo(0, 6) },
    });
  });

  it.each([
    { way: "right", lean: 1 },
    { way: "left", lean: -1 },
  ])("an upright whose top is a foot to the $way leans by atan(1 / 12.923), 6.35 mm", ({ way, lean }) => {
    const top: Feet = [A_TOP[0] + lean, A_TOP[1]];
    const { lines, remarks } = judged(readTideOffice(), [line("A.foot", "A.top", A_FOOT, top)]);
    expect(lines).toEqual([expect.objectContaining({ rule: "upright", name: "the upright at A", off: true })]);
    expect(lines[0]?.offMm).toBeCloseTo(FOOT_MM, 9);
    expect(lines[0]?.turnedDeg).toBeCloseTo((-lean * Math.atan(1 / (A_TOP[1] - A_FOOT[1])) * 180) / Math.PI, 9);
    // 6.35 is printed as 6.3 or 6.4, as its last bits will.
    expect(remarks.map((say) => say.replace("6.4", "6.3"))).toEqual([
      `The upright at A leans 4.4° to the ${way}, 6.3 mm over its length. An upright stays upright in the picture at any depth: set its top straight above its foot.`,
    ]);
  });

  it("leans the same, whichever end it is drawn from", () => {
    const top: Feet = [A_TOP[0] + 1, A_TOP[1]];
    const [down, up] = [line("A.top", "A.foot", top, A_FOOT), line("A.foot", "A.top", A_FOOT, top)];
    const { lines } = judged(readTideOffice(), [down, up]);
    expect(lines[0]?.turnedDeg).toBeCloseTo(lines[1]?.turnedDeg as number, 9);
  });

  it("lets an upright lean by a hand's slip: half a millimetre at each end, a degree in all", () => {
    const { lines, remarks } = judged(readTideOffice(), [
      line("A.foot", "A.top", A_FOOT, [A_TOP[0] + 1 / FOOT_MM, A_TOP[1]]),
    ]);
    expect(lines[0]).toMatchObject({ off: false, say: "" });
    // Two sigma of two ends: 2 hypot(0.5 sqrt 2, 82.06 mm x tan 1 degree), where 12.923 ft are 82.06 mm.
    const length = (A_TOP[1] - A_FOOT[1]) * FOOT_MM;
    expect(lines[0]?.allowedMm).toBeCloseTo(2 * Math.hypot(0.5 * Math.SQRT2, length * Math.tan(Math.PI / 180)), 2);
    expect(remarks).toEqual([]);
  });

  it("a wall parallel to the plaster line keeps its foot level", () => {
    // C stands at (9, 14): drawn at (6.48, 2.24); here half a foot higher.
    const { lines, remarks } = judged(readTideOffice(), [line("B.foot", "C.foot", B_FOOT, [6.48, 2.74])]);
    expect(lines[0]).toMatchObject({ rule: "frontal", off: true });
    expect(lines[0]?.offMm).toBeCloseTo(0.5 * FOOT_MM, 9);
    expect(lines[0]?.turnedDeg).toBeCloseTo((Math.atan(0.5 / 11.52) * 180) / Math.PI, 9);
    expect(remarks).toEqual([
      "The foot of W3 rises 2.5° to the right, 3.2 mm over its length. W3 runs parallel to the plaster line there, so its level lines stay level in the picture.",
    ]);
  });

  it("a raking wall's foot that is sent to the CVP is found to run there", () => {
    const { lines } = judged(readTideOffice(), [line("A.foot", "B.foot", A_FOOT, toward(A_FOOT, [0, 8]))]);
    expect(lines[0]).toMatchObject({ rule: "receding", off: true });
    expect(lines[0]?.crosses?.[0]).toBeCloseTo(0, 9);
    expect(lines[0]?.crosses?.[1]).toBeCloseTo(8 * FOOT_M, 9);
    expect(lines[0]?.say).toMatch(
      /^The foot of W2 misses its vanishing point on the horizon: .+ above the ruler\. As drawn it runs to the CVP, /,
    );
  });

  it("tells how far beside its vanishing point a line meets the horizon, and how far off a ruler its far end is", () => {
    const far = toward(A_FOOT, [30, 8]);
    const { lines } = judged(readTideOffice(), [line("A.foot", "B.foot", A_FOOT, far)]);
    // The ruler from A.foot to the vanishing point rises 7.385 in 27.441: the distance of the far end from that line.
    const [run, rise] = [16.3636364 - A_FOOT[0], 8 - A_FOOT[1]];
    const off = Math.abs((far[0] - A_FOOT[0]) * rise - (far[1] - A_FOOT[1]) * run) / Math.hypot(run, rise);
    expect(lines[0]?.offMm).toBeCloseTo(off * FOOT_MM, 6);
    expect(lines[0]?.say).toContain("below the ruler. As drawn it meets the horizon 87 mm to the right of it.");
  });

  it("edges of one wall drawn to a point 2 ft over the horizon meet off it, 12.7 mm above", () => {
    const { meetings, remarks } = wallToward([16.3636364, 10]);
    expect(meetings).toEqual([
      expect.objectContaining({ lines: [0, 1], elements: ["W2"], verdict: "off the horizon" }),
    ]);
    expect(meetings[0]?.missMm?.[0]).toBeCloseTo(0, 4);
    expect(meetings[0]?.missMm?.[1]).toBeCloseTo(2 * FOOT_MM, 4);
    expect(remarks).toEqual([
      "The level edges of W2 meet 12.7 mm above the horizon. Lines that are level on the stage run to the horizon, whichever way they go: take them to their vanishing point on the horizon.",
    ]);
  });

  it("edges drawn to another point of the horizon stand at another angle: 36 in 30 is 50 degrees, 11 in 5 is 66", () => {
    const { meetings, remarks } = wallToward([30, 8]);
    expect(meetings[0]).toMatchObject({ verdict: "beside" });
    expect(remarks).toEqual([
      "The level edges of W2 meet on the horizon, but 87 mm to the right of their vanishing point on the horizon. So drawn they stand at 50° to the plaster line instead of 66°.",
    ]);
  });

  it("edges of a raking wall that both run to the CVP are told so: 16.364 ft are 104 mm", () => {
    expect(wallToward([0, 8]).remarks).toEqual([
      "The level edges of W2 meet on the horizon, but 104 mm to the left of their vanishing point on the horizon. That is the CVP, where only lines square to the plaster line go; these stand at 66° to it.",
    ]);
  });

  it("edges drawn parallel are told to draw together", () => {
    const { meetings, remarks } = judged(readTideOffice(), [
      line("A.foot", "B.foot", A_FOOT, B_FOOT),
      line("A.top", "B.top", A_TOP, [B_TOP[0], A_TOP[1] + B_FOOT[1] - A_FOOT[1]]),
    ]);
    expect(meetings[0]).toMatchObject({ verdict: "parallel", at: null, giveMm: null, missMm: null });
    expect(remarks[0]).toMatch(/^The level edges of W2 are drawn parallel on the sheet, or as good as\./);
  });

  it("of a foot astray and a true top the foot alone is told", () => {
    const { meetings, remarks } = judged(readTideOffice(), [
      line("A.foot", "B.foot", A_FOOT, toward(A_FOOT, [0, 8])),
      line("A.top", "B.top", A_TOP, B_TOP),
    ]);
    expect(meetings.map(({ verdict }) => verdict)).not.toContain("true");
    expect(remarks).toHaveLength(1);
    expect(remarks[0]).toMatch(/^The foot of W2 misses/);
  });

  it("one stray line among three scatters them, and is told by itself", () => {
    const exercise = readTideOffice();
    // E stands at (12.5, 5), drawn at (10.976, 0.976); from C.foot, (6.48, 2.24), its foot runs to the CVP.
    const lines = drawEdges(exercise).map((one) =>
      one.from === "C.foot" && one.to === "E.foot"
        ? line("C.foot", "E.foot", [6.48, 2.24], [10.976, 8 - ((8 - 2.24) * 10.976) / 6.48])
        : one,
    );
    const { meetings, remarks } = judged(exercise, lines);
    const ofW4 = meetings.find(({ elements }) => elements.includes("W4"));
    expect(ofW4).toMatchObject({ verdict: "scattered", elements: ["W4"] });
    expect(ofW4?.say).toMatch(/^The level edges of W4 do not meet in one point\./);
    expect(remarks).toHaveLength(1);
    expect(remarks[0]).toMatch(/^The foot of W4 misses .+ As drawn it runs to the CVP/);
  });

  it("a whole drawing for an eye of its own is told so once: 2 ft higher is 12.7 mm", () => {
    const exercise = readTideOffice();
    const { remarks } = judged(exercise, drawEdges(exercise, { ...exercise.viewer, eyeHeight: 10 * FOOT_M }));
    expect(remarks).toEqual([
      "The lines agree with each other, but were drawn for another eye: 10'-0\" high instead of 8'-0\", with its horizon 12.7 mm above the one given. Take them to the horizon and the vanishing points given, or have the drawing graded for the eye that you drew.",
    ]);
  });

  it("and so is one from nearer by, and to one side", () => {
    const exercise = readTideOffice();
    const { viewer } = exercise;
    const other = { ...viewer, distance: 20 * FOOT_M, offset: 4 * FOOT_M };
    const { remarks } = judged(exercise, drawEdges(exercise, other));
    expect(remarks).toEqual([
      "The lines agree with each other, but were drawn for another eye: 20'-0\" before the plaster line instead of 36'-0\", and 4'-0\" farther to the viewer's right. Take them to the horizon and the vanishing points given, or have the drawing graded for the eye that you drew.",
    ]);
  });

  it("tells apart the two ways that one piece's edges run", () => {
    const exercise = readTideOffice(["/plan/furniture/0/width", 6], ["/plan/furniture/0/depth", 6]);
    const { meetings } = judged(exercise, drawEdges(exercise));
    const ofDesk = meetings.filter(({ elements }) => elements.join() === "desk").map(({ say }) => say);
    expect(ofDesk).toEqual([
      expect.stringMatching(/^The level edges of desk \(like the foot of desk from corner 1 to 2\) /),
      expect.stringMatching(/^The level edges of desk \(like the foot of desk from corner 2 to 3\) /),
    ]);
  });

  it("leaves out what is too short to have a direction, and lines that are none on the stage", () => {
    const { lines, skipped } = judged(readTideOffice(), [
      line("A.foot", "B.foot", A_FOOT, [A_FOOT[0] + 4 / FOOT_MM, A_FOOT[1]]),
      line("A.foot", "A.foot", A_FOOT, B_FOOT),
      line("A.foot", "A.top", A_FOOT, A_TOP),
    ]);
    expect(skipped).toEqual([0, 1]);
    expect(lines.map(({ name }) => name)).toEqual(["the upright at A"]);
  });

  it("a line from its very vanishing point on goes through it: no figure is broken", () => {
    const exercise = readTideOffice();
    const { place } = judged(exercise, [line("A.foot", "B.foot", A_FOOT, B_FOOT)]).lines[0] ?? { place: [0, 0, 0] };
    const vanishing: Feet = [place[0] / place[2] / FOOT_M, place[1] / place[2] / FOOT_M];
    for (const ends of [
      [vanishing, B_FOOT],
      [A_FOOT, vanishing],
    ] as const) {
      const { lines, eye, remarks } = judged(exercise, [line("A.foot", "B.foot", ends[0], ends[1])]);
      expect(lines[0]).toMatchObject({ off: false, say: "" });
      expect([lines[0]?.offMm, lines[0]?.turnedDeg, lines[0]?.allowedMm].every(Number.isFinite)).toBe(true);
      expect(remarks).toEqual([]);
      expect(eye.say).not.toMatch(/NaN/);
    }
  });

  it("with no line at all knows no eye and has nothing to say", () => {
    expect(judged(readTideOffice(), [])).toMatchObject({
      lines: [],
      meetings: [],
      remarks: [],
      eye: { kind: "cannot tell", distance: null, eyeHeight: null, offset: null },
    });
  });

  it("judges no plan, and no line between points that are not there", () => {
    const reading = readTideOffice(["/task/kind", "picture-to-plan"], ["/task/marks", ["A.foot"]]);
    expect(judgeLines(reading, drawEdges(readTideOffice()))).toEqual({ kind: "plan" });
    const stray = [line("A.foot", "Z.foot", A_FOOT, B_FOOT)];
    expect(() => judgeLines(readTideOffice(), stray)).toThrow("Z.foot");
  });
});
