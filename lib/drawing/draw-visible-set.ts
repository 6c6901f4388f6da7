import type { Exercise } from "../exercise/exercise";
import type { SolidLine } from "../plan/solids/solid";
import type { LineWeight, Stroke } from "./display-list";
import { finishedScene } from "./finished/finished-scene";
import { joinPieces } from "./finished/join-pieces";
import { drawOnce } from "./hidden-lines/draw-once";
import { visibleLines } from "./hidden-lines/visible-lines";
import { makeStroke } from "./make-stroke";

/** What the eye sees of one thing of the set, by its id; of the bare stage under `stage`. */
export type VisibleThing = { readonly element: string; readonly strokes: readonly Stroke[] };

/** The element whose lines are the floor's edges, the back wall's and the plain points' crosses. */
const STAGE_LINES = "stage";
const SPIKES = "spike";

type Manner = { readonly weight: LineWeight; readonly faint: boolean };

const EDGE: Manner = { weight: "thick", faint: false };
const THIN: Manner = { weight: "thin", faint: false };
const FAINT: Manner = { weight: "thin", faint: true };

/**
 * The set with hidden lines removed, thing by thing, as the student's own lines are drawn: walls and platforms thick, the rest
 * thin, without shade. Picture metres, [X, Z]; what lies behind the eye or outside the opening is left out. A line that two
 * things share is drawn with one of them.
 */
export function drawVisibleSet({
  plan,
  stage,
  viewer,
}: Pick<Exercise, "plan" | "stage" | "viewer">): readonly VisibleThing[] {
  const { faces, lines } = finishedScene({ plan, stage, viewer }, null);
  const heavy = new Set([...plan.walls, ...plan.platforms].map(({ id }) => id));
  const mannerOf = ({ element, kind, faces: [first] }: SolidLine): Manner => {
    if (element === STAGE_LINES || kind === "detail") return FAINT;
    const of = faces[first ?? -1]?.kind;
    return heavy.has(element) && (of === "wall" || of === "platform") ? EDGE : THIN;
  };
  const at = (line: number) => lines[line] as SolidLine;
  const rank = (line: SolidLine) => [EDGE, THIN, FAINT].indexOf(mannerOf(line));
  const pieces = drawOnce(visibleLines({ faces, lines }, viewer), ({ line }) => rank(at(line)));
  const byElement = new Map<string, typeof pieces>();
  for (const piece of pieces) {
    const { element } = at(piece.line);
    const name = element === SPIKES ? STAGE_LINES : element;
    byElement.set(name, [...(byElement.get(name) ?? []), piece]);
  }
  return [...byElement].map(([element, own]) => {
    const styled = own.map(({ line, from, to }) => {
      const { id } = at(line);
      const { weight, faint } = mannerOf(at(line));
      return { id, stem: id.replace(/\.\d+$/, ""), style: `${weight} ${faint}`, from, to };
    });
    const strokes = joinPieces(styled).map(({ id, style, points, closed }) => {
      const [weight, faint] = style.split(" ") as [LineWeight, string];
      return makeStroke(`own.${id}`, points, { closed, weight, faint: faint === "true", hand: true });
    });
    return { element, strokes };
  });
}
