import { findDrops, GUARD_DROP_M } from "../../drawing/plan-symbols/find-drops";
import type { Exercise } from "../../exercise/exercise";
import { distance } from "../../geometry/vector";
import { printLength } from "../../measure/print-length";
import { CAUTION } from "./caution";
import { type Note, noteOf } from "./note";

/** Platforms that drop more than 30 in somewhere with nothing to stop a fall. */
export function platformNotes({ plan, stage, units }: Exercise): readonly Note[] {
  const print = (metres: number) => printLength(metres, units);
  return plan.platforms.flatMap((platform): readonly Note[] => {
    const length = findDrops(plan, platform, stage).reduce((sum, { from, to }) => sum + distance(from, to), 0);
    if (length === 0) return [];
    return [
      noteOf(
        [{ kind: "platform", id: platform.id }],
        `Platform ${platform.id} drops more than ${print(GUARD_DROP_M)} along ${print(length)} of its edge, with no guard.`,
        `Plan a guard there, or lower the platform. ${CAUTION}`,
      ),
    ];
  });
}
