import type { Exercise } from "../../exercise/exercise";
import type { Finding } from "../../exercise/finding";
import type { Wall } from "../../plan/plan";
import { openingJambs, wallLine } from "../../plan/wall-line";
import { floorHeight } from "../../stage/stage";
import type { Draft } from "../draft";
import type { Edit } from "../edit";

/** An opening that is cut down to fit keeps at least this height, metres: what is lower is none. */
const LEAST_HEIGHT_M = 0.1;

/** A change that takes away the ground of a finding, where one is plain; null where the author has to decide. */
export function mendFinding({ exercise }: Draft, { where, message }: Finding): Edit | null {
  const [, part, list, item, inner, index, field] = where.split("/");
  if (part === "task" && item !== undefined) return withoutName(exercise, list, Number(item));
  if (part !== "plan") return null;
  if (list === "masking" && inner === "trim") return mendTrim(exercise, Number(item));
  if (list !== "walls") return null;
  const wall = exercise.plan.walls[Number(item)];
  if (!wall) return null;
  if (inner === undefined && message.includes("has no length"))
    return { edit: "take-away", things: [{ kind: "wall", id: wall.id }] };
  return inner === "openings" ? mendOpening(exercise, wall, Number(index), field) : null;
}

/** The task without a name that cannot be asked or given; of one asked twice the first stays. */
function withoutName({ task }: Exercise, list: string | undefined, index: number): Edit | null {
  if (list !== "marks" && list !== "given") return null;
  return { edit: "set-task", task: { [list]: task[list].filter((_, i) => i !== index) } };
}

/** A border hangs just out of the opening until it is said how high; other cloths reach the floor. */
function mendTrim({ plan, stage }: Exercise, index: number): Edit | null {
  const cloth = plan.masking[index];
  if (!cloth) return null;
  const trim = cloth.kind === "border" ? stage.opening.height : null;
  return { edit: "change-masking", id: cloth.id, change: { trim } };
}

function mendOpening({ plan, stage }: Exercise, wall: Wall, index: number, field: string | undefined): Edit | null {
  const opening = wall.openings[index];
  const line = wallLine(plan, wall);
  if (!opening || !line) return null;
  const change = (part: object): Edit => ({ edit: "change-opening", wall: wall.id, id: opening.id, change: part });
  if (field === "at") {
    const width = Math.min(opening.width, line.length);
    const at = Math.min(Math.max(opening.at, 0), line.length - width);
    return change(width === opening.width ? { at } : { at, width });
  }
  if (field === "sill" && opening.sill < 0) return change({ sill: 0 });
  if (field === "head") {
    const head = wall.height - floorHeight(stage, openingJambs(line, opening).middle[1]);
    return head > opening.sill + LEAST_HEIGHT_M ? change({ head }) : null;
  }
  return null;
}
