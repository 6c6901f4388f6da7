import type { Solid } from "./solid";

/** Several solids as one: their faces and lines in the order given, the lines' places in `faces` counted anew. */
export function joinSolids(...solids: readonly Solid[]): Solid {
  const faces: Solid["faces"][number][] = [];
  const lines: Solid["lines"][number][] = [];
  for (const solid of solids) {
    const before = faces.length;
    for (const face of solid.faces) faces.push(face);
    for (const line of solid.lines) lines.push({ ...line, faces: line.faces.map((place) => place + before) });
  }
  return { faces, lines };
}
