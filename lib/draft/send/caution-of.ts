import type { Exercise } from "../../exercise/exercise";
import { CAUTION } from "../sense/caution";

/** What is written on a drawing that someone might build from: one with openings, stairs, platforms or a rake; null for any other. */
export function cautionOf({ plan, stage }: Pick<Exercise, "plan" | "stage">): string | null {
  const opens = plan.walls.some(({ openings }) => openings.length > 0);
  const climbs = plan.stairs.length > 0 || plan.platforms.length > 0 || stage.rake !== 0;
  return opens || climbs ? CAUTION : null;
}
