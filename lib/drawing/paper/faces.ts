import { readFileSync } from "node:fs";
import { join } from "node:path";
import { create, type Font } from "fontkit";
import type { FaceName } from "./letter-widths";

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
  plain: ["national-park", "national-park-more", "architects-daughter"],
  strong: ["national-park-strong", "national-park", "national-park-more"],
};

/** The faces of one document, each file read once. */
export type Faces = {
  bytes(file: FaceFile): Buffer;
  font(file: FaceFile): Font;
  /** A text cut into runs of letters that one file has. A letter that none has goes to the first. */
  runs(text: string, face: FaceName): readonly { readonly file: FaceFile; readonly text: string }[];
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
      const runs: { file: FaceFile; text: string }[] = [];
      for (const letter of text) {
        const codePoint = letter.codePointAt(0) ?? 0;
        const file =
          FALLBACKS[face].find((each) => open(each).font.hasGlyphForCodePoint(codePoint)) ?? FALLBACKS[face][0];
        const last = runs.at(-1);
        if (last?.file === file) last.text += letter;
        else runs.push({ file, text: letter });
      }
      return runs;
    },
  };
}
