import type { PDFDocumentProxy } from "pdfjs-dist";

/** Where the builder puts the reader's own worker and its decoders of scanned pictures: beside the page's own files. */
const WORKER = new URL("pdfjs-dist/legacy/build/pdf.worker.min.mjs", import.meta.url).href;
const DECODERS: Readonly<Record<string, string>> = {
  "jbig2.wasm": new URL("pdfjs-dist/wasm/jbig2.wasm", import.meta.url).href,
  "openjpeg.wasm": new URL("pdfjs-dist/wasm/openjpeg.wasm", import.meta.url).href,
  "qcms_bg.wasm": new URL("pdfjs-dist/wasm/qcms_bg.wasm", import.meta.url).href,
};

/** Dots to the inch that a scanned page is drawn at, for a pencil's line on any paper; PDF counts 72 to the inch. */
const DPI = 200;
const PDF_DPI = 72;
/** A page larger than this is drawn coarser, pixels. */
const MOST_PIXELS = 16e6;
/** Nearly lossless: faint pencil must come through. */
const JPEG_QUALITY = 0.95;
/** A scan of a class's sheets in colour, bytes. */
const MOST_PDF_BYTES = 150 * 1024 * 1024;
/** The mark of the form stands near the file's start, not always at it (ISO 32000-1, annex H, note 13). */
const HEAD_BYTES = 1024;

export type PdfPages = {
  readonly count: number;
  /** One page as a picture file, from 1; nothing of it is kept here afterwards. */
  readonly draw: (page: number) => Promise<Blob>;
  readonly close: () => Promise<void>;
};

export type OpenedPdf =
  | { readonly kind: "opened"; readonly pages: PdfPages }
  | { readonly kind: "refused"; readonly say: string; readonly remedy: string };

/** Whether a file is a PDF, by what stands in it, whatever it is called. */
export async function isPdf(file: Blob): Promise<boolean> {
  const head = new Uint8Array(await file.slice(0, HEAD_BYTES).arrayBuffer());
  return new TextDecoder("latin1").decode(head).includes("%PDF-");
}

/** Opens a scan of many pages; what reads it is fetched only now. */
export async function openPdf(file: Blob): Promise<OpenedPdf> {
  if (file.size > MOST_PDF_BYTES)
    return {
      kind: "refused",
      say: `This scan has more than ${MOST_PDF_BYTES / 1024 / 1024} MB.`,
      remedy: "Scan fewer sheets into one file, or with 200 dots to the inch.",
    };
  const { getDocument, PDFWorker } = await import("pdfjs-dist/legacy/build/pdf.mjs");
  const port = new Worker(WORKER, { type: "module" });
  const worker = PDFWorker.create({ port });
  const close = async () => {
    worker.destroy();
    port.terminate();
  };
  try {
    const data = new Uint8Array(await file.arrayBuffer());
    const book = await getDocument({ data, worker, useWorkerFetch: false, BinaryDataFactory: OwnDecoders }).promise;
    return { kind: "opened", pages: { count: book.numPages, draw: (page) => drawPage(book, page), close } };
  } catch (error) {
    await close();
    const locked = error instanceof Error && error.name === "PasswordException";
    return {
      kind: "refused",
      say: locked
        ? "This scan is locked with a password."
        : "This scan cannot be opened: it may have arrived incomplete.",
      remedy: locked ? "Save it without the password, and choose it again." : "Scan the sheets once more.",
    };
  }
}

async function drawPage(book: PDFDocumentProxy, number: number): Promise<Blob> {
  const page = await book.getPage(number);
  try {
    const { width, height } = page.getViewport({ scale: 1 });
    const scale = Math.min(DPI / PDF_DPI, Math.sqrt(MOST_PIXELS / (width * height)));
    const viewport = page.getViewport({ scale });
    const canvas = new OffscreenCanvas(Math.ceil(viewport.width), Math.ceil(viewport.height));
    const context = canvas.getContext("2d");
    if (!context) throw new Error("This browser gives no canvas to draw on.");
    // The reader asks no more of a canvas than one that is not on the page has.
    const canvasContext = context as unknown as CanvasRenderingContext2D;
    await page.render({ canvas: null, canvasContext, viewport, background: "#fff" }).promise;
    return await canvas.convertToBlob({ type: "image/jpeg", quality: JPEG_QUALITY });
  } finally {
    page.cleanup();
  }
}

/** Gives the reader its decoders from this server. Letters of a scan are a picture, so it is given no type faces. */
class OwnDecoders {
  async fetch({ filename }: { readonly filename: string }): Promise<Uint8Array> {
    const from = DECODERS[filename];
    if (from === undefined) throw new Error(`${filename} is not needed for scans.`);
    const answer = await fetch(from);
    if (!answer.ok) throw new Error(`${filename} could not be fetched.`);
    return new Uint8Array(await answer.arrayBuffer());
  }
}
