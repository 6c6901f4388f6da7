import { expect } from "vitest";
import type { Board } from "@/lib/construction/board";
import { constructPoint } from "@/lib/construction/construct-point";
import type { Construction } from "@/lib/construction/step";
import { namePoints } from "@/lib/plan/name-points";
import { faultsOf, projected } from "./referee";

/** A construction that the referee has passed. */
export function proved(board: Board, name: string): Construction {
  const point = namePoints(board.plan, board.stage).get(name);
  const result = constructPoint(board, name);
  if (!point || !result.found) throw new Error(result.found ? `${name} names no point.` : result.reason);
  expect(faultsOf(board, result.construction, projected(board, point.at))).toEqual([]);
  return result.construction;
}
