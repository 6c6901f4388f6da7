import type { Opening, Plan } from "../../plan/plan";
import { placeOnWall, wallLine } from "../../plan/wall-line";
import type { PlanPoint } from "../../stage/frame";

/** The stretch of wall between a jamb and what comes next; less than 0 where the two lie over each other. */
export type Clearance = {
  readonly length: number;
  readonly from: PlanPoint;
  readonly to: PlanPoint;
  /** The opening or the corner at its other end. */
  readonly next: { readonly kind: "corner" | "opening"; readonly id: string };
};

export type Clearances = {
  /** From the wall's `from` corner to the start jamb, and from the end jamb to the wall's `to` corner. */
  readonly start: Clearance;
  readonly end: Clearance;
  /** To the neighbouring opening on either side, or again to the corner where there is none. */
  readonly before: Clearance;
  readonly after: Clearance;
};

/**
 * How far an opening stands from both ends of its wall and from its neighbours, plan metres, as it is slid: `opening` is the
 * place it would have, `id` its own name, which is not its neighbour (null for a new one). Null for a wall that is not there
 * or has no length.
 */
export function wallClearances(
  plan: Plan,
  wallId: string,
  opening: Pick<Opening, "at" | "width">,
  id: string | null,
): Clearances | null {
  const wall = plan.walls.find((other) => other.id === wallId);
  const line = wall ? wallLine(plan, wall) : null;
  if (!wall || !line) return null;
  const clearance = (from: number, to: number, next: Clearance["next"]): Clearance => ({
    length: to - from,
    from: placeOnWall(line, from),
    to: placeOnWall(line, to),
    next,
  });
  const [startJamb, endJamb] = [opening.at, opening.at + opening.width];
  const middle = (startJamb + endJamb) / 2;
  const others = wall.openings.filter((other) => other.id !== id);
  const startOf = others.filter(({ at, width }) => at + width / 2 <= middle);
  const left = startOf.sort((a, b) => b.at + b.width - (a.at + a.width))[0];
  const right = others.filter(({ at, width }) => at + width / 2 > middle).sort((a, b) => a.at - b.at)[0];
  const start = clearance(0, startJamb, { kind: "corner", id: wall.from });
  const end = clearance(endJamb, line.length, { kind: "corner", id: wall.to });
  return {
    start,
    end,
    before: left ? clearance(left.at + left.width, startJamb, { kind: "opening", id: left.id }) : start,
    after: right ? clearance(endJamb, right.at, { kind: "opening", id: right.id }) : end,
  };
}
