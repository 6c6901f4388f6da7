import type { OpenCv } from "@/lib/photo/straighten/open-cv";
import type { ReadBarcodes } from "@/lib/photo/straighten/read-code";

/** The two programs that a photograph is read with. */
export type Tools = { readonly cv: OpenCv; readonly readBarcodes: ReadBarcodes };

/** Where the builder puts the files: beside the page's own, each with its contents' mark in its name. */
const OPENCV = new URL("@opencvjs/web/lib/opencv_js.js", import.meta.url).href;
const CODE_READER = new URL("zxing-wasm/reader/zxing_reader.wasm", import.meta.url).href;
const HEIC = new URL("libheif-js/libheif-wasm/libheif-bundle.mjs", import.meta.url).href;

/** OpenCV, 13 MB, fetched as it is: the builder would take minutes over it, and has nothing to add. */
export async function loadOpenCv(): Promise<OpenCv> {
  const { default: start } = (await import(/* turbopackIgnore: true */ OPENCV)) as {
    readonly default: () => Promise<OpenCv>;
  };
  return start();
}

/** The reader of codes, whose program would else be fetched from another server. */
export async function loadCodeReader(): Promise<ReadBarcodes> {
  const { prepareZXingModule, readBarcodes } = await import("zxing-wasm/reader");
  prepareZXingModule({ overrides: { locateFile: () => CODE_READER } });
  return readBarcodes as ReadBarcodes;
}

/** Of the decoder of HEIC, what is used here. */
export type HeicDecoder = {
  readonly HeifDecoder: new () => {
    decode(file: ArrayBuffer): readonly HeicPicture[];
    readonly decoder: { delete(): void };
  };
};
export type HeicPicture = {
  get_width(): number;
  get_height(): number;
  display(
    into: { readonly data: Uint8ClampedArray; readonly width: number; readonly height: number },
    done: (filled: { readonly data: Uint8ClampedArray } | null) => void,
  ): void;
  free(): void;
};

export async function loadHeicDecoder(): Promise<HeicDecoder> {
  const { default: start } = (await import(/* turbopackIgnore: true */ HEIC)) as {
    readonly default: () => HeicDecoder | Promise<HeicDecoder>;
  };
  return start();
}
