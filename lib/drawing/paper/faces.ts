import { readFileSync } from "node:fs";
import { join } from "node:path";
import { create, type Font } from "fontkit";
import type { FaceName } from "./letter-widths";
import { printableLetters } from "./printable-letters";

/**
 * The files of the faces, best first: a letter that a face lacks is set in the next. They are read from the installed packages
 * under the folder the program runs in, which is the project's own.
 * Of the two compressions the plainer: of the other the PDF writer cannot cut composed letters out.
 */
const FILES = {
  "architects-daughter": "architects-daughter/files/architects-daughter-latin-400-normal.woff",
  "architects-daughter-more": "architects-daughter/files/architects-daughter-latin-ext-400-normal.woff",
  "national-park": "national-park/files/national-park-latin-400-normal.woff",
  "national-park-more": "national-park/files/national-park-latin-ext-400-normal.woff",
  "national-park-strong": "national-park/files/national-park-latin-600-normal.woff",
} as const;
export type FaceFile = keyof typeof FILES;

const FALLBACKS: Readonly<Record<FaceName, readonly [FaceFile, ...FaceFile[]]>> = {
  drafting: ["architects-daughter", "architects-daughter-more", "national-park", "national-park-more"],
  plain: ["national-park", "national-park-more", "architects-daughter", "architects-daughter-more"],
  strong: ["national-park-strong", "national-park", "national-park-more"],
};

/** Letters of a text that stand in one file of a face: as they are written, and as they are printed (see `printableLetters`). */
export type FaceRun = { readonly file: FaceFile; readonly written: string; readonly text: string };

/** The faces of one document, each file read once. */
export type Faces = {
  bytes(file: FaceFile): Buffer;
  font(file: FaceFile): Font;
  /** A text cut into runs of letters that one file has. What stands for a letter that none has goes to the first that has that. */
  runs(text: string, face: FaceName): readonly FaceRun[];
};

export function openFaces(): Faces {
  const read = new Map<FaceFile, { readonly bytes: Buffer; readonly font: Font }>();
  const open = (file: FaceFile) => {
    const known = read.get(file);
    if (known) return known;
    const bytes = readFileSync(join(process.cwd(), "node_modules", "@fontsource", FILES[file]));
    const font = create(bytes);
    if (!("layout" in font)) throw new Error(`The face ${FILES[file]} is a collection of faces, not one.`);
    const opened = { bytes, font };
    read.set(file, opened);
    return opened;
  };
  return {
    bytes: (file) => open(file).bytes,
    font: (file) => open(file).font,
    runs: (text, face) => {
      const fileOf = (letters: string) => FALLBACKS[face].find((file) => hasAll(open(file).font, letters));
      const runs: FaceRun[] = [];
      for (const { written, printed } of printableLetters(text, (letters) => fileOf(letters) !== undefined)) {
        const file = fileOf(printed) ?? FALLBACKS[face][0];
        const last = runs.at(-1);
        if (last?.file === file)
          runs[runs.length - 1] = { file, written: last.written + written, text: last.text + printed };
        else runs.push({ file, written, text: printed });
      }
      return runs;
    },
  };
}

function hasAll(font: Font, letters: string): boolean {
  return [...letters].every((letter) => font.hasGlyphForCodePoint(letter.codePointAt(0) ?? 0));
}
