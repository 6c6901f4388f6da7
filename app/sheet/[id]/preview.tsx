"use client";

import { useState } from "react";
import { fileAddress, keyPages, type Order } from "./order";
import { paperPixels, VIEW_WORDS } from "./sheet-words";

type Props = { readonly id: string; readonly order: Partial<Order> };

/** Of a set for a class so many sheets are shown; the rest look like them. */
const MOST_SHOWN = 2;

/** The pages as they will be printed, one under another. */
export function Preview({ id, order }: Props) {
  const { view = "sheet", key = "none", copies = 1, seed } = order;
  const shown = Math.min(copies, MOST_SHOWN);
  const sheets = Array.from({ length: shown }, (_, i) => ({
    page: i + 1,
    label: copies === 1 ? VIEW_WORDS[view] : `Sheet ${i + 1} of ${copies}`,
  }));
  const keys = Array.from({ length: keyPages(key) }, (_, i) => ({
    page: shown + i + 1,
    label: seed === undefined ? "Answer key" : "Answer key of sheet 1",
  }));
  const left = copies - shown;
  return (
    <section className="printing-preview" aria-label="Preview">
      {sheets.map(({ page, label }) => (
        <PreviewPage key={page} address={addressOf(page)} label={label} order={order} />
      ))}
      {left > 0 && (
        <p className="printing-more">
          {left} more {left === 1 ? "sheet" : "sheets"} like these.
        </p>
      )}
      {keys.map(({ page, label }) => (
        <PreviewPage key={page} address={addressOf(page)} label={label} order={order} />
      ))}
    </section>
  );

  function addressOf(page: number): string {
    return `${fileAddress(id, { ...order, ...(copies > 1 ? { copies: shown } : {}), format: "svg", page })}&show=yes`;
  }
}

function PreviewPage({
  address,
  label,
  order: { paper = "letter" },
}: {
  readonly address: string;
  readonly label: string;
  readonly order: Partial<Order>;
}) {
  const [failed, setFailed] = useState<string | null>(null);
  const { width, height } = paperPixels(paper);
  return (
    <figure className="printing-page">
      {failed === address ? (
        <p className="printing-failed">This page cannot be shown. Get the file to see what is wrong.</p>
      ) : (
        // biome-ignore lint/performance/noImgElement: a drawing made on the spot in its real size has no smaller copies
        <img
          src={address}
          alt={`${label}, as it is printed`}
          width={width}
          height={height}
          loading="lazy"
          onError={() => setFailed(address)}
        />
      )}
      <figcaption>{label}</figcaption>
    </figure>
  );
}
