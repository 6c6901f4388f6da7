/** Squares along a marker's side: six of its pattern and the black border's one on either side. */
export const MARKER_SQUARES = 8;

/**
 * The inner patterns of eight markers of the tag36h11 family, ids 0 to 7, row by row from the top; 1 is white. The family is
 * published with AprilTag 3 (Wang and Olson, AprilTag 2: Efficient and robust fiducial detection, IROS 2016; the codes and
 * their places stand in its tag36h11.c). They stand here as OpenCV's DICT_APRILTAG_36h11 has them upright, which is half a
 * turn from the family's own pictures: OpenCV's detector then gives the corners clockwise from the sheet's upper left.
 */
const MARKER_BITS: readonly (readonly string[])[] = [
  ["001000", "011010", "000101", "000110", "101110", "101011"],
  ["100100", "101101", "000110", "001111", "111010", "011011"],
  ["011100", "001000", "100100", "000001", "010010", "111011"],
  ["000110", "010011", "100101", "111001", "111000", "100111"],
  ["010001", "000001", "010100", "111101", "001111", "010111"],
  ["001101", "011100", "110101", "011011", "100011", "001111"],
  ["101000", "010000", "101110", "100101", "011010", "100000"],
  ["001010", "111000", "011101", "001010", "011000", "001000"],
];

/** Whether a square of a marker is black: column and row from its upper left, 0 to 7. Its border always is. */
export function isMarkerBlack(id: number, column: number, row: number): boolean {
  return MARKER_BITS[id]?.[row - 1]?.[column - 1] !== "1";
}
