import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { checkSense } from "@/lib/exercise/check-sense";
import type { Problem } from "@/lib/exercise/problem";
import { readExercise, readExerciseJson } from "@/lib/exercise/read-exercise";
import { type Change, readTideOffice, writeTideOffice } from "../fixtures/tide-office";
import { seeded } from "../seeded";

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

describe("the bounds of an exercise", () => {
  const corners = (count: number) =>
    Object.fromEntries(Array.from({ length: count }, (_, i) => [`Q${i}`, [0, i / 200]]));
  const box = (i: number) => ({ id: `f${i}`, kind: "box", at: [0, 1], width: 1, depth: 1, height: 1 });
  const boxes = (count: number) => Array.from({ length: count }, (_, i) => box(i));

  it("are 2,000 elements in all", () => {
    expect(problemsOf(["/plan", { corners: corners(2000) }])).toEqual([]);
    expect(problemsOf(["/plan", { corners: corners(2001) }])).toMatchObject([{ where: "/plan" }]);
    expect(problemsOf(["/plan", { corners: corners(1000), furniture: boxes(1000) }])).toEqual([]);
    expect(problemsOf(["/plan", { corners: corners(1001), furniture: boxes(1000) }])).toMatchObject([
      { where: "/plan", message: expect.stringContaining("2001") },
    ]);
    expect(problemsOf(["/plan/furniture", boxes(2001)])).toMatchObject([
      { where: "/plan/furniture", message: expect.stringContaining("2000") },
    ]);
  });

  it("are 1 MiB", () => {
    const text = JSON.stringify(writeTideOffice(["/notes", "x".repeat(10_000)]));
    expect(readExercise(text).ok).toBe(true);
    expect(readExercise(text + " ".repeat(1024 * 1024 - text.length)).ok).toBe(true);
    expect(readExercise(text + " ".repeat(1024 * 1024 + 1 - text.length))).toMatchObject({
      ok: false,
      problems: [{ where: "", message: expect.stringContaining("1 MiB") }],
    });
  });

  it("keep the checks of a large plan, all of whose marks are wrong, quick", () => {
    const began = performance.now();
    const exercise = readTideOffice(
      ["/plan", { furniture: boxes(600).map((item, i) => ({ ...item, id: `${"long".repeat(12)}${i}` })) }],
      ["/task/marks", Array.from({ length: 2000 }, (_, i) => "xyz".repeat(60) + i)],
    );
    expect(checkSense(exercise).filter(({ where }) => where.startsWith("/task/marks"))).toHaveLength(2000);
    expect(performance.now() - began).toBeLessThan(10_000);
  });
});

describe("reading anything", () => {
  const leaf = fc.oneof(
    fc.constantFrom<unknown>(
      null,
      true,
      "",
      "A",
      "A.foot",
      "x",
      "1:20",
      "-3 m",
      "1e9 m",
      "__proto__",
      [],
      {},
      0,
      -1,
      1e300,
    ),
    fc.double({ noNaN: true, noDefaultInfinity: true }),
    fc.jsonValue({ maxDepth: 2 }),
  );

  /** Every pointer of a document, inner ones too. */
  function pointers(value: unknown, here = ""): readonly string[] {
    if (typeof value !== "object" || value === null) return [here];
    return [here, ...Object.entries(value).flatMap(([key, inner]) => pointers(inner, `${here}/${key}`))];
  }
  const places = pointers(writeTideOffice()).slice(1);

  it("never throws, and says where, what and how for everything wrong", () => {
    const changed = fc.array(fc.tuple(fc.constantFrom(...places), fc.option(leaf, { nil: undefined })), {
      minLength: 1,
      maxLength: 3,
    });
    fc.assert(
      fc.property(changed, (changes) => {
        let written: object;
        try {
          written = writeTideOffice(...changes);
        } catch {
          return; // one change took away the place of the next
        }
        const reading = readExercise(JSON.stringify(written));
        const findings = reading.ok ? checkSense(reading.exercise) : reading.problems;
        for (const { where, message, hint } of findings) {
          expect(where).toMatch(/^(?:\/|$)/);
          expect(message).not.toMatch(/^$|undefined|NaN|\bInvalid\b/);
          expect(hint).not.toMatch(/^$|undefined|NaN/);
        }
        if (!reading.ok) expect(findings.length).toBeGreaterThan(0);
      }),
      { ...seeded, numRuns: seeded.numRuns * 3 },
    );
  });
});
