import type { SheetPlace } from "../../sheet/place-drawings";
import type { SheetBox } from "../../sheet/sheet-box";

/** What crosses are looked for in: how strongly each pixel answers as the middle of a stroke, and where print hides it. */
export type CrossField = {
  readonly strength: Float32Array;
  readonly mask: Uint8Array;
  readonly width: number;
  readonly height: number;
  readonly pixelsPerMm: number;
  readonly box: SheetBox;
  /** A stroke's usual answer on this page. */
  readonly usual: number;
};

/** A cross: where it stands, and how dark its faintest arm is against the usual stroke. */
export type Cross = { readonly at: SheetPlace; readonly clear: number };

/** An arm is looked at from here to there from its middle, millimetres: hands make arms of about 2 mm. */
const ARM_MM = [0.4, 0.7, 1, 1.3, 1.6] as const;
/** Places tried: every so many millimetres, then so many around the best. */
const GRID_MM = 0.25;
const FINE_MM = 0.1;
const TURNS = 6;
/** An arm this much fainter than the usual stroke is none. */
const FAINTEST = 0.35;
/** Of an arm this share must be clear of print to say anything. */
const SEEN_SHARE = 0.5;
/** A cross of which one arm is not seen is taken for this much less clear. */
const THREE_ARMS = 0.7;
/** Two crosses do not stand nearer to each other, millimetres. */
const APART_MM = 1.8;
/** Nearer than this the fainter one must be nearly as clear: arms of one cross and its neighbour's make a third between them. */
const BETWEEN_MM = 3.2;
const BETWEEN_SHARE = 0.75;

/** Small crosses of two square strokes, however turned, also where several overlap and where print hides an arm or two. */
export function findCrosses(field: CrossField): readonly Cross[] {
  const { width, height, pixelsPerMm, box, usual } = field;
  if (!(usual > 0)) return [];
  const step = GRID_MM * pixelsPerMm;
  const reach = 1.7 * pixelsPerMm;
  const found: { x: number; y: number; turn: number; clear: number }[] = [];
  for (let y = reach; y < height - reach; y += step)
    for (let x = reach; x < width - reach; x += step) {
      if (!nearStroke(field, x, y)) continue;
      const best = bestTurn(field, x, y);
      if (best.clear >= FAINTEST * usual) found.push({ x, y, ...best });
    }
  found.sort((a, b) => b.clear - a.clear);
  const kept: typeof found = [];
  for (const one of found) {
    const isNew = kept.every(({ x, y, clear }) => {
      const off = Math.hypot(x - one.x, y - one.y) / pixelsPerMm;
      return off >= BETWEEN_MM || (off >= APART_MM && one.clear >= BETWEEN_SHARE * clear);
    });
    if (isNew) kept.push(settle(field, one));
  }
  return kept.map(({ x, y, clear }) => ({
    at: [box.left + x / pixelsPerMm, box.top + y / pixelsPerMm],
    clear: clear / usual,
  }));
}

/** Bare paper all round is passed over at once: most of a page is. */
function nearStroke({ strength, mask, width, usual, pixelsPerMm }: CrossField, x: number, y: number): boolean {
  const r = Math.round(0.25 * pixelsPerMm);
  for (let v = -r; v <= r; v += r)
    for (let u = -r; u <= r; u += r) {
      const at = Math.floor(y + v) * width + Math.floor(x + u);
      if (mask[at] || (strength[at] as number) > FAINTEST * usual) return true;
    }
  return false;
}

function bestTurn(field: CrossField, x: number, y: number): { turn: number; clear: number } {
  let best = { turn: 0, clear: 0 };
  for (let k = 0; k < TURNS; k++) {
    const turn = (k * Math.PI) / (2 * TURNS);
    const clear = clearness(field, x, y, turn);
    if (clear > best.clear) best = { turn, clear };
  }
  return best;
}

/** How dark the faintest of the arms that are seen is; 0 where fewer than three are, or none of one of the strokes. */
function clearness(
  { strength, mask, width, height, pixelsPerMm }: CrossField,
  x: number,
  y: number,
  turn: number,
): number {
  let faintest = Infinity;
  let seenArms = 0;
  const strokes = [0, 0];
  for (let arm = 0; arm < 4; arm++) {
    const [dx, dy] = [Math.cos(turn + (arm * Math.PI) / 2), Math.sin(turn + (arm * Math.PI) / 2)];
    let [sum, seen] = [0, 0];
    for (const mm of ARM_MM) {
      const [px, py] = [Math.floor(x + mm * pixelsPerMm * dx), Math.floor(y + mm * pixelsPerMm * dy)];
      if (px < 0 || py < 0 || px >= width || py >= height) continue;
      const at = py * width + px;
      if (mask[at]) continue;
      sum += Math.max(0, strength[at] as number);
      seen++;
    }
    if (seen < SEEN_SHARE * ARM_MM.length) continue;
    seenArms++;
    strokes[arm % 2] = (strokes[arm % 2] as number) + 1;
    faintest = Math.min(faintest, sum / seen);
  }
  return seenArms >= 3 && strokes.every((arms) => arms > 0) ? (seenArms === 4 ? 1 : THREE_ARMS) * faintest : 0;
}

/** The place and turn round about where the arms together are darkest. */
function settle<Found extends { x: number; y: number; turn: number }>(field: CrossField, start: Found): Found {
  let best = { ...start, all: 0 };
  const step = FINE_MM * field.pixelsPerMm;
  for (let v = -4; v <= 4; v++)
    for (let u = -4; u <= 4; u++)
      for (let k = -2; k <= 2; k++) {
        const [x, y, turn] = [start.x + u * step, start.y + v * step, start.turn + k * 0.065];
        const all = armsTogether(field, x, y, turn);
        if (all > best.all) best = { ...start, x, y, turn, all };
      }
  return best;
}

function armsTogether({ strength, mask, width, pixelsPerMm }: CrossField, x: number, y: number, turn: number): number {
  let [sum, seen] = [0, 0];
  for (let arm = 0; arm < 4; arm++)
    for (const mm of ARM_MM) {
      const px = Math.floor(x + mm * pixelsPerMm * Math.cos(turn + (arm * Math.PI) / 2));
      const py = Math.floor(y + mm * pixelsPerMm * Math.sin(turn + (arm * Math.PI) / 2));
      const at = py * width + px;
      if (mask[at]) continue;
      sum += Math.max(0, strength[at] ?? 0);
      seen++;
    }
  return seen > 0 ? sum / seen : 0;
}
