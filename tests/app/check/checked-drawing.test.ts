import { describe, expect, it } from "vitest";
import { bringBack, copyProgress, erase } from "@/app/_parts/kept-work/copy-work";
import {
  asRead,
  type CheckedDrawing,
  changePoint,
  isRight,
  marksOf,
  mayConfirm,
  movePoint,
  newDrawing,
  nextOpen,
  notDrawn,
} from "@/app/_photo/checked-drawing";
import { boundsOfBox, fromSheet, openingBox, sheetFrame, toSheet } from "@/app/_photo/places";
import { gradeDrawing } from "@/app/check/grade-drawing";
import { forgetCheck, keepCheck, keptCheck, readCheck } from "@/app/check/kept-check";
import { fitTrouble } from "@/app/check/use-read-photo";
import { layOutPracticeSheet } from "@/lib/drawing/practice-sheet/lay-out-practice-sheet";
import { exercisePoints } from "@/lib/exercise/exercise-points";
import { courseExercise } from "../../browser/drive";
import { memoryShelf, readAs } from "./read-as";

const exercise = courseExercise("the-tide-office");
const sheet = layOutPracticeSheet(exercise, { paper: "letter" });
if (!sheet) throw new Error("The sheet has no layout.");
const [first = "", second = "", third = ""] = exercise.task.marks;

function drawn(states: Parameters<typeof readAs>[2] = {}): CheckedDrawing {
  if (!sheet) throw new Error("The sheet has no layout.");
  return newDrawing(exercise, sheet, readAs(exercise, sheet, states), "data:image/jpeg;base64,AA", 0.05);
}

describe("places of a sheet", () => {
  it("puts the truth where the engine's own sheet has it, and back", () => {
    const frame = sheetFrame(sheet);
    const truth = exercisePoints(exercise).get("B.foot")?.picture;
    expect(truth).toBeTruthy();
    if (!truth) return;
    const place = toSheet(frame, truth);
    // By the brief's own formula: paper mm = metres x 1000 / ratio, right and down from where [0, 0] stands.
    expect(place[0]).toBeCloseTo(sheet.layout.picture.at[0] + (truth[0] * 1000) / sheet.scale.ratio, 9);
    expect(place[1]).toBeCloseTo(sheet.layout.picture.at[1] - (truth[1] * 1000) / sheet.scale.ratio, 9);
    const back = fromSheet(frame, place);
    expect(back[0]).toBeCloseTo(truth[0], 9);
    expect(back[1]).toBeCloseTo(truth[1], 9);
  });

  it("has the opening's corners at its true size about the centre line, standing on the plaster line", () => {
    const frame = sheetFrame(sheet);
    const { left, right, bottom, top } = boundsOfBox(frame, openingBox(sheet));
    const { width, height } = exercise.stage.opening;
    expect([left, right, bottom, top].map((each) => Number(each.toFixed(9)))).toEqual(
      [-width / 2, width / 2, 0, height].map((each) => Number(each.toFixed(9))),
    );
  });

  it("reads an exercise that is read back in the plan's frame", () => {
    const reading = courseExercise("where-the-furniture-stood");
    const its = layOutPracticeSheet(reading, { paper: "letter" });
    expect(its && sheetFrame(its).at).toEqual(its?.layout.plan.at);
  });
});

describe("what is read, before it is confirmed", () => {
  it("is all settled when all was read for sure, and can be confirmed at once", () => {
    const drawing = drawn();
    expect(drawing.points.map(({ state }) => state)).toEqual(exercise.task.marks.map(() => "read"));
    expect(nextOpen(drawing)).toBeNull();
    expect(mayConfirm(drawing)).toBe(true);
    expect(drawing.confirmed).toBe(false);
  });

  it.each([
    ["doubtful", isRight, "right"],
    ["doubtful", movePoint([1, 2]), "moved"],
    ["doubtful", notDrawn, "not drawn"],
    ["missing", movePoint([1, 2]), "moved"],
    ["missing", notDrawn, "not drawn"],
  ] as const)("holds a %s point until the student has settled it (%o): %s", (state, settle, after) => {
    const drawing = drawn({ [second]: state });
    expect(nextOpen(drawing)).toBe(second);
    expect(mayConfirm(drawing)).toBe(false);
    const settled = changePoint(drawing, second, settle);
    expect(settled.points[1]?.state).toBe(after);
    expect(mayConfirm(settled)).toBe(true);
    expect(changePoint(settled, second, asRead).points).toEqual(drawing.points);
  });

  it("cannot be right where nothing was found", () => {
    const drawing = drawn({ [second]: "missing" });
    expect(changePoint(drawing, second, isRight)).toEqual(drawing);
  });

  it("is not marked when nothing at all is drawn", () => {
    const none = exercise.task.marks.reduce((drawing, point) => changePoint(drawing, point, notDrawn), drawn());
    expect(nextOpen(none)).toBeNull();
    expect(mayConfirm(none)).toBe(false);
  });

  it("makes marks on paper at the sheet's own scale, without what is not drawn", () => {
    const set = marksOf(changePoint(drawn(), third, notDrawn));
    expect(set).toMatchObject({ exercise: exercise.id, version: exercise.version, scale: sheet.scale.written });
    expect(set.marks.map(({ point }) => point)).toEqual(exercise.task.marks.filter((point) => point !== third));
    expect(new Set(set.marks.map((mark) => mark.with))).toEqual(new Set(["paper"]));
  });
});

describe("a drawing that is kept", () => {
  it("comes back whole, each desk with its own, and is forgotten", () => {
    const shelf = memoryShelf();
    const desk = { itemId: "i", memberId: "m" };
    const [own, homework] = [drawn(), { ...drawn(), confirmed: true }];
    expect(keepCheck(shelf, null, own)).toBe(true);
    expect(keepCheck(shelf, desk, homework)).toBe(true);
    expect(keptCheck(shelf, null)).toEqual(own);
    expect(keptCheck(shelf, desk)).toEqual(homework);
    forgetCheck(shelf, null);
    expect(keptCheck(shelf, null)).toBeNull();
    expect(keptCheck(shelf, desk)).toEqual(homework);
  });

  it("is forgotten with everything else that is kept, and not by a copy that is brought back", () => {
    const shelf = memoryShelf();
    keepCheck(shelf, null, drawn());
    expect(bringBack(shelf, JSON.stringify(copyProgress(shelf))).ok).toBe(true);
    expect(keptCheck(shelf, null)).not.toBeNull();
    erase(shelf);
    expect(keptCheck(shelf, null)).toBeNull();
  });

  it.each([
    ["nothing", null],
    ["another form", { ...drawn(), format: "plasterline.check/2" }],
    ["a picture from elsewhere", { ...drawn(), picture: "http://example.test/p.jpg" }],
    ["a point without a name", { ...drawn(), points: [{ at: null, state: "read", read: {} }] }],
    ["a place that is no place", { ...drawn(), points: [{ point: first, at: [1], state: "read", read: {} }] }],
    ["a state of its own", { ...drawn(), points: [{ point: first, at: null, state: "sure", read: {} }] }],
    ["lines of one end", { ...drawn(), lines: [[[0, 0]]] }],
  ])("is not believed when it is %s", (_, value) => {
    expect(readCheck(value)).toBeNull();
  });
});

describe("a sheet's code and the exercise on hand", () => {
  const code = { exercise: exercise.id, version: exercise.version };
  it.each([
    ["the exercise is here", code, exercise, exercise.id, false, null],
    ["another is here", code, courseExercise("nine-lamps"), "nine-lamps", false, "fetch"],
    ["none is here yet", code, null, null, false, "fetch"],
  ] as const)("when %s", (_, its, here, asked, homework, expected) => {
    expect(fitTrouble(its, here, asked, homework)).toBe(expected);
  });

  it.each([
    ["the server has no such exercise", code, null, exercise.id, false, /not among those/],
    ["it was printed before the exercise changed", { ...code, version: 9 }, exercise, exercise.id, false, /version 9/],
    [
      "homework asks for another",
      { ...code, exercise: "nine-lamps" },
      exercise,
      exercise.id,
      true,
      /homework asks for/,
    ],
  ] as const)("refuses when %s", (_, its, here, asked, homework, say) => {
    expect(fitTrouble(its, here, asked, homework)).toMatchObject({ say: expect.stringMatching(say) });
  });
});

describe("the grade of a drawing", () => {
  it("is 100 for the truth, at the sheet's scale", () => {
    const { grade, remarks } = gradeDrawing(exercise, { ...drawn(), confirmed: true });
    expect(grade.score).toBeCloseTo(100, 9);
    expect(remarks).toEqual([]);
  });

  it("is held against the eye that the student's own horizon and back wall give", () => {
    const viewer = { ...exercise.viewer, distance: exercise.viewer.distance * 1.6 };
    const other = { ...exercise, viewer };
    const its = layOutPracticeSheet(other, { paper: "letter" });
    if (!its) throw new Error("The sheet has no layout.");
    const { depth } = exercise.stage;
    // Similar triangles: the floor at the depth rises to h depth / (D + depth).
    const backWallFootZ = (viewer.eyeHeight * depth) / (viewer.distance + depth);
    const read = readAs(other, its, {}, { horizonZ: viewer.eyeHeight, backWallFootZ });
    const drawing = newDrawing(exercise, its, read, "data:image/jpeg;base64,AA", null);
    expect(gradeDrawing(exercise, drawing).grade.score).toBeCloseTo(100, 6);
    expect(gradeDrawing(exercise, { ...drawing, ownEye: null }).grade.score).toBeLessThan(90);
  });

  it("says what a leaning upright shows only where the pencil was read", () => {
    const drawing = drawn();
    const foot = drawing.points.find(({ point }) => point === "B.foot")?.at;
    const top = drawing.points.find(({ point }) => point === "B.top")?.at;
    if (!foot || !top) throw new Error("B is not asked.");
    const lean = (3 * drawing.frame.ratio) / 1000;
    const leaning = { ...drawing, lines: [[foot, [top[0] + lean, top[1]]] as const] };
    expect(gradeDrawing(exercise, leaning).remarks.join(" ")).toMatch(/lean/);
    expect(gradeDrawing(exercise, drawing).remarks).toEqual([]);
  });
});
