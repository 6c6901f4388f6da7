import { readFile } from "node:fs/promises";
import { createRequire } from "node:module";
import type { OpenCv } from "../../photo/straighten/open-cv";
import type { SheetTools } from "../../photo/straighten/read-sheet";

/**
 * The programs that read a sheet, from the installed packages: nothing comes from a network. They are large, and loaded only
 * where a photograph is read.
 */
export async function loadSheetTools(): Promise<SheetTools> {
  const { loadOpenCV } = await import("@opencvjs/web");
  const { prepareZXingModule, readBarcodes } = await import("zxing-wasm/reader");
  const program = await readFile(createRequire(import.meta.url).resolve("zxing-wasm/reader/zxing_reader.wasm"));
  prepareZXingModule({ overrides: { wasmBinary: new Uint8Array(program).buffer } });
  // The package's own types leave its marker detector out.
  const cv = (await loadOpenCV()) as unknown as OpenCv;
  return { cv, readBarcodes: (image, { formats }) => readBarcodes(image, { formats }) };
}
