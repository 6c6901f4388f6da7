/** Grey pixels row by row from the upper left, 0 black to 255 white. */
export type GreyPixels = { readonly width: number; readonly height: number; readonly grey: Uint8Array };

/** A place in a photograph, pixels right and down; [0.5, 0.5] is the middle of its first pixel. */
export type PhotoPoint = readonly [right: number, down: number] & { readonly frame?: "photo" };
