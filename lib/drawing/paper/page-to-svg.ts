import { type FaceFile, type Faces, openFaces } from "./faces";
import { outlineText, setText } from "./outline-text";
import { type Ground, HALO_MM, PENCIL_COLOUR, TONE_COLOUR } from "./page-colours";
import { type PageMark, pageMarks, type TextMark } from "./page-marks";
import type { PaperPage } from "./paper-page";
import { withoutControls } from "./printable-letters";

export type SvgOptions = {
  readonly ground?: Ground;
  /** `embedded`: text is text, with its faces in the file; `outlines`: letters are drawn, and no face is needed. */
  readonly text?: "embedded" | "outlines";
  /** How many pixels wide and high it is; left out, it has its real size in millimetres. */
  readonly pixels?: readonly [width: number, height: number];
};

/** A page as an SVG document in real millimetres: printed at 100 %, it can be measured with a scale rule. */
export function pageToSvg(page: PaperPage, { ground = "white", text = "embedded", pixels }: SvgOptions = {}): string {
  const faces = openFaces();
  const marks = pageMarks(page);
  const used = new Set<FaceFile>();
  const drawn = marks.map((mark) => markSvg(mark, ground, (letters) => textSvg(letters, ground, text, faces, used)));
  const [width, height] = [round(page.widthMm), round(page.heightMm)];
  const size = pixels ? `width="${pixels[0]}" height="${pixels[1]}"` : `width="${width}mm" height="${height}mm"`;
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" ${size} viewBox="0 0 ${width} ${height}" stroke-linecap="round" stroke-linejoin="round">`,
    `<title>${escapeText(page.title)}</title>`,
    ...(used.size > 0 ? [`<style>${[...used].map((file) => fontFace(file, faces)).join("")}</style>`] : []),
    `<rect width="${width}" height="${height}" fill="${TONE_COLOUR[ground].paper}"/>`,
    ...drawn,
    "</svg>",
    "",
  ].join("\n");
}

function markSvg(mark: PageMark, ground: Ground, letters: (mark: TextMark) => string): string {
  if (mark.kind === "text") return letters(mark);
  if (mark.kind === "area") return `<path d="${mark.d}" fill="${TONE_COLOUR[ground][mark.tone]}"/>`;
  const dashes = mark.dashMm.length > 0 ? ` stroke-dasharray="${mark.dashMm.join(" ")}" stroke-linecap="butt"` : "";
  const strength = mark.strength < 1 ? ` stroke-opacity="${mark.strength}"` : "";
  return `<path d="${mark.d}" fill="none" stroke="${PENCIL_COLOUR[mark.pencil]}" stroke-width="${mark.widthMm}"${dashes}${strength}/>`;
}

function textSvg(
  mark: TextMark,
  ground: Ground,
  text: "embedded" | "outlines",
  faces: Faces,
  used: Set<FaceFile>,
): string {
  const fill = `fill="${PENCIL_COLOUR[mark.pencil]}"${mark.strength < 1 ? ` fill-opacity="${mark.strength}"` : ""}`;
  const around = `stroke="${TONE_COLOUR[ground].paper}" stroke-width="${2 * HALO_MM}"`;
  if (text === "outlines") {
    const d = outlineText(mark, faces);
    if (d === "") return "";
    // Drawn twice, since not every program that reads SVG knows an order of painting.
    const halo = mark.breaksLines ? `<path d="${d}" fill="none" ${around}/>` : "";
    return `${halo}<path d="${d}" ${fill}/>`;
  }
  const runs = setText(mark, faces).map(({ file, written, at }) => {
    used.add(file);
    // Letters as written: whoever shows the file may have a face for those that ours lack.
    return `<tspan x="${round(at[0])}" font-family="${file},sans-serif">${escapeText(written)}</tspan>`;
  });
  const halo = mark.breaksLines ? ` ${around} paint-order="stroke"` : "";
  return `<text y="${round(mark.at[1])}" font-size="${round(mark.sizeMm)}" xml:space="preserve" ${fill}${halo}>${runs.join("")}</text>`;
}

function fontFace(file: FaceFile, faces: Faces): string {
  const data = faces.bytes(file).toString("base64");
  return `@font-face{font-family:"${file}";src:url(data:font/woff;base64,${data}) format("woff")}`;
}

function escapeText(text: string): string {
  return withoutControls(text)
    .replaceAll("&", "&amp;")
    .replaceAll("<", "&lt;")
    .replaceAll(">", "&gt;")
    .replaceAll('"', "&quot;");
}

function round(value: number): number {
  return Math.round(value * 1000) / 1000;
}
