import { describe, expect, it } from "vitest";
import { newDraft } from "@/lib/draft/new-draft";
import { draftNotes } from "@/lib/draft/sense/draft-notes";
import { eyeNotes } from "@/lib/draft/sense/eye-notes";
import { platformNotes } from "@/lib/draft/sense/platform-notes";
import { stairNotes } from "@/lib/draft/sense/stair-notes";
import { FOOT_M, INCH_M } from "@/lib/measure/length";
import { edited } from "./make-draft";

const CAUTION = /A teaching sketch is not a construction drawing: local codes and licensed practice decide\.$/;

function flight(riserIn: number, treadIn: number, steps = 4) {
  return edited(newDraft("ft-in"), {
    edit: "add-stair",
    stair: {
      nosing: [
        [-1, 3],
        [1, 3],
      ],
      steps,
      riser: riserIn * INCH_M,
      tread: treadIn * INCH_M,
      base: 0,
    },
  });
}

describe("stairs against the usual limits", () => {
  // IBC 1011.5.2 as quoted by ADA 504.2 (corada.com, wbdg.org): riser 4 to 7 in, tread 11 in or more. Storey, fig. 248: 6 and 12 in.
  it.each([
    [6, 12],
    [7, 11],
    [6.5, 12],
    [4, 16],
  ])("says nothing of risers of %s in with treads of %s in", (riser, tread) => {
    expect(stairNotes(flight(riser, tread).exercise)).toEqual([]);
  });

  // Two risers and a tread make 24 to 25 in: unittables.com; "should equal 25 inches", armyengineer.tpub.com/EN5156.
  it.each([
    [8, 9, ['its riser of 8" is over 7"', 'its tread of 9" is under 11"']],
    [3, 18, ['its riser of 3" is under 4"']],
    [6, 11, [`two risers and a tread make 1'-11", not 2'-0" to 2'-1"`]],
    [7, 14, [`two risers and a tread make 2'-4"`]],
  ])("names what is wrong with risers of %s in and treads of %s in", (riser, tread, misses) => {
    const [note] = stairNotes(flight(riser, tread).exercise);
    for (const miss of misses) expect(note?.say).toContain(miss);
    expect(note?.remedy).toMatch(CAUTION);
  });

  it("offers a flight within all limits that climbs as high, and says so once", () => {
    const steep = flight(8, 9, 6);
    const notes = draftNotes(steep).filter(({ say }) => say.includes("usual limits"));
    expect(notes).toHaveLength(1);
    const edit = notes[0]?.edit;
    if (edit?.edit !== "change-stair") throw new Error("no flight is offered");
    expect((edit.change.steps ?? 0) * (edit.change.riser ?? 0)).toBeCloseTo(48 * INCH_M, 12);
    expect(stairNotes(edited(steep, edit).exercise)).toEqual([]);
  });

  it("offers nothing where no usual flight climbs just so high", () => {
    expect(stairNotes(flight(7.5, 11, 1).exercise)[0]?.edit).toBeUndefined();
  });
});

describe("platforms without a guard", () => {
  // 30 in: IBC 1015.2, from memory.
  it.each([
    [30, 0],
    [31, 1],
  ])("of %s in have %s notes", (inches, count) => {
    const draft = edited(newDraft("ft-in"), {
      edit: "add-platform",
      platform: {
        outline: [
          [0, 3],
          [2, 3],
          [2, 5],
          [0, 5],
        ],
        height: inches * INCH_M,
        base: 0,
      },
    });
    const notes = platformNotes(draft.exercise);
    expect(notes).toHaveLength(count);
    for (const { remedy } of notes) expect(remedy).toMatch(CAUTION);
  });
});

describe("an eye inside the set", () => {
  const room = (closed: boolean) =>
    edited(newDraft("ft-in"), {
      edit: "add-walls",
      corners: [
        [-5, -15],
        [-5, 5],
        [5, 5],
        [5, -15],
      ],
      closed,
      height: 3,
      thickness: 0,
    });

  it("is told where walls stand all round it, not where they leave a side open", () => {
    const [note] = eyeNotes(room(true).exercise);
    expect(note?.say).toBe("The eye is inside the set, with walls all round it.");
    expect(note?.things).toHaveLength(4);
    expect(eyeNotes(room(false).exercise)).toEqual([]);
  });

  it("is told where it stands in a piece of the set, and goes before it", () => {
    const draft = edited(newDraft("ft-in"), {
      edit: "add-platform",
      platform: {
        outline: [
          [-2, -13],
          [2, -13],
          [2, 0],
          [-2, 0],
        ],
        height: 0.3,
        base: 0,
      },
    });
    const [note] = eyeNotes(draft.exercise);
    expect(note?.say).toContain("platform P1");
    if (!note?.edit) throw new Error("no remedy");
    expect(eyeNotes(edited(draft, note.edit).exercise)).toEqual([]);
  });

  it("is told where it stands over the stage itself", () => {
    const draft = newDraft("ft-in");
    const near = edited(draft, { edit: "set-viewer", viewer: { ...draft.exercise.viewer, distance: 2 * FOOT_M } });
    expect(eyeNotes(near.exercise)[0]?.say).toContain("over the stage");
    expect(eyeNotes(near.exercise)[0]?.remedy).toBe(`Set the eye 9'-0" from the plaster line.`);
    expect(eyeNotes(draft.exercise)).toEqual([]);
  });
});
