/** How a file writes bare numbers and how the app shows lengths: feet and inches, or metres. */
export type LengthUnits = "ft-in" | "m";

export const FOOT_M = 0.3048;
export const INCH_M = 0.0254;

export type ParsedLength =
  | { readonly ok: true; readonly metres: number }
  | { readonly ok: false; readonly reason: string };

const PARTS_OF_A_METRE = { m: 1, cm: 100, mm: 1000 } as const;

const NUMBER = String.raw`\d+(?:\.\d+)?`;
const INCHES = String.raw`(?:(?<whole>\d+)\s+)?(?<numerator>\d+)\/(?<denominator>\d+)|(?<inches>${NUMBER})`;
const FEET_ONLY = new RegExp(`^(?<feet>${NUMBER})'$`);
const INCHES_ONLY = new RegExp(`^(?:${INCHES})"$`);
const FEET_AND_INCHES = new RegExp(String.raw`^(?<feet>\d+)'\s*(?:-\s*)?(?:${INCHES})"$`);
const METRIC = new RegExp(String.raw`^(?<amount>${NUMBER})\s*(?<unit>m|cm|mm)$`);

const FORMS = [FEET_ONLY, INCHES_ONLY, FEET_AND_INCHES, METRIC].map((form) =>
  form.source
    .slice(1, -1)
    .replace(/\?<\w+>/g, "?:")
    .replaceAll("'", "['’′]")
    .replaceAll('"', '["”″]'),
);

/**
 * What a written length looks like, for a schema; `parseLength` has the last word. No two runs of spaces stand beside each
 * other in it: a long line of blanks would otherwise be tried in every split.
 */
export const LENGTH_PATTERN = new RegExp(`^\\s*(?:[-−]\\s*)?(?:${FORMS.join("|")})\\s*$`);

export const LENGTH_FORMS = `write it like 7'-3", 7' 3 1/2", 6", 7.25', 3.6 m, 360 cm or 450 mm`;

/**
 * A length from the way it is written, in metres. A bare number is in `units` (feet or metres); a string carries its own
 * unit. A leading minus covers the whole length.
 */
export function parseLength(written: number | string, units: LengthUnits): ParsedLength {
  if (typeof written === "number") {
    if (!Number.isFinite(written)) return { ok: false, reason: "a length must be a finite number" };
    return { ok: true, metres: units === "ft-in" ? written * FOOT_M : written };
  }
  const plain = written.trim().replace(/[’′]/g, "'").replace(/[”″]/g, '"').replace(/^−/, "-");
  const negative = plain.startsWith("-");
  const size = parseUnsigned(negative ? plain.slice(1).trimStart() : plain, clip(written.trim()));
  if (typeof size === "string") return { ok: false, reason: size };
  return { ok: true, metres: negative ? -size : size };
}

/** The size of a length without its sign, or why it is none; `shown` is what was read, for the message. */
function parseUnsigned(text: string, shown: string): number | string {
  const metric = METRIC.exec(text)?.groups;
  if (metric)
    return finite(Number(metric.amount) / PARTS_OF_A_METRE[metric.unit as keyof typeof PARTS_OF_A_METRE], shown);
  const feetOnly = FEET_ONLY.exec(text)?.groups;
  if (feetOnly) return finite(Number(feetOnly.feet) * FOOT_M, shown);
  const both = FEET_AND_INCHES.exec(text)?.groups;
  const parts = both ?? INCHES_ONLY.exec(text)?.groups;
  if (!parts) return `"${shown}" is not a length: ${LENGTH_FORMS}`;
  const inches = readInches(parts);
  if (inches === null) return `"${shown}" divides by zero`;
  if (both && inches >= 12) return `"${shown}" has 12 inches or more beside its feet: carry them into the feet`;
  return finite((both ? Number(both.feet) : 0) * FOOT_M + inches * INCH_M, shown);
}

function readInches(parts: Record<string, string | undefined>): number | null {
  if (parts.inches !== undefined) return Number(parts.inches);
  const denominator = Number(parts.denominator);
  if (denominator === 0) return null;
  return Number(parts.whole ?? 0) + Number(parts.numerator) / denominator;
}

function finite(metres: number, shown: string): number | string {
  return Number.isFinite(metres) ? metres : `"${shown}" is too long to be a length`;
}

/** Enough of what was read to recognise it in a message. */
function clip(text: string): string {
  return text.length > 40 ? `${text.slice(0, 40)}…` : text;
}
