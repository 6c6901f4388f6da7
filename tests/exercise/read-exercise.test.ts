import { describe, expect, it } from "vitest";
import type { Problem } from "@/lib/exercise/problem";
import { readExercise, readExerciseJson } from "@/lib/exercise/read-exercise";
import { type Change, readTideOffice, writeTideOffice } from "../fixtures/tide-office";

const FOOT_M = 0.3048;

function problemsOf(...changes: readonly Change[]): readonly Problem[] {
  const reading = readExercise(JSON.stringify(writeTideOffice(...changes)));
  return reading.ok ? [] : reading.problems;
}

describe("reading an exercise", () => {
  it("turns feet, inches and mixed lengths to metres", () => {
    const { stage, viewer, plan, scaleRatio } = readTideOffice();
    expect(stage).toEqual({
      opening: { width: 32 * FOOT_M, height: 20 * FOOT_M },
      depth: 26 * FOOT_M,
      apron: 3 * FOOT_M,
      rake: 0,
    });
    expect(viewer).toEqual({ distance: 36 * FOOT_M, eyeHeight: 8 * FOOT_M, offset: 0 });
    expect(plan.corners.get("E")?.[0]).toBeCloseTo(12.5 * FOOT_M, 12);
    expect(plan.walls[2]?.thickness).toBeCloseTo(0.1524, 12);
    expect(plan.furniture[0]?.turn).toBeCloseTo(Math.PI / 9, 12);
    expect(scaleRatio).toBe(48);
  });

  it("takes bare numbers as metres in a metric file, and text with its own unit in either", () => {
    const { stage, plan } = readTideOffice(["/units", "m"], ["/stage/depth", "26'"]);
    expect(stage.depth).toBe(26 * FOOT_M);
    expect(stage.apron).toBe(3);
    expect(plan.corners.get("B")).toEqual([-7, 14]);
  });

  it("fills in what is left out", () => {
    const reading = readExerciseJson({
      format: "plasterline.exercise/1",
      id: "bare",
      title: "Bare",
      unit: "floor",
      level: 1,
      units: "m",
      scale: "1:50",
      stage: { opening: { width: 10, height: 6 }, depth: 8 },
      viewer: { distance: 10, eyeHeight: 2 },
      plan: {
        corners: { A: [-2, 2], B: [2, 2] },
        walls: [
          {
            id: "W",
            from: "A",
            to: "B",
            height: 3,
            openings: [{ id: "d", kind: "door", at: 1, width: 1, head: 2 }],
          },
        ],
        furniture: [{ id: "t", kind: "table", at: [0, 1], width: 1, depth: 1, height: 1 }],
      },
      task: { kind: "plan-to-picture", marks: ["A.foot"] },
    });
    if (!reading.ok) throw new Error("It was not read.");
    expect(reading.exercise).toMatchObject({
      version: 1,
      brief: "",
      skills: [],
      stage: { apron: 0, rake: 0 },
      viewer: { offset: 0 },
      plan: {
        walls: [
          {
            thickness: 0,
            base: 0,
            onstage: "right",
            openings: [{ sill: 0, leaves: 1, hinge: null, swing: "offstage", depth: null }],
          },
        ],
        furniture: [{ turn: 0, base: 0 }],
        platforms: [],
        stairs: [],
        columns: [],
      },
      task: {
        given: [],
        goOnFrom: "true",
        dimensions: "printed",
        tools: ["straightedge"],
        hints: "allowed",
        strictness: "thumbnail",
      },
    });
  });

  it.each([
    [0, 0],
    [0.05, 0.05],
    ["1:20", 1 / 20],
    ["1:12.5", 1 / 12.5],
  ])("reads the rake %s", (rake, expected) => {
    expect(readTideOffice(["/stage/rake", rake]).stage.rake).toBeCloseTo(expected, 15);
  });

  it.each([
    // D = depth (h - r) / (r - rake depth): 26 (8 - 3.354839) / 3.354839 = 36 ft, the example's own
    [0, (26 * 8) / 62, 36 * FOOT_M],
    [0, 4, 26 * FOOT_M],
    ["1:26", 4.5, ((26 * 3.5) / 3.5) * FOOT_M],
  ])("on a rake of %s, works the distance out from a back wall's foot shown %s ft up", (rake, rise, distance) => {
    const { viewer } = readTideOffice(
      ["/stage/rake", rake],
      ["/viewer", { backWallRise: rise, eyeHeight: 8, offset: "1'-6\"" }],
    );
    expect(viewer.distance).toBeCloseTo(distance, 9);
    expect(viewer.offset).toBeCloseTo(1.5 * FOOT_M, 12);
  });

  it("lets any finite length stand, whatever its sense", () => {
    for (const length of [0, -4, 1e12, "-3 m"]) expect(problemsOf(["/plan/walls/0/height", length])).toEqual([]);
  });
});
