import { toPaper } from "./view";

type Props = { readonly at: readonly [number, number]; readonly scaleRatio: number };

/** The transform that puts what is drawn in pixels at a place of the drawing. */
export function pixelsAt(at: Props["at"], scaleRatio: number): string {
  const [x, y] = toPaper(at, scaleRatio);
  return `translate(${x}px, ${y}px) scale(calc(var(--unit) * var(--mark, 1)))`;
}

/** A place of the drawing where what is inside is drawn in pixels. */
export function AtPoint({ at, scaleRatio, children }: Props & { readonly children: React.ReactNode }) {
  return <g style={{ transform: pixelsAt(at, scaleRatio) }}>{children}</g>;
}

/** The student's mark: a graphite ring with hairs, open in the middle where the point is. */
export function OwnMark({ at, scaleRatio, held = false }: Props & { readonly held?: boolean }) {
  return (
    <AtPoint at={at} scaleRatio={scaleRatio}>
      {held && <circle r={17} className="held-ring" />}
      <circle r={9} className="mark-halo" />
      <circle r={9} className="mark-ring" />
      <path d="M-16 0H-4M4 0H16M0 -16V-4M0 4V16" className="mark-hair" />
      <circle r={1.1} className="mark-point" />
    </AtPoint>
  );
}

/** The true place: a red saltire. */
export function TrueMark({ at, scaleRatio }: Props) {
  return (
    <AtPoint at={at} scaleRatio={scaleRatio}>
      <path d="M-9 -9L9 9M9 -9L-9 9" className="true-halo" />
      <path d="M-9 -9L9 9M9 -9L-9 9" className="true-mark" />
    </AtPoint>
  );
}

/** Where a wrong idea puts the point: a dashed open lozenge. */
export function IdeaMark({ at, scaleRatio }: Props) {
  return (
    <AtPoint at={at} scaleRatio={scaleRatio}>
      <path d="M0 -11L11 0L0 11L-11 0Z" className="idea-mark" />
    </AtPoint>
  );
}

/** A point on the sheet that the straightedge has caught, or a line's end: a small blue square. */
export function CaughtMark({ at, scaleRatio }: Props) {
  return (
    <AtPoint at={at} scaleRatio={scaleRatio}>
      <path d="M-6 -6H6V6H-6Z" className="caught-mark" />
    </AtPoint>
  );
}

/** A straight line between two places of a drawing. */
export function PlainLine({
  from,
  to,
  scaleRatio,
  className,
}: {
  readonly from: readonly [number, number];
  readonly to: readonly [number, number];
  readonly scaleRatio: number;
  readonly className: string;
}) {
  const [x1, y1] = toPaper(from, scaleRatio);
  const [x2, y2] = toPaper(to, scaleRatio);
  return <line x1={x1} y1={y1} x2={x2} y2={y2} className={className} />;
}
