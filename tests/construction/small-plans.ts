import type { Opening, Wall } from "@/lib/plan/plan";

export function alone(x: number, y: number) {
  return { corners: new Map([["Q", [x, y]]] as const) };
}

const plainWall = { thickness: 0, base: 0, onstage: "right", height: 3, openings: [] } as const;

export function wall(change: Partial<Wall> = {}): Wall {
  return { ...plainWall, id: "W1", from: "A", to: "B", ...change };
}

export function opening(at: number, width: number): Opening {
  const kind = { id: "door", kind: "door", sill: 0, head: 2.1, depth: null, leaves: 1, hinge: null } as const;
  return { ...kind, at, width, swing: "offstage" };
}

/** Rakes at dx/dy = 1/2, so that its vanishing point lies at X = D/2 = 4, on the paper. */
export const raking = {
  corners: new Map([
    ["A", [-1, 1]],
    ["B", [1.5, 6]],
  ] as const),
  walls: [wall()],
};
/** The door begins a quarter of the way along, and is as wide. */
export const withDoor = {
  ...raking,
  walls: [wall({ openings: [opening(Math.hypot(2.5, 5) / 4, Math.hypot(2.5, 5) / 4)] })],
};
/** Stands so far off that its rays would begin off the paper. */
export const farOff = {
  corners: new Map([
    ["A", [7, 2]],
    ["B", [7.5, 6]],
  ] as const),
  walls: [wall({ openings: [opening(Math.hypot(0.5, 4) / 2, 1)] })],
};
/** Nearly parallel to the plaster line (dx/dy = 5): its vanishing point is far off, its measuring point near the CVP. */
export const flat = {
  corners: new Map([
    ["A", [0, 0.2]],
    ["B", [2, 0.6]],
  ] as const),
};
export const column = (x: number, y: number) => ({
  columns: [{ id: "K1", at: [x, y] as const, diameter: 0.3, height: 3, base: 0 }],
});
export const platform = {
  platforms: [
    {
      id: "P1",
      outline: [
        [1, 3],
        [3, 3],
        [3, 5],
      ] as const,
      height: 0.4,
      base: 0,
    },
  ],
};
export const stair = {
  stairs: [
    {
      id: "S1",
      nosing: [
        [2, 3],
        [0.5, 3],
      ] as const,
      steps: 3,
      tread: 0.3,
      riser: 0.17,
      base: 0,
    },
  ],
};
