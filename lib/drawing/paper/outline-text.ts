import type { DrawingPoint } from "../display-list";
import type { FaceRun, Faces } from "./faces";
import type { TextMark } from "./page-marks";

/** A text's letters one run after another: where each run begins and in which file of a face. Millimetres of the page. */
export type SetRun = FaceRun & { readonly at: DrawingPoint; readonly widthMm: number };

/** Where the runs of a text stand on the page. */
export function setText({ text, face, sizeMm, anchor, at }: TextMark, faces: Faces): readonly SetRun[] {
  const runs = faces.runs(text, face).map((run) => {
    const font = faces.font(run.file);
    return { ...run, widthMm: (font.layout(run.text).advanceWidth / font.unitsPerEm) * sizeMm };
  });
  const width = runs.reduce((sum, run) => sum + run.widthMm, 0);
  let x = at[0] - (anchor === "start" ? 0 : anchor === "end" ? width : width / 2);
  return runs.map((run) => {
    const start = x;
    x += run.widthMm;
    return { ...run, at: [start, at[1]] };
  });
}

/** The outlines of a text's letters as SVG path data in millimetres of the page: letters that need no installed face. */
export function outlineText(mark: TextMark, faces: Faces): string {
  return setText(mark, faces)
    .map(({ file, text, at }) => {
      const font = faces.font(file);
      const scale = mark.sizeMm / font.unitsPerEm;
      const { glyphs, positions } = font.layout(text);
      let pen = 0;
      return glyphs
        .map((glyph, i) => {
          const position = positions[i];
          const x = at[0] + (pen + (position?.xOffset ?? 0)) * scale;
          pen += position?.xAdvance ?? 0;
          return glyph.path.scale(scale, -scale).translate(x, at[1]).toSVG();
        })
        .join("");
    })
    .join("");
}
