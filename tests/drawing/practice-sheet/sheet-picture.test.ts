import { describe, expect, it } from "vitest";
import type { Lettering } from "@/lib/drawing/display-list";
import { letteredWidthMm } from "@/lib/drawing/paper/letter-widths";
import { sheetPicture } from "@/lib/drawing/practice-sheet/sheet-picture";
import { overlap, type SheetBox, sheetBox } from "@/lib/sheet/sheet-box";
import { shippedExercise } from "./exercises";

/** So far from one name to the next, millimetres. */
const APART_MM = 1.9;

/** A lettering's capitals in millimetres of paper right and down from the foot of the centre line, with white round them. */
function boxOf({ at, text, heightMm, anchor, shiftMm }: Lettering, scaleRatio: number, white: number): SheetBox {
  const mm = 1000 / scaleRatio;
  const width = letteredWidthMm(text, heightMm);
  const left = at[0] * mm + shiftMm[0] - (anchor === "end" ? width : 0);
  const top = -at[1] * mm - shiftMm[1] - heightMm;
  return sheetBox(left - white, top - white, width + 2 * white, heightMm + 2 * white);
}

const base = shippedExercise("raking-wall");

/** Half metres from the middle of the opening to either side. */
const OFFSETS = Array.from({ length: 13 }, (_, i) => (i - 6) / 2);
const WIDTHS_M = [8, 9, 10, 12];

describe("the picture on a practice sheet", () => {
  it.each([50, 75, 100, 125])(
    "keeps at 1:%d the horizon's name inside the opening and clear of the CVP, wherever that is",
    (scaleRatio) => {
      for (const width of WIDTHS_M)
        for (const offset of OFFSETS) {
          const stage = { ...base.stage, opening: { ...base.stage.opening, width } };
          const exercise = { ...base, scaleRatio, stage, viewer: { ...base.viewer, offset } };
          const letters = sheetPicture(exercise).stage.filter((item) => item.kind === "lettering");
          const name = letters.find(({ id }) => id === "picture.horizon.name");
          const cvp = letters.find(({ id }) => id === "picture.cvp.name");
          if (!name || !cvp) throw new Error("A name is missing.");
          expect(name.text).toBe("HORIZON 2600 mm");
          const box = boxOf(name, scaleRatio, 0);
          expect(overlap(box, boxOf(cvp, scaleRatio, APART_MM))).toBe(false);
          const half = (width * 1000) / scaleRatio / 2;
          expect(box.left).toBeGreaterThan(-half);
          expect(box.right).toBeLessThan(half);
        }
    },
  );
});
