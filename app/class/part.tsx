import type { ReactNode } from "react";

type Props = { readonly id: string; readonly title: string; readonly note?: ReactNode; readonly children: ReactNode };

/** One part of the sheet: what it is on the left, what to do on the right. */
export function Part({ id, title, note, children }: Props) {
  return (
    <section className="class-part" aria-labelledby={id}>
      <div>
        <h2 id={id} className="lettering">
          {title}
        </h2>
        {note && <p className="class-quiet">{note}</p>}
      </div>
      <div>{children}</div>
    </section>
  );
}
