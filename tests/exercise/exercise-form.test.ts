import { describe, expect, it } from "vitest";
import type { Problem } from "@/lib/exercise/problem";
import { readExercise, readExerciseJson } from "@/lib/exercise/read-exercise";
import { type Change, writeTideOffice } from "../fixtures/tide-office";

function problemsOf(...changes: readonly Change[]): readonly Problem[] {
  const reading = readExercise(JSON.stringify(writeTideOffice(...changes)));
  return reading.ok ? [] : reading.problems;
}

describe("an exercise of the wrong form", () => {
  it.each(["format", "id", "title", "unit", "level", "units", "scale", "stage", "viewer", "plan", "task"])(
    "lacks %s",
    (field) => {
      expect(problemsOf([`/${field}`, undefined])).toEqual([
        { where: `/${field}`, message: `"${field}" is missing`, hint: expect.stringMatching(/^add it: ./) },
      ]);
    },
  );

  it.each([
    "/stage/opening",
    "/stage/opening/width",
    "/stage/depth",
    "/viewer/eyeHeight",
    "/plan/walls/0/from",
    "/plan/walls/0/height",
    "/plan/walls/2/openings/0/head",
    "/plan/platforms/0/outline",
    "/plan/stairs/0/steps",
    "/plan/furniture/0/width",
    "/plan/columns/0/diameter",
    "/task/kind",
  ])("lacks %s", (where) => {
    expect(problemsOf([where, undefined])).toMatchObject([{ where, message: expect.stringContaining("is missing") }]);
  });

  it.each([
    ["/format", "plasterline.exercise/2", '"plasterline.exercise/2"'],
    ["/id", "tide office", '"tide office"'],
    ["/id", "", '""'],
    ["/version", 0, "0"],
    ["/version", 1.5, "1.5"],
    ["/title", 7, "7"],
    ["/unit", "wall", '"wall"'],
    ["/level", 6, "6"],
    ["/level", 2.5, "2.5"],
    ["/level", "2", '"2"'],
    ["/units", "ft", '"ft"'],
    ["/scale", "1/4", '"1/4"'],
    ["/scale", "1/5in=1ft", '"1/5in=1ft"'],
    ["/scale", 48, "48"],
    ["/scale", "1:0", '"1:0"'],
    ["/scale", `1:0.${"0".repeat(30)}1`, '"1:0.0'],
    ["/scale", "1:99999999999", '"1:99999999999"'],
    ["/stage/opening", [32, 20], "a list of 2"],
    ["/stage/depth", "26 feet", '"26 feet"'],
    ["/stage/depth", null, "null"],
    ["/stage/depth", true, "true"],
    ["/stage/rake", "1 in 20", '"1 in 20"'],
    ["/stage/rake", "1:0", '"1:0"'],
    ["/viewer/offset", "left", '"left"'],
    ["/plan", [], "a list of 0"],
    ["/plan/corners/A", [1], "a list of 1"],
    ["/plan/corners/A", [1, 2, 3], "a list of 3"],
    ["/plan/corners/A/1", "3 yards", '"3 yards"'],
    ["/plan/corners/A.foot", [1, 2], "a list of 2"],
    ["/plan/walls", {}, "an object"],
    ["/plan/walls/0", "W1", '"W1"'],
    ["/plan/walls/0/onstage", "up", '"up"'],
    ["/plan/walls/2/openings/0/kind", "hole", '"hole"'],
    ["/plan/walls/2/openings/0/leaves", 3, "3"],
    ["/plan/walls/2/openings/0/hinge", "upstage", '"upstage"'],
    ["/plan/walls/2/openings/0/swing", "in", '"in"'],
    ["/plan/stairs/0/steps", 0, "0"],
    ["/plan/stairs/0/steps", 1.5, "1.5"],
    ["/plan/stairs/0/nosing", [[1, 2]], "a list of 1"],
    ["/plan/furniture/0/kind", "armchair", '"armchair"'],
    ["/plan/furniture/0/turn", "20", '"20"'],
    ["/task/kind", "picture", '"picture"'],
    ["/task/marks", "A.foot", '"A.foot"'],
    ["/task/marks/1", 3, "3"],
    ["/task/goOnFrom", true, "true"],
    ["/task/dimensions", "none", '"none"'],
    ["/task/tools", ["compass"], '"compass"'],
    ["/task/hints", false, "false"],
    ["/task/strictness", "strict", '"strict"'],
  ])("has %s %j", (where, value, shown) => {
    const problems = problemsOf([where, value]);
    expect(problems).toHaveLength(1);
    const [problem] = problems;
    expect(`${problem?.where}/`).toMatch(new RegExp(`^${where.replaceAll(".", "\\.")}/`));
    expect(problem?.message).toContain(shown);
    // our own words, not the schema library's
    expect(problem?.message).not.toMatch(/invalid|expected|pattern|\|/i);
    expect(problem?.hint).not.toMatch(/invalid|\||^$/i);
  });

  it("names the field and the list of a broken length", () => {
    expect(problemsOf(["/plan/corners/A/1", "3 yards"])).toMatchObject([
      { where: "/plan/corners/A/1", message: expect.stringContaining('entry 2 of "A"') },
    ]);
    expect(problemsOf(["/plan/walls/0/height", "tall"])).toMatchObject([
      { where: "/plan/walls/0/height", message: expect.stringMatching(/"height".*"tall"/) },
    ]);
  });

  it("shows a number too large for a number as it was read", () => {
    const text = JSON.stringify(writeTideOffice()).replace('"depth":26', '"depth":1e999');
    const reading = readExercise(text);
    expect(reading).toMatchObject({
      ok: false,
      problems: [{ where: "/stage/depth", message: expect.stringContaining("Infinity") }],
    });
  });

  it.each([
    ["/heading", "/", "brief"],
    ["/titel", "", "title"],
    ["/stage/dept", "", "depth"],
    ["/viewer/eyeheight", "", "eyeHeight"],
    ["/plan/wall", "", "walls"],
    ["/plan/walls/0/heigth", "", "height"],
    ["/plan/walls/0/on-stage", "", "onstage"],
    ["/plan/walls/2/openings/0/sil", "", "sill"],
    ["/plan/platforms/0/outlines", "", "outline"],
    ["/plan/stairs/0/risers", "", "riser"],
    ["/plan/furniture/0/turned", "", "turn"],
    ["/plan/columns/0/diametre", "", "diameter"],
    ["/task/strict", "", "strictness"],
    ["/task/mark", "", "marks"],
  ])("has the unknown field %s, and hears of the nearest known one", (where, _, nearest) => {
    const [problem, ...more] = problemsOf([where, 1]);
    expect(more).toEqual([]);
    expect(problem).toMatchObject({
      where,
      message: expect.stringContaining(`"${where.split("/").at(-1)}"`),
      hint: expect.stringContaining(where === "/heading" ? "did you mean" : `did you mean "${nearest}"?`),
    });
  });

  it("hears of each unknown field of one object", () => {
    const problems = problemsOf(["/stage/dept", 1], ["/stage/raked", 1]);
    expect(problems.map(({ where, hint }) => [where, /"(\w+)"/.exec(hint)?.[1]])).toEqual([
      ["/stage/dept", "depth"],
      ["/stage/raked", "rake"],
    ]);
  });

  it.each([
    ["both", { distance: 36, backWallRise: 3, eyeHeight: 8 }, "/viewer"],
    ["neither", { eyeHeight: 8 }, "/viewer"],
    ["a rise of 0", { backWallRise: 0, eyeHeight: 8 }, "/viewer/backWallRise"],
    ["a rise to the horizon", { backWallRise: 8, eyeHeight: 8 }, "/viewer/backWallRise"],
    ["a rise above it", { backWallRise: 9, eyeHeight: 8 }, "/viewer/backWallRise"],
  ])("gives the viewer %s of distance and rise", (_, viewer, where) => {
    expect(problemsOf(["/viewer", viewer])).toMatchObject([{ where }]);
  });

  it("shows the back wall's foot at or below the raked floor", () => {
    for (const backWallRise of [1.3, 1])
      expect(problemsOf(["/stage/rake", 0.05], ["/viewer", { backWallRise, eyeHeight: 8 }])).toMatchObject([
        { where: "/viewer/backWallRise" },
      ]);
  });

  it.each([null, [], "plasterline.exercise/1", 7])("is %j altogether", (document) => {
    expect(readExerciseJson(document)).toMatchObject({ ok: false, problems: [{ where: "" }] });
  });
});
