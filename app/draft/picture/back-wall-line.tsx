import { AtPoint, PlainLine } from "@/app/_sheet/end-marks";
import type { Stage } from "@/lib/stage/stage";
import type { Viewer } from "@/lib/stage/viewer";
import { backWallFoot } from "./back-wall-foot";

type Props = { readonly stage: Stage; readonly viewer: Viewer; readonly scaleRatio: number };

/** The foot of the back wall, in blue, with a grip near its end that shows it can be moved. */
export function BackWallLine({ stage, viewer, scaleRatio }: Props) {
  const wall = backWallFoot(stage, viewer);
  if (!wall) return null;
  return (
    <>
      <PlainLine from={wall.from} to={wall.to} scaleRatio={scaleRatio} className="blue-line" />
      <AtPoint at={wall.grip} scaleRatio={scaleRatio}>
        <path d="M0 -11V11M-5 -6L0 -11L5 -6M-5 6L0 11L5 6" className="draft-grip-halo" />
        <path d="M0 -11V11M-5 -6L0 -11L5 -6M-5 6L0 11L5 6" className="draft-grip" />
      </AtPoint>
    </>
  );
}
