"use client";

import { useId, useState } from "react";
import { Press } from "@/app/_parts/press";
import type { BroughtPoint, NotUnderstood } from "@/lib/draft/bring/brought";

/** Something that does not come along: what and why, and the places of it that can be shown. */
export type StaysAway = { readonly key: string; readonly say: string; readonly at: readonly BroughtPoint[] };

/** What a file has that was not understood, in sentences. */
export function sayNotUnderstood(list: readonly NotUnderstood[]): readonly StaysAway[] {
  return list.map(({ what, count, where, at }) => ({
    key: what,
    at,
    say: `${what.charAt(0).toUpperCase()}${what.slice(1)}: ${count.toLocaleString("en")}. ${count > where.length ? "The first at" : "At"} ${where.join("; ")}.`,
  }));
}

type Props = {
  readonly title: string;
  readonly note: string;
  readonly list: readonly StaysAway[];
  readonly onShow: (at: BroughtPoint) => void;
};

/** What stays away and why; each is shown in the drawing, one place after another. */
export function LeftOutList({ title, note, list, onShow }: Props) {
  const id = useId();
  const [shown, setShown] = useState<{ readonly key: string; readonly place: number } | null>(null);
  const show = ({ key, at }: StaysAway) => {
    const place = shown?.key === key ? (shown.place + 1) % at.length : 0;
    const there = at[place];
    if (!there) return;
    setShown({ key, place });
    onShow(there);
  };
  if (list.length === 0) return null;
  return (
    <section aria-labelledby={id}>
      <h2 id={id} className="lettering">
        {title}
      </h2>
      <p className="draft-note">{note}</p>
      <ul className="bring-away">
        {list.map((item) => (
          <li key={item.key}>
            <span>{item.say}</span>
            {item.at.length > 0 && (
              <Press weight="small" aria-label={`Show: ${item.say}`} onClick={() => show(item)}>
                {shown?.key === item.key && item.at.length > 1
                  ? `${shown.place + 1} of ${item.at.length}: next`
                  : "Show"}
              </Press>
            )}
          </li>
        ))}
      </ul>
    </section>
  );
}
