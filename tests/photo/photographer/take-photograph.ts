import { layOutPracticeSheet, type PracticeSheet } from "@/lib/drawing/practice-sheet/lay-out-practice-sheet";
import { studentPage } from "@/lib/drawing/practice-sheet/student-page";
import type { Exercise } from "@/lib/exercise/exercise";
import type { Mark } from "@/lib/exercise/marks";
import type { PageFit } from "@/lib/photo/page-fit";
import type { PhotoPoint } from "@/lib/photo/pixels";
import { MARKER_QUIET_MM, markerPlaces } from "@/lib/sheet/marker-places";
import { type Paper, paperSize } from "@/lib/sheet/paper-size";
import type { SheetPlace } from "@/lib/sheet/place-drawings";
import { grow } from "@/lib/sheet/sheet-box";
import { aimCamera } from "./aim-camera";
import { type Camera, meetSheet, seeSheet, trueFit } from "./camera";
import { type Conditions, GOOD_PHOTOGRAPH } from "./conditions";
import { develop } from "./develop";
import { throwDice } from "./dice";
import { type DrawnLine, drawnLines } from "./drawn-lines";
import { expose } from "./expose";
import { strokesOfCross, strokesOfLine } from "./hand-strokes";
import { layGraphite } from "./lay-graphite";
import { lightField } from "./light-field";
import { rasterPage } from "./page-raster";
import { hatching, lettering, signature, smudges } from "./scribbles";
import { layThumb } from "./thumb";

export type Shot = Partial<Conditions> & {
  readonly exercise: Exercise;
  readonly paper: Paper;
  /** What was drawn on the sheet; metres, as in a marks file. */
  readonly marks: readonly Mark[];
  readonly seed: number;
  readonly copy?: number | null;
};

export type Photograph = {
  readonly jpeg: Buffer;
  /** Upright, as it is looked at. */
  readonly width: number;
  readonly height: number;
  readonly truth: Truth;
};

export type Truth = {
  readonly sheet: PracticeSheet;
  readonly conditions: Conditions;
  /** Where each mark was drawn, millimetres of the sheet, and the lines between them. */
  readonly places: ReadonlyMap<string, SheetPlace>;
  readonly lines: readonly DrawnLine[];
  /** Ids of the markers that are in the picture with the white round them, and under no thumb. */
  readonly markers: readonly number[];
  /** Those, and the ones that are in it in part: whoever finds these as well is not wrong. */
  readonly markersAtMost: readonly number[];
  /** Of flat paper; null for curled, which no such fit can meet. */
  readonly fit: PageFit | null;
  photoFromSheet(place: SheetPlace): PhotoPoint;
  sheetFromPhoto(at: PhotoPoint): SheetPlace;
};

/** The page's raster is about this much finer than the photograph shows it. */
const FINER = 1.15;

/** Prints an exercise's sheet, draws a student's marks on it in pencil, and photographs it: the same for the same seed. */
export async function takePhotograph({
  exercise,
  paper,
  marks,
  seed,
  copy = null,
  ...asked
}: Shot): Promise<Photograph> {
  const conditions: Conditions = { ...GOOD_PHOTOGRAPH, ...asked };
  const sheet = layOutPracticeSheet(exercise, { paper, copy });
  if (!sheet) throw new Error(`The sheet of ${exercise.id} does not fit on ${paper}.`);
  const camera = aimCamera(conditions, paperSize(paper));
  const page = await rasterPage(studentPage(sheet, copy), FINER * finestPerMm(camera, paper));
  const drawn = drawnLines(sheet, marks);
  const { pencil } = conditions;
  const hand = throwDice(seed, "hand");
  const scribble = throwDice(seed, "scribbles");
  const { name } = sheet.layout;
  const strokes = [
    ...drawn.lines.flatMap((line) => strokesOfLine(line, pencil, hand)),
    ...drawn.crosses.flatMap((place) => strokesOfCross(place, pencil, hand)),
    ...hatching(drawn, pencil, scribble),
    ...lettering(drawn, pencil, scribble),
    ...(pencil.lettering > 0 ? signature([name.left + 13, name.top + 4.5], pencil, scribble) : []),
  ];
  layGraphite(page, strokes, smudges(drawn, pencil, scribble), seed);
  const thumb = conditions.thumbOn === null ? null : layThumb(paper, conditions.thumbOn);
  const sensor = expose(camera, page, lightField(camera, conditions, throwDice(seed, "light")), thumb);
  return {
    jpeg: await develop(sensor, camera, conditions, throwDice(seed, "sensor")),
    width: camera.width,
    height: camera.height,
    truth: {
      sheet,
      conditions,
      places: drawn.places,
      lines: drawn.lines,
      markers: markersSeen(camera, paper, conditions.thumbOn, MARKER_QUIET_MM),
      markersAtMost: markersSeen(camera, paper, conditions.thumbOn, -PART_MM),
      fit: conditions.curlMm === 0 ? trueFit(camera) : null,
      photoFromSheet: (place) => seeSheet(camera, place),
      sheetFromPhoto: (at) => meetSheet(camera, at),
    },
  };
}

/** Pixels a millimetre where the paper is nearest to the camera. */
function finestPerMm(camera: Camera, paper: Paper): number {
  const { widthMm, heightMm } = paperSize(paper);
  const corners: readonly SheetPlace[] = [0, widthMm].flatMap((x) => [0, heightMm].map((y): SheetPlace => [x, y]));
  const perMm = corners.flatMap((place) => {
    const at = seeSheet(camera, place);
    return [
      [1, 0],
      [0, 1],
    ].map(([dx = 0, dy = 0]) => {
      const beside = seeSheet(camera, [place[0] + dx, place[1] + dy]);
      return Math.hypot(beside[0] - at[0], beside[1] - at[1]);
    });
  });
  return Math.max(...perMm);
}

/** A marker may lack so much of its outer squares and still be told. */
const PART_MM = 1;

function markersSeen(camera: Camera, paper: Paper, thumbOn: number | null, roundMm: number): readonly number[] {
  return markerPlaces(paper).flatMap(({ id, box }) => {
    const { left, top, right, bottom } = grow(box, roundMm);
    const corners: readonly SheetPlace[] = [left, right].flatMap((x) => [top, bottom].map((y): SheetPlace => [x, y]));
    const inside = corners.every((corner) => {
      const [x, y] = seeSheet(camera, corner);
      return x > 0 && y > 0 && x < camera.width && y < camera.height;
    });
    return inside && id !== thumbOn ? [id] : [];
  });
}
