import type { Pencil, Tone } from "../display-list";

/** The paper a page is shown on: `white` is what a printer has, and costs no ink; `cream` is the drawing board's. */
export type Ground = "white" | "cream";

export const PENCIL_COLOUR: Readonly<Record<Pencil, string>> = { graphite: "#2b2926", blue: "#1f5fa8", red: "#b3322c" };

const CREAM: Readonly<Record<Exclude<Tone, "none">, string>> = {
  paper: "#f6f0df",
  floor: "#eee4cd",
  wall: "#cfc6b3",
  ink: "#000000",
};
const WHITE: Readonly<Record<Exclude<Tone, "none">, string>> = {
  paper: "#ffffff",
  floor: "#f7f6f3",
  wall: "#d9d6d0",
  ink: "#000000",
};

export const TONE_COLOUR: Readonly<Record<Ground, Readonly<Record<Exclude<Tone, "none">, string>>>> = {
  white: WHITE,
  cream: CREAM,
};

/** Lettering breaks the lines it crosses by this much all round, millimetres. */
export const HALO_MM = 0.45;
