import type { ReactNode } from "react";

type Props = {
  readonly id: string;
  readonly title: string;
  /** What the drawing says, in words, and how to read it. */
  readonly notes: ReactNode;
  readonly children: ReactNode;
};

/** One part of the record: its notes beside its drawing, as on a sheet of the drafting room. */
export function Section({ id, title, notes, children }: Props) {
  return (
    <section className="record-section" aria-labelledby={id}>
      <div className="record-notes">
        <h2 id={id} className="lettering">
          {title}
        </h2>
        {notes}
      </div>
      <div className="record-drawing">{children}</div>
    </section>
  );
}
