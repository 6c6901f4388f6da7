import type { Board } from "@/lib/construction/board";
import { namePoints } from "@/lib/plan/name-points";
import type { Plan } from "@/lib/plan/plan";
import type { Stage } from "@/lib/stage/stage";
import type { Viewer } from "@/lib/stage/viewer";
import { projected } from "./referee";

type Change = {
  readonly stage?: Partial<Stage>;
  readonly viewer?: Partial<Viewer>;
  readonly plan?: Partial<Plan>;
  readonly placed?: readonly string[];
  readonly favour?: "crossing diagonals";
};

/**
 * A stage 8 m wide and 8 m deep on paper at 1:50, with the eye 8 m before it and 2 m up. The paper goes 2.25 m (45 mm)
 * beyond the opening on each side, to X = 6.25: of the points of the horizon the half distance points (4 m) are the first
 * on it. `placed` names are on the sheet at their true places.
 */
export function smallBoard({ stage, viewer, plan, placed = [], favour }: Change): Board {
  const board: Board = {
    plan: {
      corners: new Map(),
      walls: [],
      platforms: [],
      stairs: [],
      furniture: [],
      columns: [],
      masking: [],
      ...plan,
    },
    stage: { opening: { width: 8, height: 5 }, depth: 8, apron: 1, rake: 0, ...stage },
    viewer: { distance: 8, eyeHeight: 2, offset: 0, ...viewer },
    units: "m",
    scaleRatio: 50,
    placed: new Map(),
    ...(favour ? { favour } : {}),
  };
  const points = namePoints(board.plan, board.stage);
  const put = placed.map((name) => {
    const point = points.get(name);
    if (!point) throw new Error(`${name} names no point.`);
    return [name, projected(board, point.at)] as const;
  });
  return { ...board, placed: new Map(put) };
}
