import qrcode from "qrcode";

/** Clear modules round a code, which readers look for (ISO/IEC 18004 asks for four). */
const QUIET = 4;

/** A text as a code to scan: black on white in either light, for that is what cameras read best. */
export function CodeDrawing({ text, label }: { readonly text: string; readonly label: string }) {
  const { modules } = qrcode.create(text, { errorCorrectionLevel: "M" });
  const { size } = modules;
  const rows = Array.from({ length: size }, (_, row) => row);
  const squares = rows.flatMap((y) => rows.flatMap((x) => (modules.get(y, x) ? [`M${x} ${y}h1v1h-1z`] : [])));
  return (
    <svg
      role="img"
      aria-label={label}
      className="scan-code"
      viewBox={`${-QUIET} ${-QUIET} ${size + 2 * QUIET} ${size + 2 * QUIET}`}
      shapeRendering="crispEdges"
    >
      <rect x={-QUIET} y={-QUIET} width={size + 2 * QUIET} height={size + 2 * QUIET} fill="#fff" />
      <path d={squares.join("")} fill="#000" />
    </svg>
  );
}
