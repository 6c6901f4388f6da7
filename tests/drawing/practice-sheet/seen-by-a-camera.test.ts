import { readFileSync } from "node:fs";
import { loadOpenCV } from "@opencvjs/web";
import { describe, expect, it } from "vitest";
import { prepareZXingModule, readBarcodes } from "zxing-wasm/reader";
import { practiceSheetPages } from "@/lib/drawing/practice-sheet/practice-sheet-pages";
import { markerPlaces } from "@/lib/sheet/marker-places";
import { PAPERS, type Paper } from "@/lib/sheet/paper-size";
import { readSheetCode } from "@/lib/sheet/sheet-code";
import { type Pixels, rasterise } from "../rasterise";
import { shippedExercise } from "./exercises";

/** OpenCV's corners lie this near to where the layout has them, millimetres. */
const CORNER_MM = 0.1;
const DPI = 400;
/** What a page fills of a photograph of twelve megapixels, about. */
const COARSE_DPI = 200;

// The reader's own program, from the installed package: it would fetch it from the network.
prepareZXingModule({
  overrides: {
    wasmBinary: readFileSync("node_modules/zxing-wasm/dist/reader/zxing_reader.wasm").buffer as ArrayBuffer,
  },
});

type Corner = readonly [x: number, y: number];
/** The part of OpenCV's detector that its own types leave out. */
type Detector = {
  getPredefinedDictionary(id: number): object;
  readonly DICT_APRILTAG_36h11: number;
  readonly aruco_DetectorParameters: new () => { cornerRefinementMethod: number };
  readonly aruco_RefineParameters: new (
    minRepDistance: number,
    errorCorrectionRate: number,
    checkAllOrders: boolean,
  ) => object;
  readonly aruco_ArucoDetector: new (
    dictionary: object,
    parameters: object,
    refine: object,
  ) => {
    detectMarkers(image: object, corners: object, ids: object): void;
  };
};
/** Corners to a fraction of a pixel (CORNER_REFINE_SUBPIX). */
const SUBPIXEL = 1;

/** The markers OpenCV's own detector finds in a page, with their corners in its order, millimetres. */
async function findMarkers({ width, height, grey, perMm }: Pixels): Promise<ReadonlyMap<number, readonly Corner[]>> {
  const cv = await loadOpenCV();
  const aruco = cv as unknown as Detector;
  const image = new cv.Mat(height, width, cv.CV_8UC1);
  image.data.set(grey);
  const parameters = new aruco.aruco_DetectorParameters();
  parameters.cornerRefinementMethod = SUBPIXEL;
  const dictionary = aruco.getPredefinedDictionary(aruco.DICT_APRILTAG_36h11);
  const detector = new aruco.aruco_ArucoDetector(dictionary, parameters, new aruco.aruco_RefineParameters(10, 3, true));
  const [corners, ids] = [new cv.MatVector(), new cv.Mat()];
  detector.detectMarkers(image, corners, ids);
  const found = new Map<number, readonly Corner[]>();
  for (let i = 0; i < corners.size(); i++) {
    const id = ids.data32S[i];
    const at = [...corners.get(i).data32F].map((pixel) => (pixel + 0.5) / perMm);
    if (id !== undefined)
      found.set(
        id,
        [0, 2, 4, 6].map((k): Corner => [at[k] ?? NaN, at[k + 1] ?? NaN]),
      );
  }
  image.delete();
  return found;
}

/** What zxing reads of a page's codes. */
async function readCodes({ width, height, grey }: Pixels): Promise<readonly string[]> {
  const data = new Uint8ClampedArray(width * height * 4);
  for (const [i, value] of grey.entries()) data.set([value, value, value, 255], 4 * i);
  const image = { data, width, height, colorSpace: "srgb" } as ImageData;
  return (await readBarcodes(image, { formats: ["QRCode"] })).map(({ text }) => text);
}

async function studentSheet(id: string, paper: Paper, copy: number | null, dpi: number): Promise<Pixels> {
  const [page] = practiceSheetPages(shippedExercise(id), { paper, copy });
  if (!page) throw new Error("The sheet does not fit.");
  return rasterise(page, dpi);
}

describe("a sheet as a camera sees it", () => {
  it.each(PAPERS)(
    "has on %s eight markers where the layout has them, upright, for OpenCV's own detector",
    async (paper) => {
      const found = await findMarkers(await studentSheet("the-tide-office", paper, null, DPI));
      expect([...found.keys()].sort()).toEqual([0, 1, 2, 3, 4, 5, 6, 7]);
      for (const { id, box } of markerPlaces(paper)) {
        // Clockwise from the upper left: the order in which an upright marker's corners come.
        const expected: readonly Corner[] = [
          [box.left, box.top],
          [box.right, box.top],
          [box.right, box.bottom],
          [box.left, box.bottom],
        ];
        expected.forEach(([x, y], i) => {
          const [X, Y] = found.get(id)?.[i] ?? [NaN, NaN];
          expect(Math.hypot(X - x, Y - y)).toBeLessThan(CORNER_MM);
        });
      }
    },
  );

  it.each([
    ["the-tide-office", "letter", null, "1/8in=1ft"],
    ["where-the-furniture-stood", "a4", 17, "1:100"],
    ["nine-lamps", "tabloid", 3, "3/16in=1ft"],
    ["raking-wall", "a3", null, "1:50"],
  ] as const)("says in its code that it is %s on %s", async (exercise, paper, copy, scale) => {
    const codes = await readCodes(await studentSheet(exercise, paper, copy, COARSE_DPI));
    expect(codes).toHaveLength(1);
    expect(readSheetCode(codes[0] ?? "")).toEqual({
      kind: "read",
      code: { exercise, version: 1, page: 1, paper, scale, copy },
    });
  });

  it("has neither markers nor a code on the pages of its key", async () => {
    const pages = practiceSheetPages(shippedExercise("the-tide-office"), { paper: "letter", key: "all" });
    expect(pages).toHaveLength(4);
    for (const page of pages.slice(1)) {
      const pixels = await rasterise(page, COARSE_DPI);
      expect((await findMarkers(pixels)).size).toBe(0);
      expect(await readCodes(pixels)).toEqual([]);
    }
  });
});
