import type { BroughtUnit, NotUnderstood } from "@/lib/draft/bring/brought";
import type { BroughtBounds } from "@/lib/draft/bring/brought-bounds";
import type { FoundLines } from "@/lib/draft/bring/place/find-lines";
import type { LayerUse, Placed, Placing } from "@/lib/draft/bring/place/place-brought";
import type { CatchingPieces } from "@/lib/draft/bring/pointing/lay-out-pieces";
import type { Draft } from "@/lib/draft/draft";
import type { Problem } from "@/lib/exercise/problem";

/** A layer as the page shows it. */
export type ShownLayer = {
  readonly name: string;
  readonly hidden: boolean;
  /** How many lines are on it. */
  readonly lines: number;
  readonly guess: LayerUse;
  /** Its lines as paths of the board's group; those of a full layer by where they lie, so that what is out of sight is not painted. */
  readonly paths: readonly string[];
};

/** A drawing as the page shows it; the drawing itself stays with the worker. */
export type ShownDrawing = {
  readonly file: "DXF" | "SVG";
  readonly unit: BroughtUnit;
  readonly layers: readonly ShownLayer[];
  readonly notUnderstood: readonly NotUnderstood[];
  readonly bounds: BroughtBounds;
  /** The centre line and the plaster line that may be meant. */
  readonly found: FoundLines;
  readonly pieces: CatchingPieces;
};

export type ReadAnswer =
  | { readonly ok: true; readonly drawing: ShownDrawing }
  | { readonly ok: false; readonly problem: Problem };

/** What the page asks of the worker. Each has a number, and so has the answer. */
export type Asked =
  | { readonly ask: "read"; readonly file: Blob }
  /** What would come of the drawing read last on a draft. */
  | { readonly ask: "place"; readonly placing: Placing; readonly draft: Draft };
export type Answer = ReadAnswer | Placed;

export type ToWorker = Asked & { readonly id: number };
export type FromWorker = { readonly id: number } & ({ readonly answer: Answer } | { readonly failed: string });
