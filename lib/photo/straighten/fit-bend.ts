import type { SheetPlace } from "../../sheet/place-drawings";
import { type Bend, bendPlace, bendTerms, TERMS } from "./bend";
import type { Guide } from "./printed-guides";
import { solveLinear } from "./solve-linear";

/** Where a stretch of print is seen: so far across it from where the sheet's fit has it, millimetres; and what it counts for. */
export type SeenGuide = { readonly guide: Guide; readonly offMm: number; readonly weight: number };

export type FittedBend = {
  readonly bend: Bend;
  /** What it leaves over at each stretch, and whether it rests on that one. */
  readonly left: readonly number[];
  readonly kept: readonly boolean[];
  /** How far it may have a place wrong by what the stretches do not tell of it: one standard deviation, millimetres. */
  unsureMm(place: SheetPlace): number;
};

/** How near a stretch is seen at least, and how large the bend's coefficients are thought to be: it steadies what no stretch tells. Millimetres. */
const SEEN_MM = 0.015;
const EXPECTED_MM = 1.5;
/** What is off by so many times the usual is another thing than the print: Tukey's weights, and their usual constant. */
const TUKEY = 4.685;
/** The usual size from the middle one, as for a normal spread. */
const USUAL = 1.4826;
const ROUNDS = 10;

type Frame = Pick<Bend, "middle" | "unitMm">;

/**
 * The bend by which stretches of print lie where they are seen: least squares, what contradicts the others counting for less and less
 * until it counts for nothing. Null where there is none to fit.
 */
export function fitBend(seen: readonly SeenGuide[], frame: Frame): FittedBend | null {
  const rows = seen.map(({ guide }) => rowOf(guide, frame));
  let weights = seen.map(({ weight }) => weight);
  let fitted: FittedBend | null = null;
  for (let round = 0; round < ROUNDS; round++) {
    const normal = normalOf(rows, seen, weights, fitted ? usualOf(fitted.left) : SEEN_MM);
    const answer = solveLinear(normal.matrix, normal.right);
    if (!answer) return null;
    const bend = { ...frame, right: answer.slice(0, TERMS), down: answer.slice(TERMS) };
    const left = leftOver(seen, bend);
    const usual = usualOf(left);
    weights = left.map((each, i) => {
      const share = each / (TUKEY * usual);
      return Math.abs(share) < 1 ? (1 - share * share) ** 2 * (seen[i] as SeenGuide).weight : 0;
    });
    const kept = weights.map((weight) => weight > 0);
    fitted = { bend, left, kept, unsureMm: (place) => unsure(normal.matrix, frame, place, usual) };
  }
  return fitted;
}

/** What a bend leaves over at each stretch, millimetres across it. */
export function leftOver(seen: readonly Pick<SeenGuide, "guide" | "offMm">[], bend: Bend | null): readonly number[] {
  return seen.map(({ guide, offMm }) => offMm - movedAcross(guide, bend));
}

/** How far a bend moves a stretch across itself, millimetres to the right of its way. */
export function movedAcross({ at, along }: Guide, bend: Bend | null): number {
  const [right, down] = bendPlace(bend, at);
  return (down - at[1]) * along[0] - (right - at[0]) * along[1];
}

function usualOf(left: readonly number[]): number {
  const sizes = left.map(Math.abs).sort((a, b) => a - b);
  return Math.max(SEEN_MM, USUAL * (sizes[sizes.length >> 1] ?? 0));
}

function rowOf(guide: Guide, frame: Frame): Float64Array {
  const terms = bendTerms(frame, guide.at);
  const { along } = guide;
  return Float64Array.from([...terms.map((term) => -term * along[1]), ...terms.map((term) => term * along[0])]);
}

type Normal = { readonly matrix: readonly (readonly number[])[]; readonly right: readonly number[] };

/** The equations for the coefficients; one loop over typed arrays, for its speed. */
function normalOf(
  rows: readonly Float64Array[],
  seen: readonly SeenGuide[],
  weights: readonly number[],
  usual: number,
): Normal {
  const n = 2 * TERMS;
  const sums = new Float64Array(n * n);
  const right = new Float64Array(n);
  for (const [k, row] of rows.entries()) {
    const weight = weights[k] as number;
    if (weight === 0) continue;
    for (let i = 0; i < n; i++) {
      const share = weight * (row[i] as number);
      right[i] = (right[i] as number) + share * (seen[k] as SeenGuide).offMm;
      for (let j = 0; j <= i; j++) sums[i * n + j] = (sums[i * n + j] as number) + share * (row[j] as number);
    }
  }
  const prior = (usual / EXPECTED_MM) ** 2;
  const matrix = Array.from({ length: n }, (_, i) =>
    Array.from({ length: n }, (__, j) => (sums[Math.max(i, j) * n + Math.min(i, j)] as number) + (i === j ? prior : 0)),
  );
  return { matrix, right: [...right] };
}

/** The standard deviation that the equations leave to a place, its two directions together. */
function unsure(matrix: Normal["matrix"], frame: Frame, place: SheetPlace, usual: number): number {
  const terms = bendTerms(frame, place);
  const none = terms.map(() => 0);
  return (
    usual *
    Math.sqrt(
      [
        [...terms, ...none],
        [...none, ...terms],
      ].reduce((sum, row) => {
        const answer = solveLinear(matrix, row);
        return answer ? sum + row.reduce((part, each, i) => part + each * (answer[i] as number), 0) : Infinity;
      }, 0),
    )
  );
}
