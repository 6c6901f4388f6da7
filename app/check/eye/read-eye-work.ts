import { type LengthUnits, parseLength } from "@/lib/measure/length";
import type {
  DrawingLine,
  DrawingPlace,
  MarkedDrawing,
  ParallelLines,
} from "@/lib/perspective/whose-eye/marked-drawing";
import { type ReadMm, readMm } from "../read-mm";
import type { EyeWork, Group, MarkedLine, Spot } from "./eye-work";

/** What is wrong with what was typed, by the field it was typed in. */
export type Troubles = {
  readonly widthMm: string | null;
  readonly degrees: readonly (string | null)[];
  readonly proportion: string | null;
  readonly length: string | null;
};

export type ReadWork = {
  /** What can be used of the work; a field in trouble counts as not known. */
  readonly drawing: MarkedDrawing;
  /** The picture's width on paper, millimetres; of a field in trouble, the width it would have had. */
  readonly widthMm: number;
  readonly units: LengthUnits;
  readonly troubles: Troubles;
};

/** How exactly a pencil and a finger mark a place, one standard deviation, millimetres: a pencil's width. */
const SIGMA_MM = 0.5;
const FALLBACK_MM = 250;
const HALF_TURN_DEG = 180;

/** The work in millimetres of the drawing, with what is typed read; a mark that is not wholly set is left out. */
export function readEyeWork(work: EyeWork): ReadWork {
  const width = readMm(work.widthMm);
  const widthMm = width.ok ? width.mm : FALLBACK_MM;
  const at = ([right, up]: Spot): DrawingPlace => [right * widthMm, up * widthMm];
  const whole = ([a, b]: MarkedLine): DrawingLine[] => (a && b ? [[at(a), at(b)]] : []);
  const bearings = work.groups.map(readBearing);
  const proportion = work.floor ? readProportion(work.floor.proportion) : null;
  const length = work.length ? readKnownLength(work.length.long) : null;
  const [a, b, c, d] = work.floor?.corners ?? [];
  const ends = work.length && whole(work.length.ends)[0];
  const drawing: MarkedDrawing = {
    parallels: work.groups.map(
      ({ lines }, i): ParallelLines => ({ lines: lines.flatMap(whole), bearingDeg: bearings[i]?.value ?? null }),
    ),
    uprights: work.uprights.flatMap(whole),
    rectangle:
      a && b && c && d ? { corners: [at(a), at(b), at(c), at(d)], proportion: proportion?.value ?? null } : null,
    length:
      work.length && ends && length?.value
        ? {
            ends: work.length.lies === "upright" ? footFirst(ends) : ends,
            metres: length.value,
            lies: work.length.lies,
          }
        : null,
    // No place can be marked finer than one pixel of the picture as it is shown.
    sigmaMm: Math.max(SIGMA_MM, widthMm / work.photo.width),
  };
  return {
    drawing,
    widthMm,
    units: /['"’”′″]/.test(work.length?.long ?? "") ? "ft-in" : "m",
    troubles: {
      widthMm: troubleOf(width),
      degrees: bearings.map(({ trouble }) => trouble),
      proportion: proportion?.trouble ?? null,
      length: length?.trouble ?? null,
    },
  };
}

type Typed = { readonly value: number | null; readonly trouble: string | null };
const NOT_SAID: Typed = { value: null, trouble: null };
const wrong = (trouble: string): Typed => ({ value: null, trouble });

function readBearing({ runs, degrees }: Group): Typed {
  if (runs !== "other") return { value: runs === "square" ? 90 : runs === "along" ? 0 : null, trouble: null };
  const text = degrees.trim().replace(/\s*°$/, "");
  if (text === "") return NOT_SAID;
  const value = Number(text.replace(",", "."));
  return value > 0 && value < HALF_TURN_DEG
    ? { value, trouble: null }
    : wrong("Write an angle between 0 and 180 degrees: 45 goes upstage to stage left, 135 upstage to stage right.");
}

const BETWEEN = [/\s+to\s+/i, /\s+by\s+/i, /\s*[x×]\s*/i, /\s*:\s*/, /\s*\/\s*/];

/** The first side over the second: `3 to 2`, `3:2`, `12' x 8'`, or how many times the second it is. Blank: not known. */
export function readProportion(written: string): Typed {
  const text = written.trim();
  if (text === "") return NOT_SAID;
  const alone = readNumber(text);
  if (alone !== null) return alone > 0 ? { value: alone, trouble: null } : wrong("A proportion is above 0.");
  for (const between of BETWEEN) {
    const sides = text.split(between);
    const [first, second] = sides.map((side) => readNumber(side) ?? readLength(side));
    if (sides.length !== 2 || typeof first !== "number" || typeof second !== "number") continue;
    const bothAlike =
      sides.every((side) => readNumber(side) !== null) || sides.every((side) => readNumber(side) === null);
    if (!bothAlike) return wrong("Write both sides as lengths, or both as numbers.");
    return first > 0 && second > 0
      ? { value: first / second, trouble: null }
      : wrong("Both sides of a rectangle are above 0.");
  }
  return wrong(`"${text.slice(0, 40)}" is no proportion: write it like 3 to 2, 1.5, or 12' x 8'.`);
}

function readKnownLength(written: string): Typed {
  if (written.trim() === "") return wrong(`Say how long it is: write it like 7'-3", 12' or 3.6 m.`);
  const parsed = parseLength(written, "m");
  if (!parsed.ok) return wrong(`${parsed.reason}.`);
  return parsed.metres > 0 ? { value: parsed.metres, trouble: null } : wrong("A length is above 0.");
}

function readNumber(text: string): number | null {
  return /^-?\d+(?:[.,]\d+)?$/.test(text.trim()) ? Number(text.trim().replace(",", ".")) : null;
}

function readLength(text: string): number | null {
  const parsed = parseLength(text, "m");
  return parsed.ok ? parsed.metres : null;
}

function footFirst([a, b]: DrawingLine): DrawingLine {
  return a[1] <= b[1] ? [a, b] : [b, a];
}

function troubleOf(read: ReadMm): string | null {
  return read.ok ? null : read.say;
}
