/** Why a file cannot be read as a photograph, and what to do. */
export type FileTrouble = {
  readonly why: "not a picture" | "other kind" | "damaged" | "too large" | "too small" | "moving" | "printing colours";
  /** A whole sentence, for the student. */
  readonly say: string;
  readonly remedy: string;
};

/** What the head of a picture's file says: its size in pixels, or what is wrong. */
export type HeadReading = { readonly width: number; readonly height: number } | FileTrouble;

export const NOT_A_PICTURE: FileTrouble = {
  why: "not a picture",
  say: "The file is not a picture.",
  remedy: "Choose a photograph: JPEG, PNG, WebP or HEIC.",
};

export const DAMAGED: FileTrouble = {
  why: "damaged",
  say: "The picture is damaged: a part of the file is missing or makes no sense.",
  remedy: "Send it again from the telephone, or take the photograph again.",
};

export const MOVING: FileTrouble = {
  why: "moving",
  say: "The picture moves: it holds several pictures one after the other.",
  remedy: "Choose a single photograph.",
};

export const PRINTING_COLOURS: FileTrouble = {
  why: "printing colours",
  say: "The picture is kept in a printer's four colours (CMYK), which no camera does.",
  remedy: "Save it in RGB, or choose the photograph as it came from the camera.",
};

/** A file of another kind, named with its article. */
export function otherFile(kind: string): FileTrouble {
  return {
    why: "other kind",
    say: `The file is ${kind}, not a photograph.`,
    remedy: "Choose a photograph: JPEG, PNG, WebP or HEIC.",
  };
}

/** More pixels than are read. */
export function tooManyPixels(width: number, height: number, most: number): FileTrouble {
  return {
    why: "too large",
    say: `The picture has ${width} by ${height} pixels, more than the ${most / 1e6} million that are read.`,
    remedy: "Take the photograph at the camera's usual size: 12 million pixels are plenty.",
  };
}

/** Too few pixels for a sheet to be in them. */
export function tooFewPixels(width: number, height: number): FileTrouble {
  return {
    why: "too small",
    say: `The picture has only ${width} by ${height} pixels: no line of a drawing can be seen in it.`,
    remedy: "Send the photograph in its full size.",
  };
}

/** A file of more bytes than are read. */
export function tooManyBytes(most: number): FileTrouble {
  return {
    why: "too large",
    say: `The file is larger than ${most / 1e6} MB.`,
    remedy: "Take the photograph at the camera's usual size, as JPEG or HEIC.",
  };
}
