import { AtPoint, PlainLine } from "@/app/_sheet/end-marks";
import { project } from "@/lib/perspective/project";
import { backWallCorners, type Stage } from "@/lib/stage/stage";
import type { Viewer } from "@/lib/stage/viewer";

type Props = { readonly stage: Stage; readonly viewer: Viewer; readonly scaleRatio: number };

/** The foot of the back wall, in blue, with a grip in its middle that shows it can be moved. */
export function BackWallLine({ stage, viewer, scaleRatio }: Props) {
  const [footLeft, footRight] = backWallCorners(stage);
  const [left, right] = [project(viewer, footLeft), project(viewer, footRight)];
  if (!left.seen || !right.seen) return null;
  const middle = [(left.at[0] + right.at[0]) / 2, (left.at[1] + right.at[1]) / 2] as const;
  return (
    <>
      <PlainLine from={left.at} to={right.at} scaleRatio={scaleRatio} className="blue-line" />
      <AtPoint at={middle} scaleRatio={scaleRatio}>
        <path d="M-22 0H22M0 -11V11M-5 -6L0 -11L5 -6M-5 6L0 11L5 6" className="draft-grip-halo" />
        <path d="M0 -11V11M-5 -6L0 -11L5 -6M-5 6L0 11L5 6" className="draft-grip" />
      </AtPoint>
    </>
  );
}
