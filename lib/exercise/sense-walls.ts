import { isJunction, segmentsCross } from "../geometry/segments-cross";
import { printLength } from "../measure/print-length";
import type { Opening, Wall } from "../plan/plan";
import { openingJambs, type WallLine, wallLine } from "../plan/wall-line";
import { floorHeight } from "../stage/stage";
import type { Exercise } from "./exercise";
import { type Finding, fault } from "./finding";
import { MOST_GUESSES, nearestName } from "./nearest-name";

/** Room for rounding where an opening ends with its wall, metres. */
const SLACK_M = 1e-6;

type Placed = { readonly wall: Wall; readonly line: WallLine; readonly where: string };

/** Walls that stand between real corners, do not cross, and hold their openings. */
export function checkWalls(exercise: Exercise): readonly Finding[] {
  const { plan } = exercise;
  const findings: Finding[] = [];
  const placed: Placed[] = [];
  plan.walls.forEach((wall, i) => {
    const where = `/plan/walls/${i}`;
    const missing = (["from", "to"] as const).filter((end) => !plan.corners.has(wall[end]));
    for (const end of missing) {
      const near = findings.length < MOST_GUESSES ? nearestName(wall[end], plan.corners.keys()) : null;
      findings.push(
        fault(
          `${where}/${end}`,
          `there is no corner "${wall[end]}"`,
          near ? `did you mean "${near}"?` : "add the corner",
        ),
      );
    }
    if (missing.length > 0) return;
    const line = wallLine(plan, wall);
    if (!line)
      findings.push(
        fault(
          where,
          `wall "${wall.id}" has no length: both its corners are one place`,
          "move a corner, or take the wall out",
        ),
      );
    else placed.push({ wall, line, where });
  });
  return [...findings, ...crossings(placed), ...placed.flatMap((one) => checkOpenings(one, exercise))];
}

function crossings(placed: readonly Placed[]): readonly Finding[] {
  return placed.flatMap((one, i) =>
    placed
      .slice(0, i)
      .filter(
        (other) =>
          overlapInHeight(one.wall, other.wall) &&
          crossInPlan([one.line.from, one.line.to], [other.line.from, other.line.to]),
      )
      .map((other) =>
        fault(
          one.where,
          `wall "${one.wall.id}" crosses wall "${other.wall.id}"`,
          "let walls meet at a corner they share",
        ),
      ),
  );
}

/** A wall may share a corner with another, or end against its middle; it may not run through it or over it. */
function crossInPlan(...walls: Parameters<typeof segmentsCross>): boolean {
  return segmentsCross(...walls) && !isJunction(...walls);
}

function overlapInHeight(a: Wall, b: Wall): boolean {
  return a.base < b.base + b.height && b.base < a.base + a.height;
}

function checkOpenings({ wall, line, where }: Placed, exercise: Exercise): readonly Finding[] {
  return wall.openings.flatMap((opening, j) => {
    const here = `${where}/openings/${j}`;
    const others = wall.openings.slice(0, j).filter((other) => overlap(opening, other));
    return [
      ...checkOpening(opening, wall, line, exercise, here),
      ...others.map((other) =>
        fault(here, `opening "${opening.id}" overlaps "${other.id}"`, "move one of them along the wall"),
      ),
    ];
  });
}

function overlap(a: Opening, b: Opening): boolean {
  const along = a.at + SLACK_M < b.at + b.width && b.at + SLACK_M < a.at + a.width;
  return along && a.sill + SLACK_M < b.head && b.sill + SLACK_M < a.head;
}

function checkOpening(
  opening: Opening,
  wall: Wall,
  line: WallLine,
  { stage, units }: Exercise,
  where: string,
): readonly Finding[] {
  const show = (metres: number) => printLength(metres, units);
  const findings: Finding[] = [];
  const say = (field: string, message: string, hint: string) =>
    findings.push(fault(`${where}/${field}`, message, hint));
  if (!(opening.width > 0)) say("width", "an opening's width must be more than 0", "write a length above 0");
  if (opening.at < -SLACK_M)
    say("at", "the opening begins before its wall does", `measure from corner ${wall.from} along the wall`);
  const end = opening.at + opening.width;
  if (end > line.length + SLACK_M)
    say(
      "at",
      `the opening ends at ${show(end)}, past its wall's end at ${show(line.length)}`,
      "move it along the wall, or make it narrower",
    );
  if (opening.sill < 0) say("sill", "the sill lies below the floor", "write 0 or more");
  if (opening.sill >= opening.head) say("sill", "the sill is not below the head", "lower the sill, or raise the head");
  const ground = floorHeight(stage, openingJambs(line, opening).middle[1]);
  if (ground + opening.head > wall.height + SLACK_M)
    say(
      "head",
      `the head is above the wall's top (${show(wall.height - ground)} over the floor there)`,
      "lower the head, or make the wall taller",
    );
  if (opening.kind === "niche" && !(opening.depth !== null && opening.depth > 0))
    say("depth", "a niche needs a depth", "say how far it goes in");
  return findings;
}
