import { OTHER_SIZE_REMEDY, percent } from "./judge-bar";

/** What is wrong with a photograph, or doubtful about it, and what to do. */
export type PhotoTrouble = {
  readonly why:
    | "too dark"
    | "too blurred"
    | "too small"
    | "cut off"
    | "not our sheet"
    | "code unreadable"
    | "newer sheet"
    | "two sheets"
    | "not flat"
    | "marker left out"
    | "printed at another size";
  /** A whole sentence, for the student. */
  readonly say: string;
  readonly remedy: string;
};

export const TOO_DARK: PhotoTrouble = {
  why: "too dark",
  say: "The photograph is too dark to read.",
  remedy: "Take it again near a window or under a lamp, with no shadow of your own on the sheet.",
};
export const TOO_BLURRED: PhotoTrouble = {
  why: "too blurred",
  say: "The photograph is too blurred to read.",
  remedy: "Hold still until the camera has focused, or lean the telephone on something, and take it again.",
};
export const TOO_SMALL: PhotoTrouble = {
  why: "too small",
  say: "The sheet is too small in the photograph for its lines to be read.",
  remedy: "Go nearer, so that the sheet nearly fills the picture, and send the photograph in its full size.",
};

export const NOT_OUR_SHEET: PhotoTrouble = {
  why: "not our sheet",
  say: "No practice sheet is found in the photograph: none of its eight square markers is seen.",
  remedy:
    "Photograph the whole printed sheet from above, so that it nearly fills the picture. A drawing on other paper is checked by setting the corners of its opening by hand.",
};

export const TWO_SHEETS: PhotoTrouble = {
  why: "two sheets",
  say: "More than one sheet is in the photograph.",
  remedy: "Photograph one sheet at a time, with the others out of view.",
};

export const PARTLY_OUTSIDE: PhotoTrouble = {
  why: "cut off",
  say: "A part of the sheet lies outside the photograph, and what is drawn there cannot be read.",
  remedy: "Where lines are missing, take it again with a little of the table all round.",
};

export const NO_CODE: PhotoTrouble = {
  why: "code unreadable",
  say: "The square code at the sheet's right edge cannot be read, so the exercise is not known.",
  remedy: "Keep the code clear and flat and in the light, go nearer, and take the photograph again.",
};

export const OTHER_CODE: PhotoTrouble = {
  why: "not our sheet",
  say: "The code in the photograph is not that of a practice sheet.",
  remedy: "Photograph a sheet that was printed here, with no other code in view.",
};

export const NEWER_SHEET: PhotoTrouble = {
  why: "newer sheet",
  say: "The sheet was printed by a newer version of this program.",
  remedy: "Check it with that version, or print the exercise again from this one.",
};

export const SPOILED_CODE: PhotoTrouble = {
  why: "code unreadable",
  say: "The code on the sheet is one of ours, but what it says makes no sense.",
  remedy: "Print the exercise again, and draw on the new sheet.",
};

export const NOT_A_PLANE: PhotoTrouble = {
  why: "not flat",
  say: "The sheet's markers do not stand where they do on a flat sheet of its paper.",
  remedy: "Lay the sheet flat, with no other one in view, hold its corners down and take the photograph from above.",
};

export const BUNCHED: PhotoTrouble = {
  why: "cut off",
  say: "The markers that are seen stand all in one part of the sheet: where the rest of it lies cannot be told.",
  remedy: "Photograph the whole sheet, with nothing lying on its edges, and a little of the table all round.",
};

/** Under four markers, and how many. */
export function fewMarkers(count: number): PhotoTrouble {
  const number = ["None", "Only one", "Only two", "Only three"][count] ?? `Only ${count}`;
  return {
    why: "cut off",
    say: `${number} of the sheet's eight square markers ${count > 1 ? "are" : "is"} seen plainly, and four are needed.`,
    remedy: "Photograph the whole sheet, with nothing lying on its edges, and a little of the table all round.",
  };
}

/** Exactly four: they determine the sheet's place, and none is left to check the others by. */
export const NONE_TO_CHECK_BY: PhotoTrouble = {
  why: "cut off",
  say: "Only four of the sheet's eight markers are seen: enough to place it, with none to check them by.",
  remedy:
    "See whether the printed lines lie where they should; if they do not, take it again with the whole sheet in view.",
};

/** Markers that contradict the others. */
export function markersLeftOut(count: number): PhotoTrouble {
  return {
    why: "marker left out",
    say:
      count === 1
        ? "One of the sheet's markers does not stand where the others say, and was not used."
        : `${count} of the sheet's markers do not stand where the others say, and were not used.`,
    remedy: "A corner of the sheet may be folded or lifted: lay it flat if lines near it are off.",
  };
}

/** Between the markers, curled paper is off by about so many times what is left over at them: 2 to 4.5 in photographs of rolled sheets. */
const BETWEEN = 4;

/** Paper that is not flat, and by how much its markers show it, millimetres. */
export function notFlat(residualMm: number): PhotoTrouble {
  return notFlatBy(BETWEEN * residualMm);
}

/** The same by how far places on it may be off, millimetres. */
export function notFlatBy(mm: number): PhotoTrouble {
  return {
    why: "not flat",
    say: `The paper is not flat: places on it may be off by about ${mm.toFixed(1)} mm.`,
    remedy: "Hold its corners down, or press it under a pane of glass, and take the photograph from straight above.",
  };
}

/** The markers say where the sheet lies, and its lines are not there, or cannot be seen. */
export const LINES_ASTRAY: PhotoTrouble = {
  why: "not flat",
  say: "The sheet's printed lines are not seen plainly where its markers say: places on it may be off.",
  remedy: "Lay the sheet flat, with nothing over the drawing, and take a sharp photograph from straight above.",
};

/** A sheet that its paper's edges show to be printed smaller or larger, and how many times its size. */
export function printedAtAnotherSize(share: number): PhotoTrouble {
  return {
    why: "printed at another size",
    say: `The sheet seems to be printed at ${percent(share)} of its size: measure its bar.`,
    remedy: OTHER_SIZE_REMEDY,
  };
}
