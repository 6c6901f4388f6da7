import { describe, expect, it } from "vitest";
import { printErrors } from "@/lib/cli/outcome";
import { runCommand } from "@/lib/cli/run-command";
import { commandFiles, MARKS, printed, refusal } from "./call-in-process";

const files = commandFiles();

describe("grade", () => {
  it("prints the format's own example", async () => {
    const grade = await printed(0, "grade", files.exercise(["/task/marks", ["B.foot"]]), files.marks("marks.json"));
    expect(Object.keys(grade)).toEqual(["exercise", "score", "outcome", "marks", "missing", "habits", "impliedViewer"]);
    expect(grade).toMatchObject({ exercise: "tide-office", outcome: "scored", missing: [], impliedViewer: null });
    const [mark] = grade.marks;
    expect(Object.keys(mark)).toEqual([
      "point",
      "at",
      "true",
      "offMm",
      "toleranceMm",
      "score",
      "plan",
      "habit",
      "feedback",
    ]);
    expect(mark.offMm).toBeCloseTo(3.6545, 3);
    expect(mark.toleranceMm).toBeCloseTo(1.978, 3);
    expect(grade.score).toBe(mark.score);
    expect(grade.score).toBeCloseTo(78.8, 1);
    // no printed number is rounded
    expect(JSON.stringify(mark.offMm).length).toBeGreaterThan(12);
    expect(JSON.stringify(grade.score).length).toBeGreaterThan(12);
  });

  it("gives marks copied from truth exactly 100", async () => {
    const path = files.exercise(["/stage/rake", 0.04], ["/viewer/offset", "1'-1\""], ["/task/marks", undefined]);
    const { points } = await printed(0, "truth", path);
    const all = Object.entries<{ picture: number[] }>(points).map(([point, { picture }]) => ({ point, at: picture }));
    const asked = new Set((await printed(0, "grade", path, files.marks("none.json", { marks: [] }))).missing);
    const grade = await printed(
      0,
      "grade",
      path,
      files.marks("true.json", { marks: all.filter(({ point }) => asked.has(point)) }),
    );
    expect(grade).toMatchObject({ score: 100, outcome: "scored", missing: [] });
    expect(grade.marks.length).toBeGreaterThan(30);
    expect(grade.impliedViewer.residualMm).toBeLessThan(1e-6);
  });

  it("is unready without marks", async () => {
    const grade = await printed(0, "grade", files.exercise(), files.marks("none.json", { marks: [] }));
    expect(grade).toMatchObject({ score: null, outcome: "unready", marks: [], habits: [], impliedViewer: null });
    expect(grade.missing).toEqual(["A.foot", "A.top", "B.foot", "B.top"]);
  });

  it("prints one document a line for several files, in order", async () => {
    const one = files.marks("one.json");
    const none = files.marks("none.json", { marks: [] });
    const { exitCode, out, errors } = await runCommand(["grade", files.exercise(), one, none, one]);
    expect({ exitCode, errors }).toEqual({ exitCode: 0, errors: [] });
    const outcomes = out.split("\n").map((line) => JSON.parse(line).outcome);
    expect(outcomes).toEqual(["scored", "unready", "scored"]);
  });

  it("reads a .jsonl line by line, whatever ends its lines", async () => {
    const set = (more: object) => JSON.stringify({ ...MARKS, ...more });
    const text = `\uFEFF${set({})}\r\n\r\n${set({ marks: [] })}\n${set({ hints: { "B.foot": 1 } })}`;
    const { exitCode, out } = await runCommand(["grade", files.exercise(), files.write("CLASS.JSONL", text)]);
    expect(exitCode).toBe(0);
    expect(out.split("\n").map((line) => JSON.parse(line).outcome)).toEqual(["scored", "unready", "scored"]);
  });

  it("prints one line for a .jsonl of one set", async () => {
    const { out } = await runCommand(["grade", files.exercise(), files.write("one.jsonl", JSON.stringify(MARKS))]);
    expect(out).not.toContain("\n");
    expect(JSON.parse(out).outcome).toBe("scored");
  });

  it.each([
    [
      "a point that is not asked",
      { marks: [{ point: "C.foot", at: [0, 0] }] },
      "/marks/0/point",
      /does not ask for C\.foot/,
    ],
    [
      "a point that there is not",
      { marks: [...MARKS.marks, { point: "B.fot", at: [0, 0] }] },
      "/marks/1/point",
      /B\.fot/,
    ],
    ["another exercise", { exercise: "ebb-office" }, "/exercise", /"ebb-office"/],
    ["another format", { format: "plasterline.marks/2" }, "/format", /plasterline\.marks\/2/],
    ["an unknown field", { mark: [] }, "/mark", /no field "mark"/],
  ])("refuses marks for %s", async (_, more, where, said) => {
    const path = files.marks("wrong.json", more);
    expect(await refusal("grade", files.exercise(), path)).toMatchObject({
      file: path,
      where,
      message: expect.stringMatching(said),
    });
  });

  it("refuses an exercise that makes no sense", async () => {
    const path = files.exercise(["/plan/walls/0/from", "nowhere"]);
    expect(await refusal("grade", path, files.marks("marks.json"))).toMatchObject({
      file: path,
      where: "/plan/walls/0/from",
    });
  });

  it("prints what it could grade, and one error for what it could not, with its line", async () => {
    const good = JSON.stringify(MARKS);
    const path = files.write("class.jsonl", `${good}\n${good.slice(1)}\n{}\n${good}\n`);
    const { exitCode, out, errors } = await runCommand(["grade", files.exercise(), path]);
    expect(exitCode).toBe(2);
    expect(out.split("\n")).toHaveLength(2);
    expect(JSON.parse(printErrors(errors, false)).error).toMatchObject({
      file: path,
      message: expect.stringMatching(/^line 2: /),
      hint: expect.stringContaining("1 more"),
    });
    expect(printErrors(errors, true).split("\n")).toEqual([
      expect.stringContaining("line 2: "),
      expect.stringContaining("line 3: "),
      "",
    ]);
  });

  it("says in words how the drawing went", async () => {
    const { out } = await runCommand(["grade", files.exercise(), files.marks("marks.json"), "--text"]);
    // one of four marks, 78.8 of 100: 19.7 of 100 in all
    expect(out).toMatch(/^The tide office: 20 of 100\n {2}B\.foot: 79\. /);
    expect(out).toContain("not placed: A.foot, A.top, B.top");
    const none = await runCommand(["grade", files.exercise(), files.marks("none.json", { marks: [] }), "--text"]);
    expect(none.out).toContain("no marks yet");
  });
});
