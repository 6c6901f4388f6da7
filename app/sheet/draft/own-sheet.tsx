"use client";

import Link from "next/link";
import { useState } from "react";
import { LookDisclosure } from "@/app/_parts/look/look-switch";
import { type Own, OwnExercise } from "@/app/_parts/own-exercise/own-exercise";
import { Press } from "@/app/_parts/press";
import { LINE_HANDS } from "@/lib/drawing/paper/rule-pages";
import { PAPERS } from "@/lib/sheet/paper-size";
import { ChoiceField } from "../[id]/choice-field";
import { NumberField } from "../[id]/number-field";
import { FORMATS, KEYS, MOST_COPIES, type Order, VIEWS } from "../[id]/order";
import { FORMAT_WORDS, KEY_WORDS, LINE_WORDS, PAPER_WORDS, VIEW_WORDS } from "../[id]/sheet-words";

/** What to put on paper of an exercise that only this browser has. */
export function OwnSheet() {
  return <OwnExercise>{(own) => <Desk {...own} />}</OwnExercise>;
}

type Choices = Pick<Order, "view" | "format" | "paper" | "key" | "line" | "copies">;

function Desk({ exercise, text }: Own) {
  const [order, setOrder] = useState<Choices>({
    view: "sheet",
    format: "pdf",
    paper: exercise.units === "m" ? "a4" : "letter",
    key: "none",
    line: "hand",
    copies: 1,
  });
  const [said, setSaid] = useState("");
  const change = (changed: Partial<Choices>) => setOrder((before) => ({ ...before, ...changed }));
  const get = async () => {
    setSaid("A moment…");
    setSaid(await fetchFile(text, order));
  };
  const many = order.view === "sheet" && order.copies > 1;
  return (
    <main className="printing">
      <header className="printing-edge">
        <Link href="/" className="plain-link lettering" prefetch={false}>
          Plasterline
        </Link>
        <Link href="/draft" className="plain-link" prefetch={false}>
          To the drafting desk
        </Link>
        <LookDisclosure />
      </header>
      <div className="printing-desk">
        <form
          className="printing-choices ruled"
          onSubmit={(event) => {
            event.preventDefault();
            get();
          }}
        >
          <div className="printing-title">
            <h1 className="lettering">{exercise.title}</h1>
          </div>
          <div className="printing-fields">
            <ChoiceField
              label="What"
              name="view"
              words={VIEW_WORDS}
              order={VIEWS}
              value={order.view}
              onChange={(view) => change({ view })}
            />
            <ChoiceField
              label="Paper"
              name="paper"
              words={PAPER_WORDS}
              order={PAPERS}
              value={order.paper}
              onChange={(paper) => change({ paper })}
            />
            {order.view === "sheet" && (
              <>
                <ChoiceField
                  label="Answer key"
                  name="key"
                  words={KEY_WORDS}
                  order={KEYS}
                  value={order.key}
                  onChange={(key) => change({ key })}
                />
                <NumberField
                  label="Sheets"
                  name="copies"
                  least={1}
                  most={MOST_COPIES}
                  value={order.copies}
                  onChange={(copies) => change({ copies })}
                  note={`At most ${MOST_COPIES} at a time, each with its number.`}
                />
              </>
            )}
            <ChoiceField
              label="Lines"
              name="line"
              words={LINE_WORDS}
              order={LINE_HANDS}
              value={order.line}
              onChange={(line) => change({ line })}
            />
            {!many && (
              <ChoiceField
                label="File"
                name="format"
                words={FORMAT_WORDS}
                order={FORMATS}
                value={order.format}
                onChange={(format) => change({ format })}
              />
            )}
          </div>
          <p>Print at 100 %, then measure the bar at the foot.</p>
          <Press type="submit" weight="main">
            Get the {(many ? "pdf" : order.format).toUpperCase()}
          </Press>
          <p role="status">{said}</p>
        </form>
      </div>
    </main>
  );
}

/** Has the server put it on paper, which keeps nothing of it; why it cannot be, in a sentence, or nothing. */
async function fetchFile(text: string, { view, format, paper, key, line, copies }: Choices): Promise<string> {
  const many = view === "sheet" && copies > 1;
  const query = new URLSearchParams({
    view,
    paper,
    line,
    format: many ? "pdf" : format,
    ...(view === "sheet" ? { key, copies: String(copies) } : {}),
  });
  try {
    const answer = await fetch(`/sheet/draft/file?${query}`, {
      method: "POST",
      headers: { "content-type": "application/json" },
      body: JSON.stringify({ text }),
    });
    if (!answer.ok) return await answer.text();
    const name = /filename="([^"]+)"/.exec(answer.headers.get("content-disposition") ?? "")?.[1] ?? `sheet.${format}`;
    saveBlob(name, await answer.blob());
    return "";
  } catch {
    return "The server did not answer. Try once more.";
  }
}

function saveBlob(name: string, blob: Blob): void {
  const address = URL.createObjectURL(blob);
  const link = document.createElement("a");
  link.href = address;
  link.download = name;
  link.click();
  URL.revokeObjectURL(address);
}
