/** The marks of a chart, told apart by their form. */
export const FORMS = ["dot", "square", "triangle"] as const;
export type Form = (typeof FORMS)[number];

type Props = {
  readonly form: Form;
  readonly x: number;
  readonly y: number;
  /** Half its height, pixels. */
  readonly size: number;
};

export function ChartSymbol({ form, x, y, size }: Props) {
  switch (form) {
    case "dot":
      return <circle className="symbol symbol-full" cx={x} cy={y} r={size} />;
    case "square":
      return <rect className="symbol" x={x - size} y={y - size} width={2 * size} height={2 * size} />;
    case "triangle":
      return (
        <path className="symbol" d={`M${x} ${y - 1.2 * size}L${x + 1.15 * size} ${y + size}H${x - 1.15 * size}Z`} />
      );
  }
}

/** Points past the edge: an arrow that says where to, and a number that says how far. */
export function PastEdge({
  x,
  y,
  size,
  up,
  words,
}: Omit<Props, "form"> & { readonly up: boolean; readonly words: string }) {
  const way = up ? -1 : 1;
  return (
    <g>
      <path className="symbol symbol-full" d={`M${x} ${y + way * size}l${-size} ${-2 * way * size}h${2 * size}Z`} />
      <text className="chart-number" x={x + 1.6 * size} y={y + (up ? 2.4 * size : -0.6 * size)}>
        {words}
      </text>
    </g>
  );
}
