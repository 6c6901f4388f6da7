import type { LengthUnits } from "../../../measure/length";
import { printLength } from "../../../measure/print-length";
import { OPENING_KINDS } from "../../../plan/plan";
import type { PlanPoint } from "../../../stage/frame";
import type { Draft, Thing } from "../../draft";

/** What was made of a drawing, in sentences: how many walls and openings, how wide and deep they come out, and where they stand. */
export function sayPlaced(draft: Draft, made: readonly Thing[], units: LengthUnits): readonly string[] {
  const { plan } = draft.exercise;
  const walls = plan.walls.filter(({ id }) => made.some((thing) => thing.kind === "wall" && thing.id === id));
  const openings = walls.flatMap((wall) => wall.openings);
  const kinds = OPENING_KINDS.map((kind) => [kind, openings.filter((each) => each.kind === kind).length] as const);
  const counted = [
    count(walls.length, "wall"),
    ...kinds.filter(([, many]) => many > 0).map(([kind, many]) => count(many, PLAIN_KINDS[kind])),
  ];
  const ends = walls
    .flatMap(({ from, to }) => [plan.corners.get(from), plan.corners.get(to)])
    .filter((at) => at !== undefined);
  return [`${list(counted)}.`, ...(ends.length > 0 ? sayExtent(ends, units) : [])];
}

const PLAIN_KINDS: Readonly<Record<(typeof OPENING_KINDS)[number], readonly [string, string]>> = {
  door: ["door", "doors"],
  window: ["window", "windows"],
  arch: ["arch", "arches"],
  passage: ["passage", "passages"],
  niche: ["niche", "niches"],
};

function sayExtent(ends: readonly PlanPoint[], units: LengthUnits): readonly string[] {
  const [xs, ys] = [ends.map(([x]) => x), ends.map(([, y]) => y)];
  const [right, left] = [Math.min(...xs), Math.max(...xs)];
  const [near, far] = [Math.min(...ys), Math.max(...ys)];
  const print = (metres: number) => printLength(Math.abs(metres), units);
  return [
    `${print(left - right)} across, from ${print(right)} stage ${right <= 0 ? "right" : "left"} to ${print(left)} stage ${left < 0 ? "right" : "left"}.`,
    `${print(far - near)} deep, from ${print(near)} ${near < 0 ? "downstage of the plaster line" : "upstage"} to ${print(far)} ${far < 0 ? "downstage of it" : "upstage"}.`,
  ];
}

function count(many: number, word: string | readonly [string, string]): string {
  const [one, several] = typeof word === "string" ? [word, `${word}s`] : word;
  return `${many.toLocaleString("en")} ${many === 1 ? one : several}`;
}

function list(words: readonly string[]): string {
  const last = words.at(-1) ?? "";
  return words.length > 1 ? `${words.slice(0, -1).join(", ")} and ${last}` : last;
}
