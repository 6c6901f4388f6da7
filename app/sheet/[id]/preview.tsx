"use client";

import { useEffect, useState } from "react";
import { fetchOwnFile } from "@/app/_parts/own-exercise/fetch-own-file";
import { fileAddress, keyPages, type Order } from "./order";
import { paperPixels, VIEW_WORDS } from "./sheet-words";

type Props = {
  readonly id: string;
  readonly order: Partial<Order>;
  /** The text of an exercise that only the browser has. */
  readonly text: string | null;
};

/** Of a set for a class so many sheets are shown; the rest look like them. */
const MOST_SHOWN = 2;

/** The pages as they will be printed, one under another. */
export function Preview({ id, order, text }: Props) {
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
        <PreviewPage key={page} address={addressOf(page)} label={label} order={order} text={text} />
      ))}
      {left > 0 && (
        <p className="printing-more">
          {left} more {left === 1 ? "sheet" : "sheets"} like these.
        </p>
      )}
      {keys.map(({ page, label }) => (
        <PreviewPage key={page} address={addressOf(page)} label={label} order={order} text={text} />
      ))}
    </section>
  );

  function addressOf(page: number): string {
    return `${fileAddress(text === null ? id : "draft", { ...order, ...(copies > 1 ? { copies: shown } : {}), format: "svg", page })}&show=yes`;
  }
}

function PreviewPage({
  address,
  label,
  order: { paper = "letter" },
  text,
}: {
  readonly address: string;
  readonly label: string;
  readonly order: Partial<Order>;
  readonly text: string | null;
}) {
  const [failed, setFailed] = useState<string | null>(null);
  const source = useSource(address, text, setFailed);
  const { width, height } = paperPixels(paper);
  return (
    <figure className="printing-page">
      {failed === address ? (
        <p className="printing-failed">This page cannot be shown. Get the file to see what is wrong.</p>
      ) : (
        // biome-ignore lint/performance/noImgElement: a drawing made on the spot in its real size has no smaller copies
        <img
          src={source ?? undefined}
          alt={`${label}, as it is printed`}
          width={width}
          height={height}
          loading={text === null ? "lazy" : "eager"}
          onError={() => setFailed(address)}
        />
      )}
      <figcaption>{label}</figcaption>
    </figure>
  );
}

/** An order is drawn once its choices have rested so long, milliseconds: a number is typed digit by digit. */
const REST_MS = 250;

/** Where a page's picture comes from: its address, or what the server makes of an exercise that only the browser has. */
function useSource(address: string, text: string | null, onFailed: (address: string) => void): string | null {
  const [made, setMade] = useState<string | null>(null);
  useEffect(() => {
    if (text === null) return;
    const stop = new AbortController();
    let url: string | null = null;
    const look = async () => {
      const fetched = await fetchOwnFile(address, text, stop.signal);
      if (stop.signal.aborted) return;
      if (!fetched.ok) onFailed(address);
      else {
        url = URL.createObjectURL(fetched.blob);
        setMade(url);
      }
    };
    const later = setTimeout(look, REST_MS);
    return () => {
      clearTimeout(later);
      stop.abort();
      if (url !== null) URL.revokeObjectURL(url);
    };
  }, [address, text, onFailed]);
  return text === null ? address : made;
}
