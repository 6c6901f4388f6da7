/** A DXF file as a row of groups: a code that tells what the value is, and the value as text. `at` says where each stood. */
export type DxfGroups = {
  readonly codes: readonly number[];
  readonly values: readonly string[];
  /** The place of a group for a message: "line 120", or "byte 4096" of a binary file. */
  readonly at: (index: number) => string;
};

/** The words a file that is DXF in bytes rather than in letters begins with. */
export const BINARY_MARK = "AutoCAD Binary DXF\r\n\x1a\0";
