import type { Line } from "./form";

/** The field for a one-time word, filled in where a link brought it. */
export function wordLine(label: string, word: string): Line {
  const note = word ? "Your link has filled this in." : "Twenty letters. Capitals and dashes do not matter.";
  return { name: "word", label, note, start: word };
}

/** The field for a password that is chosen here. */
export function newPasswordLine(label: string): Line {
  return {
    name: "password",
    label,
    type: "password",
    note: "At least 10 letters; a few words do well.",
    autoComplete: "new-password",
  };
}
