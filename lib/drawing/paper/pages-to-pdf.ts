import PDFDocument from "pdfkit";
import { type FaceFile, type Faces, openFaces } from "./faces";
import { outlineText, setText } from "./outline-text";
import { HALO_MM, PENCIL_COLOUR, TONE_COLOUR } from "./page-colours";
import { type PageMark, pageMarks, type TextMark } from "./page-marks";
import type { PaperPage } from "./paper-page";

/** A PDF counts in points, 72 to the inch. */
const POINTS_PER_MM = 72 / 25.4;

export type PdfInfo = {
  readonly title: string;
  readonly author?: string;
  /** The same moment gives the same bytes; left out, now. */
  readonly madeAt?: Date;
};

/**
 * Pages as a PDF of lines, in real size: text is text, and its faces are in the file. Printed at 100 %, it can be measured
 * with a scale rule, and the file asks the program that opens it not to fit its pages to the paper. Throws when there is no page.
 */
export async function pagesToPdf(pages: readonly PaperPage[], { title, author, madeAt }: PdfInfo): Promise<Uint8Array> {
  if (pages.length === 0) throw new Error("A PDF needs at least one page.");
  const info = {
    Title: title,
    Creator: "Plasterline",
    ...(author === undefined ? {} : { Author: author }),
    ...(madeAt ? { CreationDate: madeAt } : {}),
  };
  const document = new PDFDocument({
    autoFirstPage: false,
    margin: 0,
    pdfVersion: "1.7",
    info,
    displayTitle: true,
    lang: "en",
  });
  askForTrueSize(document);
  const written = gather(document);
  const faces = openFaces();
  const registered = new Set<FaceFile>();
  for (const page of pages) {
    document.addPage({ size: [page.widthMm * POINTS_PER_MM, page.heightMm * POINTS_PER_MM], margin: 0 });
    document.scale(POINTS_PER_MM);
    document.lineCap("round").lineJoin("round");
    for (const mark of pageMarks(page)) drawMark(document, mark, faces, registered);
  }
  document.end();
  return written;
}

/** A wish of the file, kept by most programs: printed as large as it is (PrintScaling, ISO 32000-1, 12.2; from memory). */
function askForTrueSize(document: PDFKit.PDFDocument): void {
  // The library writes its viewer's wishes at the end, but has no word for this one, and the types do not know them.
  const { _root } = document as unknown as {
    _root: { data: { ViewerPreferences?: { data: Record<string, unknown> } } };
  };
  const wishes = _root.data.ViewerPreferences;
  if (wishes) wishes.data.PrintScaling = "None";
}

function gather(document: PDFKit.PDFDocument): Promise<Uint8Array> {
  return new Promise((resolve, reject) => {
    const chunks: Buffer[] = [];
    document.on("data", (chunk: Buffer) => chunks.push(chunk));
    document.on("end", () => resolve(new Uint8Array(Buffer.concat(chunks))));
    document.on("error", reject);
  });
}

function drawMark(document: PDFKit.PDFDocument, mark: PageMark, faces: Faces, registered: Set<FaceFile>): void {
  if (mark.kind === "text") {
    drawText(document, mark, faces, registered);
    return;
  }
  if (mark.kind === "area") {
    document.path(mark.d).fill(TONE_COLOUR.white[mark.tone]);
    return;
  }
  document.save().lineWidth(mark.widthMm).strokeOpacity(mark.strength);
  // The types know of one length only; the library takes a pattern.
  if (mark.dashMm.length > 0) document.lineCap("butt").dash([...mark.dashMm] as unknown as number, {});
  document.path(mark.d).stroke(PENCIL_COLOUR[mark.pencil]).restore();
}

function drawText(document: PDFKit.PDFDocument, mark: TextMark, faces: Faces, registered: Set<FaceFile>): void {
  // The halo is drawn from outlines: as text it would be read out twice.
  const outline = mark.breaksLines ? outlineText(mark, faces) : "";
  if (outline !== "")
    document
      .save()
      .lineWidth(2 * HALO_MM)
      .path(outline)
      .stroke(TONE_COLOUR.white.paper)
      .restore();
  document.save().fillOpacity(mark.strength).fillColor(PENCIL_COLOUR[mark.pencil]).fontSize(mark.sizeMm);
  for (const { file, text, at } of setText(mark, faces)) {
    if (!registered.has(file)) document.registerFont(file, faces.bytes(file));
    registered.add(file);
    document.font(file).text(text, at[0], at[1], { lineBreak: false, baseline: "alphabetic" });
  }
  document.restore();
}
