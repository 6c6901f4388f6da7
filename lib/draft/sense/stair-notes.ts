import type { Exercise } from "../../exercise/exercise";
import { INCH_M } from "../../measure/length";
import { printLength } from "../../measure/print-length";
import type { Stair } from "../../plan/plan";
import { CAUTION } from "./caution";
import { type Note, noteOf } from "./note";

/** Risers 4 to 7 in, treads at least 11 in (IBC 1011.5.2 as quoted). */
const RISER_M = { least: 4 * INCH_M, most: 7 * INCH_M } as const;
const LEAST_TREAD_M = 11 * INCH_M;
/** Two risers and a tread make a step: 24 to 25 in (as stair builders reckon; 25 in an army engineer course, 24 with Storey's 6 and 12). */
const STEP_M = { least: 24 * INCH_M, most: 25 * INCH_M } as const;
const ROUNDING_M = 1e-9;

/** Flights outside the usual limits, each with every limit it misses, and the usual flight that climbs as high. */
export function stairNotes({ plan, units }: Exercise): readonly Note[] {
  const print = (metres: number) => printLength(metres, units);
  return plan.stairs.flatMap((stair): readonly Note[] => {
    const { id, riser, tread } = stair;
    if (!(riser > 0 && tread > 0)) return [];
    const step = 2 * riser + tread;
    const misses = [
      ...(riser > RISER_M.most + ROUNDING_M ? [`its riser of ${print(riser)} is over ${print(RISER_M.most)}`] : []),
      ...(riser < RISER_M.least - ROUNDING_M ? [`its riser of ${print(riser)} is under ${print(RISER_M.least)}`] : []),
      ...(tread < LEAST_TREAD_M - ROUNDING_M ? [`its tread of ${print(tread)} is under ${print(LEAST_TREAD_M)}`] : []),
      ...(step < STEP_M.least - ROUNDING_M || step > STEP_M.most + ROUNDING_M
        ? [`two risers and a tread make ${print(step)}, not ${print(STEP_M.least)} to ${print(STEP_M.most)}`]
        : []),
    ];
    if (misses.length === 0) return [];
    const usual = usualFlight(stair);
    const remedy = usual
      ? `${usual.steps} ${usual.steps === 1 ? "riser" : "risers"} of ${print(usual.riser)} with treads of ${print(usual.tread)} climb as high.`
      : "No number of usual risers climbs just so high: change the height it climbs.";
    return [
      noteOf(
        [{ kind: "stair", id }],
        `Stair ${id} is outside the usual limits: ${misses.join("; ")}.`,
        `${remedy} ${CAUTION}`,
        usual && { edit: "change-stair", id, change: usual },
      ),
    ];
  });
}

/** The flight within the limits that climbs as high, with risers nearest to 6 in (Storey, fig. 248); null where none does. */
function usualFlight({ steps, riser }: Stair): Pick<Stair, "steps" | "riser" | "tread"> | null {
  const height = steps * riser;
  const fewest = Math.ceil((height - ROUNDING_M) / RISER_M.most);
  const most = Math.floor((height + ROUNDING_M) / RISER_M.least);
  if (!(fewest >= 1 && fewest <= Math.min(most, MOST_STEPS))) return null;
  const wanted = Math.min(most, MOST_STEPS, Math.max(fewest, Math.round(height / USUAL_RISER_M)));
  const each = height / wanted;
  return { steps: wanted, riser: each, tread: Math.max(LEAST_TREAD_M, STEP_M.least - 2 * each) };
}

const USUAL_RISER_M = 6 * INCH_M;
/** A flight in a file has no more. */
const MOST_STEPS = 100;
