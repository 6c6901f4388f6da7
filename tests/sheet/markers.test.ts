import { describe, expect, it } from "vitest";
import { isMarkerBlack, MARKER_SQUARES } from "@/lib/sheet/marker-bits";
import { MARKER_MM, MARKER_QUIET_MM, markerPlaces } from "@/lib/sheet/marker-places";
import { PAPERS, PRINT_MARGIN_MM, paperSize } from "@/lib/sheet/paper-size";
import { grow, overlap } from "@/lib/sheet/sheet-box";

/** The first eight codes of the family, and the squares their bits stand in, highest bit first (AprilTag 3, tag36h11.c). */
const CODES = [
  0xd7e00984bn,
  0xdda664ca7n,
  0xdc4a1c821n,
  0xe17b470e9n,
  0xef91d01b1n,
  0xf429cdd73n,
  0x5da29225n,
  0x1106cba43n,
];
const BIT_X = [
  1, 2, 3, 4, 5, 2, 3, 4, 3, 6, 6, 6, 6, 6, 5, 5, 5, 4, 6, 5, 4, 3, 2, 5, 4, 3, 4, 1, 1, 1, 1, 1, 2, 2, 2, 3,
];
const BIT_Y = [
  1, 1, 1, 1, 1, 2, 2, 2, 3, 1, 2, 3, 4, 5, 2, 3, 4, 3, 6, 6, 6, 6, 6, 5, 5, 5, 4, 6, 5, 4, 3, 2, 5, 4, 3, 4,
];

describe("the markers", () => {
  it.each(CODES.map((code, id) => [id, code] as const))(
    "id %d has the family's pattern, half a turn round",
    (id, code) => {
      BIT_X.forEach((x, i) => {
        const white = ((code >> BigInt(35 - i)) & 1n) === 1n;
        expect(isMarkerBlack(id, 7 - x, 7 - (BIT_Y[i] as number))).toBe(!white);
      });
    },
  );

  it("are framed in black", () => {
    for (let id = 0; id < 8; id++)
      for (let i = 0; i < MARKER_SQUARES; i++) {
        expect(isMarkerBlack(id, i, 0) && isMarkerBlack(id, 0, i)).toBe(true);
        expect(isMarkerBlack(id, i, 7) && isMarkerBlack(id, 7, i)).toBe(true);
      }
  });

  it.each(PAPERS)("stand in the corners and the middles of the edges of %s, clockwise from the upper left", (paper) => {
    const { widthMm, heightMm } = paperSize(paper);
    const middles = markerPlaces(paper).map(({ box }) => [(box.left + box.right) / 2, (box.top + box.bottom) / 2]);
    const near = PRINT_MARGIN_MM + MARKER_MM / 2;
    const [right, bottom] = [widthMm - near, heightMm - near];
    const expected = [
      [near, near],
      [widthMm / 2, near],
      [right, near],
      [right, heightMm / 2],
      [right, bottom],
      [widthMm / 2, bottom],
      [near, bottom],
      [near, heightMm / 2],
    ];
    expect(markerPlaces(paper).map(({ id }) => id)).toEqual([0, 1, 2, 3, 4, 5, 6, 7]);
    middles.forEach(([x, y], i) => {
      expect(x).toBeCloseTo(expected[i]?.[0] ?? 0, 9);
      expect(y).toBeCloseTo(expected[i]?.[1] ?? 0, 9);
    });
  });

  it("are 12 mm wide with a square's white round them, and stand clear of one another", () => {
    expect(MARKER_MM).toBe(12);
    // AprilTag asks for a white border of one square (its user guide).
    expect(MARKER_QUIET_MM).toBeGreaterThanOrEqual(MARKER_MM / MARKER_SQUARES);
    for (const paper of PAPERS) {
      const boxes = markerPlaces(paper).map(({ box }) => grow(box, MARKER_QUIET_MM));
      for (const [i, a] of boxes.entries()) for (const b of boxes.slice(i + 1)) expect(overlap(a, b)).toBe(false);
    }
  });
});
