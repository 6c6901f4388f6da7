import type { PracticeSheet } from "../../drawing/practice-sheet/lay-out-practice-sheet";
import { paperSize } from "../../sheet/paper-size";
import type { SheetBox } from "../../sheet/sheet-box";
import type { PageFit } from "../page-fit";
import type { GreyPixels } from "../pixels";
import type { StraightPage } from "../straight-page";
import type { Bend } from "./bend";
import { type FittedBend, fitBend, movedAcross, type SeenGuide } from "./fit-bend";
import { judgeBend, type Moved } from "./judge-bend";
import { measureGuide } from "./measure-guide";
import { type Guide, lineGuides, markerGuides } from "./printed-guides";
import { awayFrom } from "./seen-box";
import { straighten } from "./straighten";

/** Print is looked for so far across from where it is thought to be: the markers first, twice; then the lines, by what those say. Millimetres. */
const MARKERS_MM = [2.2, 0.6] as const;
const LINES_MM = [0.9, 0.5] as const;
/** So far from the drawing print counts for half, millimetres: paper may bend otherwise there. */
const NEAR_MM = 60;

/**
 * A box of a sheet seen straight on, as `straighten` has it, though the paper curls: where the sheet's own print is seen in the
 * photograph says how it bends, and the page is read by that. Flat paper is read by its fit alone, and so is a page of which the
 * print says too little; `moved` says which, and how far places may be off. Millimetres of the sheet.
 */
export function registerPage(
  grey: GreyPixels,
  fit: PageFit,
  sheet: PracticeSheet,
  box: SheetBox,
  pixelsPerMm: number,
): { readonly page: StraightPage; readonly moved: Moved } {
  const moved = findBend(grey, fit, sheet, box);
  return { page: straighten(grey, fit, box, pixelsPerMm, moved.bend), moved };
}

/** How the paper bends in and round a box of the sheet, by its print: the whole sheet's, that near the box before the rest. */
function findBend(grey: GreyPixels, fit: PageFit, sheet: PracticeSheet, box: SheetBox): Moved {
  const { widthMm, heightMm } = paperSize(sheet.paper);
  const frame = { middle: [widthMm / 2, heightMm / 2], unitMm: Math.hypot(widthMm, heightMm) / 2 } as const;
  const look = (guides: readonly Guide[], bend: Bend | null, reachMm: number) =>
    guides.flatMap((guide): SeenGuide[] => {
      const off = measureGuide(grey, fit, bend, guide, reachMm);
      if (off === null) return [];
      const weight = 1 / (1 + (awayFrom(box, guide.at) / NEAR_MM) ** 2);
      return [{ guide, offMm: off + movedAcross(guide, bend), weight }];
    });
  const [sides, lines] = [markerGuides(sheet), lineGuides(sheet)];
  let markers: readonly SeenGuide[] = [];
  let fitted: FittedBend | null = null;
  for (const reachMm of MARKERS_MM) {
    markers = look(sides, fitted?.bend ?? null, reachMm);
    fitted = fitBend(markers, frame);
  }
  let seen = markers;
  for (const reachMm of LINES_MM) {
    seen = [...markers, ...look(lines, fitted?.bend ?? null, reachMm)];
    fitted = fitBend(seen, frame);
  }
  return judgeBend(
    seen,
    fitted,
    box,
    [...sides, ...lines].map(({ at }) => at),
  );
}
