import { beforeAll, describe, expect, it, vi } from "vitest";
import { decodePhoto } from "@/lib/cli/photo/decode-photo";
import { loadSheetTools } from "@/lib/cli/photo/load-sheet-tools";
import { readSheet, type SheetTools } from "@/lib/photo/straighten/read-sheet";
import { shippedExercise } from "@/tests/drawing/practice-sheet/exercises";
import { takePhotograph } from "../photographer/take-photograph";
import { emptyPictures, hopelessFiles, oddFiles } from "./stress-files";

/** A busy computer takes its time. */
vi.setConfig({ testTimeout: 60_000, hookTimeout: 60_000 });

/** A plain message: a whole sentence that names no part of the program. */
const sentence = expect.stringMatching(/^[A-Z](?!.*(undefined|NaN|Error|vips|libheif|buffer)).*\.$/);
/** What refusing may take of memory at most, over all these files: a picture of 200 megapixels alone would be 200 or 600. */
const MOST_MEGABYTES = 120;

const exercise = shippedExercise("raking-wall");
let tools: SheetTools;
let photograph: Uint8Array;
beforeAll(async () => {
  tools = await loadSheetTools();
  photograph = (await takePhotograph({ exercise, paper: "letter", marks: [], seed: 1, megapixels: 4 })).jpeg;
});

describe("a file that is no photograph", () => {
  it("is refused in a plain sentence with what to do, whatever it is", async () => {
    const files = await hopelessFiles(photograph);
    expect(files.length).toBeGreaterThan(20);
    for (const { what, bytes } of files) {
      const { kind, ...told } = await decodePhoto(bytes);
      expect({ what, kind, ...told }).toEqual({
        what,
        kind: "refused",
        why: expect.any(String),
        say: sentence,
        remedy: sentence,
      });
    }
  });

  it("takes no more memory for saying that it is large", async () => {
    const files = (await hopelessFiles(photograph)).filter(({ what }) => what.includes("says"));
    expect(files.length).toBeGreaterThanOrEqual(5);
    const before = process.memoryUsage().rss;
    for (const { bytes } of files) await decodePhoto(bytes);
    expect((process.memoryUsage().rss - before) / 2 ** 20).toBeLessThan(MOST_MEGABYTES);
  });
});

describe("an odd file with a photograph in it", () => {
  it("is read as what it shows", async () => {
    for (const { what, bytes } of await oddFiles(photograph)) {
      const decoded = await decodePhoto(bytes);
      if (decoded.kind === "refused") throw new Error(`${what}: ${decoded.say}`);
      const sheet = await readSheet(tools, decoded.grey);
      expect({ what, ...sheet }).toMatchObject({ what, kind: "straight", code: { exercise: exercise.id } });
    }
  });
});

describe("a picture without a sheet", () => {
  it("is read, and told to show none", async () => {
    for (const { what, bytes } of await emptyPictures()) {
      const decoded = await decodePhoto(bytes);
      const told = decoded.kind === "refused" ? decoded : await readSheet(tools, decoded.grey);
      expect({ what, ...told }).toMatchObject({ what, kind: "refused", say: sentence, remedy: sentence });
    }
  });
});
