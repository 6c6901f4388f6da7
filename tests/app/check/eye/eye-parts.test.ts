import { describe, expect, it } from "vitest";
import {
  addGroup,
  addMark,
  changeGroup,
  type EyeWork,
  gripAfter,
  moveGrip,
  newWork,
  removeMark,
  spotOf,
} from "@/app/check/eye/eye-work";
import { keepEye, keptEye } from "@/app/check/eye/kept-eye";
import { readEyeWork, readProportion } from "@/app/check/eye/read-eye-work";
import { sayInShort, sayKnown, sayMeetings } from "@/app/check/eye/say-marks";
import { readMm } from "@/app/check/read-mm";
import { whoseEye } from "@/lib/perspective/whose-eye/whose-eye";
import { memoryShelf } from "../read-as";

const PHOTO = { address: "data:image/jpeg;base64,", width: 1000, height: 600 };

/** Marks set one after the other, in widths of the picture. */
function marked(
  work: EyeWork,
  what: Parameters<typeof addMark>[1],
  spots: readonly (readonly [number, number])[],
): EyeWork {
  let { work: now, grip } = addMark(work, what);
  for (const spot of spots) {
    now = moveGrip(now, grip, spot);
    grip = gripAfter(now, grip);
  }
  return now;
}

/** Two lines to one place in the middle of the picture, a fifth of its width down. */
const TWO_LINES = [
  [
    [0.1, -0.1],
    [0.3, -0.15],
  ],
  [
    [0.1, -0.4],
    [0.3, -0.3],
  ],
] as const;

function twoLines(): EyeWork {
  return TWO_LINES.reduce((work, line) => marked(work, "A", line), newWork(PHOTO));
}

describe("what is marked", () => {
  it("is set handle by handle: the next is of the same mark until that is whole", () => {
    const { work, grip } = addMark(newWork(PHOTO), "F");
    expect(grip).toBe("F.0");
    const first = moveGrip(work, grip, [0.2, -0.5]);
    expect(gripAfter(first, grip)).toBe("F.1");
    expect(spotOf(first, "F.0")).toEqual([0.2, -0.5]);
    expect(spotOf(first, "F.1")).toBeNull();
    // A rectangle that was begun is gone on with.
    expect(addMark(first, "F")).toEqual({ work: first, grip: "F.1" });
  });

  it("is taken off by its name, and the others keep their order", () => {
    const work = marked(twoLines(), "U", [
      [0.5, -0.5],
      [0.5, -0.1],
    ]);
    const less = removeMark(work, "A1");
    expect(less.groups[0]?.lines).toEqual([TWO_LINES[1]]);
    expect(removeMark(less, "U1").uprights).toEqual([]);
  });

  it("knows four groups and no more", () => {
    const full = [1, 2, 3, 4, 5].reduce((work) => addGroup(work), newWork(PHOTO));
    expect(full.groups).toHaveLength(4);
  });

  it("comes back out of the browser's storage as it was, and nothing else does", () => {
    const shelf = memoryShelf();
    const work = marked(twoLines(), "L", [[0.1, -0.2]]);
    expect(keepEye(shelf, work)).toBe(true);
    expect(keptEye(shelf)).toEqual(work);
    for (const broken of [
      { ...work, photo: { ...PHOTO, address: "https://elsewhere.example/a.jpg" } },
      { ...work, groups: [] },
      { ...work, uprights: [[[0, 0]]] },
      { ...work, length: { ...work.length, lies: "askew" } },
    ]) {
      keepEye(shelf, broken as EyeWork);
      expect(keptEye(shelf)).toBeNull();
    }
  });
});

describe("what is read of it", () => {
  it("is in millimetres of the paper; what is not wholly set is left out", () => {
    const work = { ...marked(twoLines(), "A", [[0.2, -0.2]]), widthMm: `10"` };
    const { drawing, widthMm } = readEyeWork(work);
    expect(widthMm).toBeCloseTo(254, 9);
    expect(drawing.parallels[0]?.lines).toHaveLength(2);
    expect(drawing.parallels[0]?.lines[0]?.[1][0]).toBeCloseTo(0.3 * 254, 9);
    expect(drawing.sigmaMm).toBe(0.5);
    // Of a picture so large that a pixel of it is more, that is how exactly a place can be marked.
    expect(readEyeWork({ ...work, widthMm: "2 m" }).drawing.sigmaMm).toBe(2);
  });

  it("has an upright length by its foot, whichever end was marked first", () => {
    const work = marked(newWork(PHOTO), "L", [
      [0.5, -0.1],
      [0.5, -0.5],
    ]);
    const long = { ...work, length: work.length && { ...work.length, long: "12'" } };
    const { drawing, units, troubles } = readEyeWork(long);
    expect(drawing.length?.ends[0][1]).toBeLessThan(drawing.length?.ends[1][1] ?? Number.NaN);
    expect(drawing.length?.metres).toBeCloseTo(3.6576, 9);
    expect(units).toBe("ft-in");
    expect(troubles.length).toBeNull();
  });

  it.each([
    ["", /Say how long it is/],
    ["12", /is not a length/],
    ["0 m", /above 0/],
    ["-3 m", /above 0/],
    ["a few feet", /is not a length/],
  ])("has no known length of %j, and says why", (long, why) => {
    const work = marked(newWork(PHOTO), "L", [
      [0.5, -0.5],
      [0.5, -0.1],
    ]);
    const { drawing, troubles } = readEyeWork({ ...work, length: work.length && { ...work.length, long } });
    expect(drawing.length).toBeNull();
    expect(troubles.length).toMatch(why);
  });

  it.each([
    ["3 to 2", 1.5],
    ["3:2", 1.5],
    ["3/2", 1.5],
    ["1,5", 1.5],
    ["12' x 8'", 1.5],
    [`3 1/2" by 7"`, 0.5],
    ["3 m × 200 cm", 1.5],
  ])("takes %j for a proportion", (typed, value) => {
    const read = readProportion(typed);
    expect(read.trouble).toBeNull();
    expect(read.value).toBeCloseTo(value, 9);
  });

  it.each(["0", "-2", "3 to 0", "wide", "3 to 2 to 1", "12' x 8", "1e400"])(
    "takes %j for none, and says so",
    (typed) => {
      expect(readProportion(typed)).toMatchObject({ value: null, trouble: expect.stringMatching(/\.$/) });
    },
  );

  it.each(["0", "", "-5", "0 mm", "1000 m", "twelve"])("takes %j for no size on paper", (typed) => {
    expect(readMm(typed)).toMatchObject({ ok: false, say: expect.stringMatching(/\.$/) });
  });

  it("reads the angle of a group, and refuses one beyond a half turn", () => {
    const at = (degrees: string) => readEyeWork(changeGroup(twoLines(), 0, { runs: "other", degrees }));
    expect(at("45°").drawing.parallels[0]?.bearingDeg).toBe(45);
    expect(at("180").drawing.parallels[0]?.bearingDeg).toBeNull();
    expect(at("180").troubles.degrees[0]).toMatch(/between 0 and 180/);
  });
});

describe("what is said of it", () => {
  const answer = (work: EyeWork) => {
    const { drawing, units } = readEyeWork(work);
    const eye = whoseEye(drawing, units);
    return { eye, drawing, known: sayKnown(eye), meetings: sayMeetings(work, drawing, eye) };
  };

  it("is where two lines cross, by hand: 50 mm down, 125 mm across", () => {
    const { eye, known, meetings } = answer(twoLines());
    expect(known[0]).toMatch(/^The horizon lies 50\.0 mm under the picture's upper edge \(give or take/);
    expect(meetings[0]).toBe("A meets 125.0 mm right of the picture's left edge, on the horizon.");
    expect(sayInShort(eye)).toBe("The horizon lies 50.0 mm down.");
    expect(sayInShort(answer(changeGroup(twoLines(), 0, { runs: "square" })).eye)).toContain("the CVP 125.0 mm across");
  });

  it("is which line of three misses where they meet, and by how much", () => {
    const work = [0.05, 0.35].reduce(
      (so, down) =>
        marked(so, "A", [
          [0.05, -down],
          [0.4, -0.2 - (down - 0.2) * (0.1 / 0.45)],
        ]),
      twoLines(),
    );
    expect(answer(work).meetings[0]).toContain("None of its lines misses");
    const wandering = marked(work, "A", [
      [0.05, -0.25],
      [0.4, -0.17],
    ]);
    expect(answer(wandering).meetings[0]).toMatch(/A5 misses it: its near end is \d+\.\d mm off/);
  });

  it("is a refusal in words where the marks do not go together", () => {
    const work = [0.2, 0.8].reduce(
      (so, right) =>
        marked(so, "U", [
          [right, -0.5],
          [right + 0.1, -0.1],
        ]),
      newWork(PHOTO),
    );
    const { eye } = answer(work);
    expect(eye).toMatchObject({ kind: "refused", why: "drawing is turned" });
    expect(sayInShort(eye)).toBe("These marks do not go together.");
    expect(sayInShort(null)).toBe("Nothing is marked yet.");
  });
});
