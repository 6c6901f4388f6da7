import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { beforeAll, describe, expect, it } from "vitest";
import { runCommand } from "@/lib/cli/run-command";
import type { MarkSet } from "@/lib/exercise/marks";
import { shippedExercise } from "@/tests/drawing/practice-sheet/exercises";
import { pngOf } from "@/tests/photo/files/picture-files";
import { marksByHabit } from "@/tests/photo/photographer/marks-by-habit";
import { takePhotograph } from "@/tests/photo/photographer/take-photograph";
import { printed, refusal } from "./call-in-process";
import { temporaryFiles } from "./temporary-files";

const EXERCISE = "exercises/walls/03-alcove.json";
const OTHER = "exercises/walls/02-raking-wall.json";
const files = temporaryFiles();
const path = (name: string) => join(files.folder(), name);
/** A mark may be so far off on the paper, millimetres. */
const OFF_MM = 1;

/** A sheet of an exercise drawn on by someone who puts depth in the plan's proportion, and photographed into a file. */
async function photograph(id: string, file: string) {
  const exercise = shippedExercise(id);
  const drawn = marksByHabit(exercise, "plan-depth", 3);
  const photo = await takePhotograph({ exercise, paper: "letter", marks: drawn, seed: 3, megapixels: 6, tiltDeg: 15 });
  writeFileSync(path(file), photo.jpeg);
  return { drawn, jpeg: photo.jpeg, scale: photo.truth.sheet.scale };
}

let alcove: Awaited<ReturnType<typeof photograph>>;
beforeAll(async () => {
  alcove = await photograph("alcove", "sheet.jpg");
  writeFileSync(path("cut.jpg"), alcove.jpeg.subarray(0, alcove.jpeg.length / 2));
  writeFileSync(path("huge.png"), pngOf(20_000, 10_000, []));
  writeFileSync(path("empty.png"), pngOf(640, 480, []));
  writeFileSync(path("drawing.png"), '<svg xmlns="http://www.w3.org/2000/svg" width="9" height="9"/>');
});

describe("read", () => {
  it.each([
    ["alcove", EXERCISE],
    ["room-from-its-picture", "exercises/reading/01-room-from-its-picture.json"],
  ])("prints the marks that were drawn on the sheet of %s, as a file of marks that grades", async (id, file) => {
    const { drawn, scale } = id === "alcove" ? alcove : await photograph(id, "other.jpg");
    const marks: MarkSet = await printed(0, "read", file, path(id === "alcove" ? "sheet.jpg" : "other.jpg"));
    const head = { format: "plasterline.marks/1", exercise: id, version: 1, scale: scale.written };
    expect(marks).toMatchObject(head);
    // What is doubtful is left out; it is little, and what is told is where it was drawn.
    expect(marks.marks.length).toBeGreaterThanOrEqual(0.8 * drawn.length);
    for (const mark of marks.marks) {
      const at = drawn.find(({ point }) => point === mark.point)?.at ?? [Number.NaN, Number.NaN];
      const offMm = (Math.hypot(mark.at[0] - at[0], mark.at[1] - at[1]) * 1000) / scale.ratio;
      expect(offMm).toBeLessThan(OFF_MM);
      expect(mark.with).toBe("paper");
    }
    const grade = await printed(0, "grade", file, files.write(`${id}.json`, JSON.stringify(marks)));
    expect(grade.habits.map((habit: { id: string }) => habit.id)).toContain("plan-depth");
  });

  it("writes them to a file, and says what it holds; in words too", async () => {
    const said = await printed(0, "read", EXERCISE, path("sheet.jpg"), "--out", path("out.json"));
    const { marks } = JSON.parse(readFileSync(path("out.json"), "utf8"));
    expect(said).toMatchObject({ file: path("out.json"), marks: marks.length });
    expect(marks.length + said.doubtful.length + said.missing.length).toBe(alcove.drawn.length);
    const { out } = await runCommand(["read", EXERCISE, path("sheet.jpg"), "--text"]);
    expect(out).toMatch(new RegExp(`^${marks.length} of ${alcove.drawn.length} points read\\n`));
    for (const point of said.doubtful) expect(out).toContain(point);
    expect(out).toMatch(/markers stand within 0\.\d\d mm/);
  });

  it.each<[string, string[], RegExp, RegExp]>([
    ["no photograph", [EXERCISE], /needs an exercise file and a photograph/, /read EXERCISE PHOTO/],
    ["another exercise", [OTHER, "sheet.jpg"], /is of the exercise alcove, not of raking-wall/, /its own exercise/],
    ["a file that is not there", [EXERCISE, "none.jpg"], /there is no such file/, /check its name/],
    ["a folder", [EXERCISE, "."], /a folder/, /name a file/],
    ["half a file", [EXERCISE, "cut.jpg"], /damaged/, /again/],
    ["two hundred megapixels", [EXERCISE, "huge.png"], /20000 by 10000 pixels/, /usual size/],
    ["a drawing in letters", [EXERCISE, "drawing.png"], /SVG/, /JPEG, PNG, WebP or HEIC/],
    ["a picture whose pixels are missing", [EXERCISE, "empty.png"], /damaged/, /again/],
    [
      "a folder to write to that is not there",
      [EXERCISE, "sheet.jpg", "--out", "no/such/x.json"],
      /no such folder/,
      /another place/,
    ],
  ])("refuses %s plainly", async (_, [exercise = "", photo, ...more], message, hint) => {
    const error = await refusal("read", exercise, ...(photo === undefined ? [] : [path(photo)]), ...more);
    expect(error.message).toMatch(message);
    expect(error.hint).toMatch(hint);
    expect(`${error.message}${error.hint}`).not.toMatch(/\.$/);
  });

  it("refuses a sheet of another version, and one whose exercise was changed since", async () => {
    const change = (name: string, more: object) =>
      files.write(name, JSON.stringify({ ...JSON.parse(readFileSync(EXERCISE, "utf8")), ...more }));
    const newer = await refusal("read", change("newer.json", { version: 2 }), path("sheet.jpg"));
    expect(newer.message).toMatch(/printed from version 1 of the exercise, and this is version 2/);
    const { stage } = JSON.parse(readFileSync(EXERCISE, "utf8"));
    const opened = (width: number) => ({ stage: { ...stage, opening: { width, height: 12 } } });
    // A stage so wide that its sheet would have another scale, and one whose sheet is laid out otherwise at the same.
    const wider = await refusal("read", change("wider.json", opened(70)), path("sheet.jpg"));
    expect(wider.message).toMatch(/printed at 1\/8in=1ft, and the exercise as it is now is not/);
    const lower = await refusal("read", change("lower.json", opened(25)), path("sheet.jpg"));
    expect(lower.message).toMatch(/does not stand where this exercise's sheet has it now/);
  });
});
