import type { Vector2 } from "../../geometry/vector";

/** A place of a drawing: millimetres of its paper, right and up from any one place of it; up is upright on the stage. */
export type DrawingPlace = Vector2;

export type DrawingLine = readonly [DrawingPlace, DrawingPlace];

/** Lines of one direction on the stage, level there. */
export type ParallelLines = {
  readonly lines: readonly DrawingLine[];
  /** Angle of their direction to the plaster line, degrees: 90 square to it, 45 up to stage left, 0 along it; null where it is not known. */
  readonly bearingDeg: number | null;
};

/** A rectangle on the floor, its corners in order round it. */
export type FloorRectangle = {
  readonly corners: readonly [DrawingPlace, DrawingPlace, DrawingPlace, DrawingPlace];
  /** The side between its first two corners over the side between its second and third; null where it is not known. */
  readonly proportion: number | null;
};

/** One length that is known, metres. */
export type KnownLength = {
  readonly ends: DrawingLine;
  readonly metres: number;
  /** `upright`: from the floor straight up, its foot first. `floor`: between two places of the floor. `plaster line`: along the plaster line, where the picture is true size. */
  readonly lies: "upright" | "floor" | "plaster line";
};

/** What somebody marked in a drawing, of which nothing else is known. */
export type MarkedDrawing = {
  readonly parallels: readonly ParallelLines[];
  readonly uprights: readonly DrawingLine[];
  readonly rectangle: FloorRectangle | null;
  readonly length: KnownLength | null;
  /** How exactly the drawing was drawn and marked, one standard deviation at each place, millimetres, above 0. */
  readonly sigmaMm: number;
};

/** The same drawing with each place put where `move` has it; places are counted in one fixed order. */
export function movePlaces(
  drawing: MarkedDrawing,
  move: (place: DrawingPlace, index: number) => DrawingPlace,
): MarkedDrawing {
  let index = 0;
  const next = (place: DrawingPlace) => move(place, index++);
  const line = ([a, b]: DrawingLine): DrawingLine => [next(a), next(b)];
  const { rectangle, length } = drawing;
  return {
    ...drawing,
    parallels: drawing.parallels.map((group) => ({ ...group, lines: group.lines.map(line) })),
    uprights: drawing.uprights.map(line),
    rectangle: rectangle && {
      ...rectangle,
      corners: [
        next(rectangle.corners[0]),
        next(rectangle.corners[1]),
        next(rectangle.corners[2]),
        next(rectangle.corners[3]),
      ],
    },
    length: length && { ...length, ends: line(length.ends) },
  };
}

/** How many places a drawing has. */
export function countPlaces(drawing: MarkedDrawing): number {
  let count = 0;
  movePlaces(drawing, (place) => {
    count++;
    return place;
  });
  return count;
}
