import type { Brought } from "../brought";
import type { LayerUse } from "./place-brought";

/** What layers are called in offices and shops, in English, German, French, Spanish and Italian (common practice, no source). */
const OPENING_WORDS =
  /door|window|opening|glaz|\bt(?:ü|ue)r|fenster|[oö]e?ffnung|porte|fen[eê]tre|puerta|ventana|porta|finestra/i;
const WALL_WORDS = /wall|flat|set\b|scenery|wand|w[aä]nde|mauer|kulisse|\bmurs?\b|ch[aâ]ssis|muro|pared|parete/i;
/** Layers about walls that are no walls. */
const NOT_WORDS = /hatch|dim|text|note|tag|hardware|symbol|schraff|bema|cot[ae]/i;

/** What each layer of a brought drawing may be for, by its name: a first guess for the author to mend. Hidden layers are ignored. */
export function guessLayerUse({ layers }: Pick<Brought, "layers">): Readonly<Record<string, LayerUse>> {
  return Object.fromEntries(layers.map(({ name, hidden }) => [name, hidden ? "ignore" : guessByName(name)]));
}

function guessByName(name: string): LayerUse {
  // Names are often run together with codes: A-WALL, WALLS_NEW.
  const words = name.replace(/[_\d-]+/g, " ");
  if (NOT_WORDS.test(words)) return "ignore";
  if (OPENING_WORDS.test(words)) return "openings";
  return WALL_WORDS.test(words) ? "walls" : "ignore";
}
