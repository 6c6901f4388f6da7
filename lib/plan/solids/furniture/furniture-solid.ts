import type { Stage } from "../../../stage/stage";
import type { Furniture, FurnitureKind } from "../../plan";
import type { Solid } from "../solid";
import { bedSolid } from "./bed-solid";
import { benchSolid } from "./bench-solid";
import { bookcaseSolid } from "./bookcase-solid";
import { boxSolid } from "./box-solid";
import { chairSolid } from "./chair-solid";
import { chestSolid } from "./chest-solid";
import { counterSolid } from "./counter-solid";
import { deskSolid } from "./desk-solid";
import { pianoSolid } from "./piano-solid";
import { type Piece, pieceOf } from "./piece";
import { sofaSolid } from "./sofa-solid";
import { stoolSolid } from "./stool-solid";
import { stoveSolid } from "./stove-solid";
import { tableSolid } from "./table-solid";

const SOLIDS: Readonly<Record<FurnitureKind, (piece: Piece) => Solid>> = {
  box: boxSolid,
  table: tableSolid,
  chair: chairSolid,
  stool: stoolSolid,
  sofa: sofaSolid,
  bed: bedSolid,
  desk: deskSolid,
  chest: chestSolid,
  bench: benchSolid,
  bookcase: bookcaseSolid,
  stove: stoveSolid,
  piano: pianoSolid,
  counter: counterSolid,
};

/** A piece keeps its shape while this share of its height stands clear of a raked floor; else it is drawn as a box. */
const CLEAR_SHARE = 0.3;

/**
 * A piece of furniture as a body of flat faces, metres, stage frame. It fills its bounding box and touches it on all six
 * sides: its named corners are the box's. On a rake its top stays level and its feet follow the floor, each as far as it
 * has to. The proportions of the parts are common practice, no source. A box of no size gives no faces.
 */
export function furnitureSolid(item: Furniture, stage: Pick<Stage, "rake">): Solid {
  if (!(item.width > 0 && item.depth > 0 && item.height > 0)) return { faces: [], lines: [] };
  const piece = pieceOf(item, stage);
  return (piece.height > item.height * CLEAR_SHARE ? SOLIDS[item.kind] : boxSolid)(piece);
}
