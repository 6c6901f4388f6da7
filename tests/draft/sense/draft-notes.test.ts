import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { applyEdit } from "@/lib/draft/edits/apply-edit";
import { draftFromExercise, newDraft } from "@/lib/draft/new-draft";
import { draftNotes } from "@/lib/draft/sense/draft-notes";
import type { Note } from "@/lib/draft/sense/note";
import { thingKey } from "@/lib/draft/sense/note-place";
import { checkSense } from "@/lib/exercise/check-sense";
import { loadExercises } from "@/lib/exercise/load-exercises";
import { FOOT_M } from "@/lib/measure/length";
import { seeded } from "../../seeded";
import { everything } from "../any-edit";
import { anyDraft, edited, tideOfficeDraft } from "./make-draft";

const says = (notes: readonly Note[], words: string) => notes.find(({ say }) => say.includes(words));

describe("notes of the sense checks", () => {
  it("says once of an empty stage that nothing stands on it, and that it is no exercise yet", () => {
    const notes = draftNotes(newDraft("m"));
    expect(notes).toHaveLength(1);
    expect(notes[0]).toMatchObject({ weight: "fault", where: "stage" });
  });

  it("tells a crossing of both walls, as a fault", () => {
    const draft = edited(
      newDraft("m"),
      {
        edit: "add-walls",
        corners: [
          [-2, 3],
          [2, 3],
        ],
        closed: false,
        height: 3,
        thickness: 0,
      },
      {
        edit: "add-walls",
        corners: [
          [0, 1],
          [0, 5],
        ],
        closed: false,
        height: 3,
        thickness: 0,
      },
    );
    expect(says(draftNotes(draft), "crosses wall")).toMatchObject({
      weight: "fault",
      where: { kind: "wall", id: "W2" },
      things: [
        { kind: "wall", id: "W2" },
        { kind: "wall", id: "W1" },
      ],
    });
  });

  it("tells an opening that runs past its wall's end of that opening, and offers to move it back", () => {
    const draft = tideOfficeDraft(["/plan/walls/3/openings/0/at", 20]);
    const note = says(draftNotes(draft), "past its wall's end");
    expect(note).toMatchObject({ weight: "fault", where: { kind: "opening", wall: "W4", id: "door" } });
    expect(note?.edit).toMatchObject({ edit: "change-opening", wall: "W4", id: "door" });
  });

  it("tells an eye too near of the thing behind it", () => {
    const draft = tideOfficeDraft(["/viewer/distance", 2], ["/plan/corners/R", [-17, -2.5]]);
    expect(says(draftNotes(draft), "R.foot is level with the eye or behind it")).toMatchObject({
      weight: "fault",
      where: { kind: "corner", id: "R" },
    });
  });

  it("gathers the corners outside the frame into one note", () => {
    const draft = edited(newDraft("m"), {
      edit: "add-walls",
      corners: [
        [-9, 0.2],
        [-8, 0.1],
        [8, 0.1],
        [9, 0.2],
      ],
      closed: false,
      height: 3,
      thickness: 0,
    });
    const outside = draftNotes(draft).filter(({ say }) => say.includes("outside the frame"));
    expect(outside).toHaveLength(1);
    expect(outside[0]?.things).toHaveLength(4);
    expect(outside[0]?.weight).toBe("note");
  });

  it("mends a mark outside the frame by not asking for it", () => {
    const draft = tideOfficeDraft(["/task/marks", ["B.foot", "R.foot"]], ["/plan/corners/R", [-24, 1]]);
    const note = draftNotes(draft).find(({ where, say }) => where === "task" && say.startsWith("R.foot"));
    expect(note?.edit).toEqual({ edit: "set-task", task: { marks: ["B.foot"] } });
    expect(note?.things).toEqual([{ kind: "corner", id: "R" }]);
  });
});

describe("marks that are hard to grade", () => {
  it("are one note, with the lowest eye on a round height that mends it", () => {
    const low = tideOfficeDraft(["/viewer/eyeHeight", 3], ["/task/strictness", "thumbnail"]);
    const note = says(draftNotes(low), "hard to grade");
    expect(note).toMatchObject({ weight: "note", where: "viewer" });
    expect(note?.remedy).toMatch(/^Raise the eye to \d+'-\d+"\.$/);
    if (note?.edit?.edit !== "set-viewer") throw new Error("another remedy");
    const { eyeHeight } = note.edit.viewer;
    expect(eyeHeight / (FOOT_M / 2)).toBeCloseTo(Math.round(eyeHeight / (FOOT_M / 2)), 9);
    const hard = (height: number) =>
      checkSense(
        edited(low, { edit: "set-viewer", viewer: { ...low.exercise.viewer, eyeHeight: height } }).exercise,
      ).some(({ message }) => message.includes("hard to grade"));
    expect(hard(eyeHeight)).toBe(false);
    expect(hard(eyeHeight - FOOT_M / 2)).toBe(true);
  });

  it("are drawn larger where no eye below the opening's head is high enough, and not asked where no scale is", () => {
    const far = (opening: number) =>
      tideOfficeDraft(
        ["/viewer/eyeHeight", 3.5],
        ["/stage/opening/height", opening],
        ["/plan/corners/B", [-7, 24]],
        ["/scale", "1/8in=1ft"],
      );
    const note = says(draftNotes(far(4)), "hard to grade");
    expect(note?.edit?.edit).toBe("set-sheet");
    expect(note?.remedy).toMatch(/^Draw at .+ = 1'-0"\.$/);
    const edgeOn = tideOfficeDraft(["/viewer/eyeHeight", 0.001], ["/stage/opening/height", 0.4]);
    expect(says(draftNotes(edgeOn), "hard to grade")?.edit?.edit).toBe("set-task");
  });
});

describe("notes of any draft", () => {
  it("speak only of what is there, in whole sentences, faults first", () => {
    fc.assert(
      fc.property(anyDraft, (draft) => {
        const there = new Set(everything(draft).map(thingKey));
        const notes = draftNotes(draft);
        for (const { where, things, say, remedy } of notes) {
          if (typeof where === "object") expect(there).toContain(thingKey(where));
          for (const thing of things) expect(there).toContain(thingKey(thing));
          expect(say).toMatch(/^\S.*[.?!]$/);
          expect(remedy).toMatch(/^\S.*[.?!]$/);
        }
        const weights = notes.map(({ weight }) => weight);
        expect(weights).toEqual([...weights].sort());
      }),
      seeded,
    );
  });

  it("are faults just where the sense checks find one", () => {
    fc.assert(
      fc.property(anyDraft, (draft) => {
        const found = checkSense(draft.exercise).some(({ weight }) => weight === "fault");
        expect(draftNotes(draft).some(({ weight }) => weight === "fault")).toBe(found);
      }),
      seeded,
    );
  });

  it("offer only changes that can be made, and that silence them", () => {
    fc.assert(
      fc.property(anyDraft, (draft) => {
        for (const { say, where, edit } of draftNotes(draft)) {
          if (!edit) continue;
          const after = applyEdit(draft, edit);
          if (!after.ok) throw new Error(`${say} ${JSON.stringify(edit)}: ${after.say}`);
          const again = draftNotes(after.draft).filter(
            (n) => n.say === say && JSON.stringify(n.where) === JSON.stringify(where),
          );
          expect(again, JSON.stringify(edit)).toEqual([]);
        }
      }),
      seeded,
    );
  }, 60_000);
});

it("finds no fault with the course's own exercises", async () => {
  for (const entry of await loadExercises("exercises")) {
    if (!entry.ok) throw new Error(entry.file);
    const notes = draftNotes(draftFromExercise(entry.exercise));
    expect(notes.filter(({ weight }) => weight === "fault")).toEqual([]);
  }
});
