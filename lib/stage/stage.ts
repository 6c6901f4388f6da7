import type { PlanPoint, StagePoint } from "./frame";

/** The stage as the exercise gives it. Lengths in metres; `rake` is rise over run. */
export type Stage = {
  readonly opening: { readonly width: number; readonly height: number };
  /** From the plaster line upstage to the back wall. */
  readonly depth: number;
  /** From the plaster line downstage to the edge of the apron. */
  readonly apron: number;
  /** Rise of the floor for each metre upstage; 0 is level. The apron is level. */
  readonly rake: number;
};

/** Height of the stage floor at a distance `y` from the plaster line, metres: level before it, raked upstage of it. */
export function floorHeight(stage: Pick<Stage, "rake">, y: number): number {
  return stage.rake * Math.max(y, 0);
}

/** The point of the stage floor at a place of the plan. */
export function onFloor(stage: Pick<Stage, "rake">, [x, y]: PlanPoint): StagePoint {
  return [x, y, floorHeight(stage, y)];
}

/** The four corners of the back wall: foot at the viewer's left and right, then top at left and right. */
export function backWallCorners(stage: Stage): readonly [StagePoint, StagePoint, StagePoint, StagePoint] {
  const half = stage.opening.width / 2;
  const foot = floorHeight(stage, stage.depth);
  const top = stage.opening.height;
  return [
    [-half, stage.depth, foot],
    [half, stage.depth, foot],
    [-half, stage.depth, top],
    [half, stage.depth, top],
  ];
}
