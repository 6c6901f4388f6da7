import { nameOfHandle } from "@/lib/draft/reshape/handle";
import { handlesOf } from "@/lib/draft/reshape/handles-of";
import { openingJambs, wallLine } from "@/lib/plan/wall-line";
import type { PlanPoint } from "@/lib/stage/frame";
import { type Desk, shownDraft } from "../desk/desk";
import { grippedThing, isQuiet } from "../grips/grip";
import type { Layering } from "../layers/layering";
import { chosenDimensions, chosenLines } from "../plan/chosen-lines";
import { liveLines } from "../plan/live-lines";
import type { LivePaper } from "./live-paper";
import { paintList } from "./paint-list";
import { paintCaughtMark, paintGrip, paintOwnMark } from "./paint-marks";

/** What moves on the plan: what is dragged or being drawn, what is chosen under it, the pencil with its lengths in blue. */
export function paintPlan(paper: LivePaper, desk: Desk, { tried }: Layering): void {
  const { hand, aim, chosen, trying } = desk;
  const { exercise } = shownDraft(desk);
  const sheet = { ...exercise, scaleRatio: paper.scaleRatio };
  if (trying) {
    paintList(paper, chosenLines(chosen, sheet), "lit");
    for (const { list } of tried(trying.exercise).moving) paintList(paper, list);
  }
  paintList(
    paper,
    hand.kind === "choose" ? chosenDimensions(isQuiet(desk) ? [] : chosen, sheet) : liveLines(hand, aim, sheet),
  );
  const thing = trying ? grippedThing(desk) : null;
  for (const handle of thing ? handlesOf(exercise.plan, thing) : [])
    paintGrip(paper, handle, nameOfHandle(handle) === desk.grip);
  const mark = aim?.kind === "on-wall" ? middleOfNewest(aim.wall, desk) : (aim?.at ?? null);
  if (mark) paintOwnMark(paper, mark);
  if (aim?.kind === "place" && aim.to.some(({ by }) => by === "corner" || by === "mirror image"))
    paintCaughtMark(paper, aim.at);
}

/** The middle of the opening that was put into a wall last. */
function middleOfNewest(id: string, desk: Desk): PlanPoint | null {
  const { plan } = shownDraft(desk).exercise;
  const wall = plan.walls.find((each) => each.id === id);
  const line = wall && wallLine(plan, wall);
  const opening = wall?.openings.at(-1);
  return line && opening ? openingJambs(line, opening).middle : null;
}
