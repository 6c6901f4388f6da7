"use client";

import { useEffect, useState } from "react";
import { UNIT_WORDS } from "@/app/_parts/course/course-words";
import { saveOwnFile } from "@/app/_parts/own-exercise/fetch-own-file";
import { Press } from "@/app/_parts/press";
import { LINE_HANDS } from "@/lib/drawing/paper/rule-pages";
import type { Exercise } from "@/lib/exercise/exercise";
import { freshSeed } from "@/lib/generator/variant-id";
import { PAPERS, type Paper } from "@/lib/sheet/paper-size";
import type { AskedPoint } from "./asked-points";
import { ChoiceField } from "./choice-field";
import { type Choices, keepChoices, keptChoices, USUAL } from "./choices";
import { NumberField } from "./number-field";
import { FORMATS, fileAddress, KEYS, mostCopies, type Order, VIEWS } from "./order";
import { Preview } from "./preview";
import type { SheetScales } from "./sheet-scales";
import { FOR_WORDS, FORMAT_WORDS, type For, KEY_WORDS, LINE_WORDS, PAPER_WORDS, VIEW_WORDS } from "./sheet-words";

type Props = {
  readonly exercise: Pick<Exercise, "id" | "title" | "unit" | "level">;
  /** The points that it asks for, by name and in words. */
  readonly asked: readonly AskedPoint[];
  readonly scales: SheetScales;
  /** The seed of a generated exercise, which a set for a class begins with. */
  readonly firstSeed: number | null;
  /** The text of an exercise that only the browser has: its files are asked for with it. */
  readonly text?: string | null;
};

/** The class that a set is printed for, until its teacher says how many. */
const USUAL_CLASS = 12;
const SEED_MOST = 999_999;

/** What to put on paper at the left, and how it will look at the right. The form works without a script as well. */
export function SheetDesk({ exercise, asked, scales, firstSeed, text = null }: Props) {
  const { id, title, unit, level } = exercise;
  const [choices, setChoices] = useState<Choices>(() => onPaperThatFits(USUAL, scales));
  const [point, setPoint] = useState("");
  const [whom, setWhom] = useState<For>("one");
  const [copies, setCopies] = useState(USUAL_CLASS);
  const [said, setSaid] = useState("");
  const [seed, setSeed] = useState(firstSeed ?? 1);

  useEffect(() => {
    setChoices(onPaperThatFits(keptChoices(), scales));
    if (firstSeed !== null) return;
    const [bits = 0] = window.crypto.getRandomValues(new Uint32Array(1));
    setSeed(freshSeed(bits, null));
  }, [firstSeed, scales]);

  const change = (changed: Partial<Choices>) => {
    const next = { ...choices, ...changed };
    setChoices(next);
    keepChoices(next);
  };
  const get = async (sent: string) => {
    setSaid("A moment…");
    setSaid(await saveOwnFile(fileAddress("draft", { ...order, format: many ? "pdf" : format }), sent));
  };
  const { view, format, paper, key, line } = choices;
  const many = view === "sheet" && whom !== "one";
  const set = many && whom === "set";
  const laid = scales[paper];
  // Variants for a class are other exercises, with sheets of their own.
  const noSheet = view === "sheet" && !set && !laid.fits ? laid.say : null;
  const most = mostCopies({ key, seed: whom === "set" ? seed : null });
  const order: Partial<Order> = {
    view,
    paper,
    ...(line === "ruled" ? { line } : {}),
    ...(view === "sheet" ? { key } : {}),
    ...(view === "construction" ? { point } : {}),
    ...(many ? { copies: inside(copies, 1, most) } : {}),
    ...(many && whom === "set" ? { seed: inside(seed, 0, SEED_MOST) } : {}),
  };
  return (
    <div className="printing-desk">
      <form
        className="printing-choices ruled"
        action={text === null ? `/sheet/${encodeURIComponent(id)}/file` : undefined}
        method="get"
        onSubmit={(event) => {
          if (text === null) return;
          event.preventDefault();
          get(text);
        }}
      >
        <div className="printing-title">
          <h1 className="lettering">{title}</h1>
          <p>
            {UNIT_WORDS[unit].title}, level {level}
          </p>
        </div>
        <div className="printing-fields">
          <ChoiceField
            label="What"
            name="view"
            words={VIEW_WORDS}
            order={VIEWS}
            value={view}
            onChange={(chosen) => change({ view: chosen })}
          />
          {view === "construction" && (
            <ChoiceField
              label="Point"
              name="point"
              words={{ "": "All that are asked", ...Object.fromEntries(asked.map(({ name, words }) => [name, words])) }}
              order={["", ...asked.map(({ name }) => name)]}
              value={point}
              onChange={setPoint}
            />
          )}
          <ChoiceField
            label="Paper"
            name="paper"
            words={PAPER_WORDS}
            order={PAPERS}
            value={paper}
            onChange={(chosen) => change({ paper: chosen })}
          />
          {view === "sheet" && (
            <>
              <ChoiceField
                label="Answer key"
                name="key"
                words={KEY_WORDS}
                order={KEYS}
                value={key}
                onChange={(chosen) => change({ key: chosen })}
              />
              <ChoiceField
                label="For whom"
                name="for"
                words={FOR_WORDS}
                order={["one", "copies", "set"]}
                value={whom}
                onChange={setWhom}
              />
            </>
          )}
          {many && (
            <NumberField
              label="Sheets"
              name="copies"
              least={1}
              most={most}
              value={copies}
              onChange={setCopies}
              note={`At most ${most} at a time, each with its number.`}
            />
          )}
          {many && whom === "set" && (
            <NumberField
              label="First variant"
              name="seed"
              least={0}
              most={SEED_MOST}
              value={seed}
              onChange={setSeed}
              note={`Exercises like this one, in the same units, made for ${UNIT_WORDS[unit].title}, level ${level}. The same number gives the same set again.`}
            />
          )}
          <ChoiceField
            label="Lines"
            name="line"
            words={LINE_WORDS}
            order={LINE_HANDS}
            value={line}
            onChange={(chosen) => change({ line: chosen })}
          />
          {many ? (
            <input type="hidden" name="format" value="pdf" />
          ) : (
            <ChoiceField
              label="File"
              name="format"
              words={FORMAT_WORDS}
              order={FORMATS}
              value={format}
              onChange={(chosen) => change({ format: chosen })}
            />
          )}
        </div>
        {view === "sheet" && (
          <p className="printing-scale" aria-live="polite">
            {noSheet ??
              `${set ? "Each sheet says its own scale." : sayScale(paper, scales)} Print at 100 %, then measure the bar at the foot.`}
          </p>
        )}
        <Press type="submit" weight="main" disabled={noSheet !== null}>
          Get the {(many ? "pdf" : format).toUpperCase()}
        </Press>
        {text !== null && <p role="status">{said}</p>}
      </form>
      {noSheet === null && <Preview id={id} order={order} text={text} />}
    </div>
  );
}

/** What was chosen last, on the first paper that has room for this sheet where the one chosen has none. */
function onPaperThatFits(kept: Choices, scales: SheetScales): Choices {
  if (kept.view !== "sheet" || scales[kept.paper].fits) return kept;
  return { ...kept, paper: PAPERS.find((paper) => scales[paper].fits) ?? kept.paper };
}

/** A picture less wide than this is too small to place points in by hand, millimetres: the course's own have 71 and more on Letter. */
const SMALL_MM = 70;

/** The scale; of a picture too small to draw in, how wide it is and where it is the widest. */
function sayScale(paper: Paper, scales: SheetScales): string {
  const laid = scales[paper];
  if (!laid.fits) return "";
  const said = `Drawn at ${laid.scale}.`;
  if (laid.openingMm >= SMALL_MM) return said;
  const small = `${said} The opening is ${Math.round(laid.openingMm)} mm wide, which is small to draw in.`;
  const [best] = PAPERS.flatMap((each) => {
    const other = scales[each];
    return other.fits && other.openingMm > laid.openingMm ? [{ each, mm: other.openingMm }] : [];
  }).sort((a, b) => b.mm - a.mm);
  return best
    ? `${small} On ${PAPER_WORDS[best.each].split(",")[0]} it is ${Math.round(best.mm)} mm; with fewer points asked there is more room as well.`
    : `${small} With fewer points asked there is more room.`;
}

/** A number that is being typed may be none yet, or past its bounds. */
function inside(value: number, least: number, most: number): number {
  return Number.isFinite(value) ? Math.min(most, Math.max(least, Math.round(value))) : least;
}
