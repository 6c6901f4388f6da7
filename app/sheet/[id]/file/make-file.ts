import { pageToPng } from "@/lib/drawing/paper/page-to-png";
import { pageToSvg } from "@/lib/drawing/paper/page-to-svg";
import { pagesToPdf } from "@/lib/drawing/paper/pages-to-pdf";
import type { PaperPage } from "@/lib/drawing/paper/paper-page";
import type { Format } from "../order";

export type MadeFile = { readonly body: Uint8Array<ArrayBuffer> | string; readonly type: string };

/** Fine enough for a slide or a screen; paper is printed from the PDF. */
const PNG_DPI = 200;

/** The file of one page, or, as a PDF, of all of them. */
export async function makeFile(
  format: Format,
  pages: readonly [PaperPage, ...PaperPage[]],
  page: PaperPage,
  title: string,
): Promise<MadeFile> {
  switch (format) {
    case "pdf":
      return { body: new Uint8Array(await pagesToPdf(pages, { title })), type: "application/pdf" };
    case "svg":
      return { body: pageToSvg(page), type: "image/svg+xml; charset=utf-8" };
    case "png":
      return { body: new Uint8Array(await pageToPng(page, { dpi: PNG_DPI })), type: "image/png" };
  }
}
