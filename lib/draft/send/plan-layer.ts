/** Layers of a plan that is sent, in the trade's words. */
export type PlanLayer =
  | "Stage"
  | "Centre line and plaster line"
  | "Walls"
  | "Openings"
  | "Platforms"
  | "Stairs"
  | "Furniture"
  | "Columns"
  | "Masking"
  | "Points"
  | "Lettering";

const BY_KIND: Readonly<Record<string, PlanLayer>> = {
  stage: "Stage",
  platform: "Platforms",
  stair: "Stairs",
  furniture: "Furniture",
  column: "Columns",
  masking: "Masking",
  corner: "Points",
};

/** Lines of a wall's own faces are `plan.wall.W1.2.face`; those of its openings have the opening's name there, and others at the end. */
const WALL_LINE = /^plan\.wall\.[^.]+\.\d+\.(?:face|back|start|end)$/;

/** The layer that a stroke of `drawPlan` goes on, by its id. */
export function planLayer(id: string): PlanLayer {
  if (id === "plan.stage.plaster-line" || id === "plan.stage.centre-line") return "Centre line and plaster line";
  const [, kind = ""] = id.split(".");
  if (kind === "wall") return WALL_LINE.test(id) ? "Walls" : "Openings";
  return BY_KIND[kind] ?? "Stage";
}
