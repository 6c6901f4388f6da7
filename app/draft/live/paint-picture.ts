import { apronDrop } from "@/lib/exercise/inside-frame";
import { type Desk, shownDraft } from "../desk/desk";
import { backWallFoot } from "../picture/back-wall-foot";
import { frameLayer } from "../picture/picture-layers";
import { type LivePaper, paintInPaper, paperPoint } from "./live-paper";
import { paintList } from "./paint-list";
import { paintBackWall } from "./paint-marks";
import type { PictureChange } from "./picture-change";

/** Draws anew whatever it is asked for: what is painted while the eye moves is another at every frame. */
const anew = (key: string, _: readonly unknown[], draw: Parameters<Parameters<typeof frameLayer>[1]>[2]) => ({
  key,
  list: draw(),
});

/** Over a picture that is out of date: the lines of what changed, as if it were of glass; with another eye the sheet about it as well. */
export function paintPicture(paper: LivePaper, desk: Desk, { lists }: PictureChange): void {
  const { exercise } = shownDraft(desk);
  const { stage, viewer } = exercise;
  const rest = desk.history.draft.exercise;
  const otherView = stage !== rest.stage || viewer !== rest.viewer;
  if (otherView) paintList(paper, frameLayer({ ...exercise, scaleRatio: paper.scaleRatio }, anew).list);
  if (lists.length > 0) {
    const { context } = paper;
    const half = stage.opening.width / 2;
    paintInPaper(paper);
    const [left, top] = paperPoint(paper, [-half, stage.opening.height]);
    const [right, foot] = paperPoint(paper, [half, apronDrop(stage, viewer)]);
    context.save();
    context.beginPath();
    context.rect(left, top, right - left, foot - top);
    context.clip();
    // One list, so that its lines are painted in one go.
    paintList(paper, lists.length === 1 ? (lists[0] ?? []) : lists.flat(), "quick");
    context.restore();
  }
  const wall = otherView ? backWallFoot(stage, viewer) : null;
  if (wall) paintBackWall(paper, wall.from, wall.to, wall.grip);
}
