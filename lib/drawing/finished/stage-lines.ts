import type { Plan } from "../../plan/plan";
import type { SolidLine } from "../../plan/solids/solid";
import type { StagePoint } from "../../stage/frame";
import { backWallCorners, onFloor, type Stage } from "../../stage/stage";

/** Arms of the cross that marks a plain point of the floor, metres. */
const SPIKE_M = 0.2;

/**
 * The lines of the bare stage: the floor's sides and back, the apron's edge and the back wall, and, where no set or masking
 * stands, the box the opening makes with it; and a cross of tape for each plain point of the floor. They bound no face.
 */
export function stageLines(plan: Plan, stage: Stage): readonly SolidLine[] {
  const half = stage.opening.width / 2;
  const { height } = stage.opening;
  const [footLeft, footRight, topLeft, topRight] = backWallCorners(stage);
  const line = (name: string, from: StagePoint, to: StagePoint, kind: SolidLine["kind"] = "detail"): SolidLine => ({
    id: `stage.${name}`,
    element: "stage",
    from,
    to,
    faces: [],
    kind,
  });
  const apron = stage.apron;
  const bare = plan.walls.length + plan.masking.length === 0;
  return [
    line("floor.left", [-half, 0, 0], footLeft),
    line("floor.right", [half, 0, 0], footRight),
    line("floor.back", footLeft, footRight),
    ...(bare
      ? [
          line("back.left", footLeft, topLeft),
          line("back.right", footRight, topRight),
          line("back.top", topLeft, topRight),
          line("ceiling.left", [-half, 0, height], topLeft),
          line("ceiling.right", [half, 0, height], topRight),
        ]
      : []),
    ...(apron > 0
      ? [
          line("plaster-line", [-half, 0, 0], [half, 0, 0]),
          line("apron.left", [-half, 0, 0], [-half, -apron, 0], "edge"),
          line("apron.right", [half, 0, 0], [half, -apron, 0], "edge"),
          line("apron", [-half, -apron, 0], [half, -apron, 0], "edge"),
        ]
      : []),
    ...spikes(plan, stage),
  ];
}

/** Corners that no wall stands on. */
function spikes(plan: Plan, stage: Stage): readonly SolidLine[] {
  const used = new Set(plan.walls.flatMap(({ from, to }) => [from, to]));
  return [...plan.corners].flatMap(([name, [x, y]]) => {
    if (used.has(name)) return [];
    const arm = (part: string, dx: number, dy: number): SolidLine => ({
      id: `spike.${name}.${part}`,
      element: "spike",
      from: onFloor(stage, [x - dx, y - dy]),
      to: onFloor(stage, [x + dx, y + dy]),
      faces: [],
      kind: "edge",
    });
    return [arm("across", SPIKE_M, 0), arm("up", 0, SPIKE_M)];
  });
}
