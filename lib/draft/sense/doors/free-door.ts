import { FOOT_M, type LengthUnits } from "../../../measure/length";
import { printLength } from "../../../measure/print-length";
import { upstageJamb } from "../../../plan/door-hinges";
import type { Opening } from "../../../plan/plan";
import { openingJambs } from "../../../plan/wall-line";
import type { Edit } from "../../edit";
import type { Body } from "../bodies";
import { type Door, FARTHEST_MOVED_M, opensClear, type Room, sweepsMeet } from "./door-stops";
import { leavesOf } from "./leaf";

/** A door is moved along its wall by whole steps. */
const STEP_M: Readonly<Record<LengthUnits, number>> = { "ft-in": FOOT_M / 4, m: 0.1 };

type Change = Partial<Pick<Opening, "hinge" | "swing" | "at">>;
type Freed = { readonly say: string; readonly edit: Edit };

/**
 * The smallest change that lets a door open to a right angle, clear of the bodies near it and of the other doors' leaves: hung at
 * its other jamb, swung the other way, both, or moved along its wall. Null where none of these does.
 */
export function freeDoor(
  { stage }: Pick<Room, "stage">,
  door: Door,
  bodies: readonly Body[],
  doors: readonly Door[],
  units: LengthUnits,
): Freed | null {
  const { wall, line } = door;
  const others = doors.filter((other) => other.opening !== door.opening);
  const found = ways(door, units).find(({ change }) => {
    const opening = { ...door.opening, ...change };
    const leaves = leavesOf(wall, line, opening, stage);
    return (
      keepsClear(door, opening) &&
      opensClear(leaves, bodies, stage) &&
      !others.some((other) => sweepsMeet({ leaves }, other))
    );
  });
  if (!found) return null;
  return { say: found.say, edit: { edit: "change-opening", wall: wall.id, id: door.opening.id, change: found.change } };
}

/** Within its wall, and beside its other openings. */
function keepsClear({ wall, line, opening: own }: Door, { at, width }: Opening): boolean {
  if (at < 0 || at + width > line.length) return false;
  return wall.openings.every((other) => other === own || at + width <= other.at || other.at + other.width <= at);
}

function ways(
  { wall, line, opening }: Door,
  units: LengthUnits,
): readonly { readonly say: string; readonly change: Change }[] {
  const { start, end } = openingJambs(line, opening);
  const hinge = (opening.hinge ?? upstageJamb(start, end)) === "start" ? "end" : "start";
  const swing = opening.swing === "offstage" ? "onstage" : "offstage";
  const turned = { say: `Let it swing ${swing}.`, change: { swing } } as const;
  const hung =
    opening.leaves === 2
      ? [turned]
      : ([
          { say: "Hang it at its other jamb.", change: { hinge } },
          turned,
          { say: `Hang it at its other jamb and let it swing ${swing}.`, change: { hinge, swing } },
        ] as const);
  const moved = Array.from(
    { length: Math.floor(FARTHEST_MOVED_M / STEP_M[units]) },
    (_, i) => (i + 1) * STEP_M[units],
  ).flatMap((by) =>
    [by, -by].map((shift) => ({
      say: `Move it ${printLength(by, units)} toward ${shift > 0 ? wall.to : wall.from}.`,
      change: { at: opening.at + shift },
    })),
  );
  return [...hung, ...moved];
}
