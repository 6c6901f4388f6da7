import { describe, expect, it } from "vitest";
import { gradeFolder } from "@/lib/classroom/gradebook/grade-folder";
import { nameFromFile } from "@/lib/classroom/gradebook/name-from-file";
import { exerciseOf, FILES, marksOf } from "./drawn-class";

describe("whose a file of marks is", () => {
  it.each([
    ["Wim Aalders - tide-office.marks.json", "Wim Aalders"],
    ["Wim_Aalders_tide-office.marks.json", "Wim Aalders"],
    ["tide-office Wim.marks.json", "Wim"],
    ["tide-office.marks - Wim.json", "Wim"],
    ["Wim.json", "Wim"],
    ["Wim tide-office.marks (2).json", "Wim"],
    ["Wim tide-office.marks copy.json", "Wim"],
    ["Week one/Wim Aalders/tide-office.marks.json", "Wim Aalders"],
    ["Week one\\Wim Aalders\\tide-office.marks (1).json", "Wim Aalders"],
    ["Week one/tide-office.marks.json", null],
    ["tide-office.marks.json", null],
    ["tide-office.marks (1).json", null],
    ["Zoe\u0308 - tide-office.marks.json", "Zoë"],
    ["TIDE-OFFICE Noor.JSON", "Noor"],
  ])("%s", (path, name) => expect(nameFromFile(path, "tide-office")).toBe(name));
});

const course = new Map(Object.values(FILES).map((file) => [exerciseOf(file).id, exerciseOf(file)]));
const floor = exerciseOf(FILES.floor);
const find = (id: string) => course.get(id) ?? null;
const grade = (files: Readonly<Record<string, unknown>>) =>
  gradeFolder(
    Object.entries(files).map(([path, marks]) => ({
      path,
      text: typeof marks === "string" ? marks : JSON.stringify(marks),
    })),
    find,
    "2026-11-20T12:00:00.000Z",
  );

describe("a folder of marks", () => {
  it("becomes the gradebook, the best of several counting", async () => {
    const { gradebook, doubts, taken } = await grade({
      [`Wim - ${floor.id}.marks.json`]: marksOf(FILES.floor, [9, 9]),
      [`wim - ${floor.id}.marks (1).json`]: marksOf(FILES.floor),
      [`Noor - ${floor.id}.marks.json`]: marksOf(FILES.floor, [2, 2]),
      "Noor - ring-of-lamps.marks.json": marksOf(FILES.lamps),
    });
    expect(doubts).toEqual([]);
    expect(taken).toBe(4);
    expect(gradebook.work[0]?.columns.map(({ itemId }) => itemId)).toEqual([floor.id, exerciseOf(FILES.lamps).id]);
    expect(
      gradebook.rows.map(({ student, cells }) => [
        student.memberId,
        cells.map(({ state, attempts }) => [state, attempts]),
      ]),
    ).toEqual([
      [
        "noor",
        [
          ["scored", 1],
          ["scored", 1],
        ],
      ],
      [
        "wim",
        [
          ["scored", 2],
          ["waiting", 0],
        ],
      ],
    ]);
    expect(gradebook.rows[1]).toMatchObject({ mean: 100 });
  });

  const whole = marksOf(FILES.floor);
  it.each([
    ["no JSON", "Wim.json", "hello", false, "no file of marks"],
    ["another file", "Wim.json", { format: "plasterline.work/1" }, false, "no file of marks"],
    [
      "another course",
      "Wim.json",
      { ...whole, exercise: "net-loft-of-another" },
      false,
      "net-loft-of-another, is not in the course",
    ],
    [
      "a point that is not asked",
      "Wim.json",
      { ...whole, marks: [{ point: "Q9.foot", at: [0, 0] }] },
      false,
      "Q9.foot",
    ],
    ["no name", `${floor.id}.marks.json`, whole, false, "tells no student"],
    ["another version", "Wim.json", { ...whole, version: 99 }, true, "version 99"],
    ["marks wanting", "Wim.json", { ...whole, marks: whole.marks.slice(1) }, true, `lacks ${whole.marks[0]?.point}`],
  ])("says why of %s", async (_, path, marks, taken, words) => {
    const graded = await grade({ [path]: marks });
    expect(graded.doubts).toEqual([{ path, taken, sentence: expect.stringContaining(words) }]);
    expect(graded.taken).toBe(taken ? 1 : 0);
    expect(graded.gradebook.rows).toHaveLength(taken ? 1 : 0);
  });
  it("asks about names of which one begins with the other", async () => {
    const { doubts } = await grade({ "Wim.json": whole, "Wim Aalders.json": whole, "Wimke.json": whole });
    expect(doubts).toEqual([{ path: "Wim.json", taken: true, sentence: "Is Wim the same student as Wim Aalders?" }]);
  });
  it("is an empty gradebook of an empty folder", async () => {
    expect(await grade({})).toEqual({ gradebook: { work: [expect.anything()], rows: [] }, doubts: [], taken: 0 });
  });
});
