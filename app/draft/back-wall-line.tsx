import { AtPoint, PlainLine } from "@/app/_sheet/end-marks";
import { between } from "@/lib/geometry/vector";
import { project } from "@/lib/perspective/project";
import { backWallCorners, type Stage } from "@/lib/stage/stage";
import type { Viewer } from "@/lib/stage/viewer";

/** How far along the line the grip is, from its left end: out of most sets. */
const GRIP = 0.93;

type Props = { readonly stage: Stage; readonly viewer: Viewer; readonly scaleRatio: number };

/** The foot of the back wall, in blue, with a grip near its end that shows it can be moved. */
export function BackWallLine({ stage, viewer, scaleRatio }: Props) {
  const [footLeft, footRight] = backWallCorners(stage);
  const [left, right] = [project(viewer, footLeft), project(viewer, footRight)];
  if (!left.seen || !right.seen) return null;
  const grip = between(left.at, right.at, GRIP);
  return (
    <>
      <PlainLine from={left.at} to={right.at} scaleRatio={scaleRatio} className="blue-line" />
      <AtPoint at={grip} scaleRatio={scaleRatio}>
        <path d="M0 -11V11M-5 -6L0 -11L5 -6M-5 6L0 11L5 6" className="draft-grip-halo" />
        <path d="M0 -11V11M-5 -6L0 -11L5 -6M-5 6L0 11L5 6" className="draft-grip" />
      </AtPoint>
    </>
  );
}
