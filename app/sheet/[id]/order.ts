import { DRAWING_VIEWS } from "@/lib/drawing/drawing-pages/drawing-view";
import { LINE_HANDS, type LineHand } from "@/lib/drawing/paper/rule-pages";
import { KEY_DEGREES, type KeyDegree } from "@/lib/drawing/practice-sheet/answer-key-pages";
import { PAPERS, type Paper } from "@/lib/sheet/paper-size";

export const VIEWS = ["sheet", ...DRAWING_VIEWS] as const;
/** What is put on paper. */
export type View = (typeof VIEWS)[number];

export const FORMATS = ["pdf", "svg", "png"] as const;
export type Format = (typeof FORMATS)[number];

export const KEYS = ["none", ...KEY_DEGREES, "all"] as const;
export type Key = "none" | KeyDegree | "all";

/** The largest class that is printed for at once. */
export const MOST_COPIES = 40;
/** The most pages of one file: a set with its keys is a while in the making, and others wait for it. */
const MOST_PAGES = 120;
const MOST_SEED = Number.MAX_SAFE_INTEGER - MOST_COPIES;

/** What is asked of a file's address. */
export type Order = {
  readonly view: View;
  readonly format: Format;
  readonly paper: Paper;
  readonly key: Key;
  readonly line: LineHand;
  /** The point whose construction is drawn; null for all that are asked. */
  readonly point: string | null;
  readonly copies: number;
  /** The first seed of a set in which every sheet has an exercise of its own; null where all have the same. */
  readonly seed: number | null;
  /** Of a file that holds one page, which; from 1. */
  readonly page: number;
};

export type OrderReading =
  | { readonly ok: true; readonly order: Order }
  | { readonly ok: false; readonly problem: string };

/** The order that a query writes: what it leaves out is the plainest there is, and what is none of its words is refused. */
export function readOrder(query: URLSearchParams): OrderReading {
  const problems: string[] = [];
  const order: Order = {
    view: oneOf("view", VIEWS),
    format: oneOf("format", FORMATS),
    paper: oneOf("paper", PAPERS),
    key: oneOf("key", KEYS),
    line: oneOf("line", LINE_HANDS),
    point: query.get("point") || null,
    copies: whole("copies", 1, 1, MOST_COPIES),
    seed: query.get("seed") ? whole("seed", 0, 0, MOST_SEED) : null,
    page: whole("page", 1, 1, 4 * MOST_COPIES),
  };
  const most = mostCopies(order);
  if (order.copies > most)
    problems.push(`With this key there can be ${most} sheets in one file; the address asks for ${order.copies}.`);
  const [problem] = problems;
  return problem ? { ok: false, problem } : { ok: true, order };

  function oneOf<Word extends string>(name: string, words: readonly [Word, ...Word[]]): Word {
    const written = query.get(name);
    const word = written === null ? words[0] : words.find((each) => each === written);
    if (!word) problems.push(`“${name}” can be ${words.join(", ")}; the address says “${clip(written ?? "")}”.`);
    return word ?? words[0];
  }

  function whole(name: string, usual: number, least: number, most: number): number {
    const written = query.get(name);
    if (written === null || written === "") return usual;
    const number = /^\d{1,16}$/.test(written) ? Number(written) : Number.NaN;
    if (number >= least && number <= most) return number;
    problems.push(`“${name}” can be a whole number from ${least} to ${most}; the address says “${clip(written)}”.`);
    return usual;
  }
}

/** How many sheets one file may hold: where each has an exercise of its own, each has its own key as well. */
export function mostCopies({ key, seed }: Pick<Order, "key" | "seed">): number {
  return seed === null ? MOST_COPIES : Math.min(MOST_COPIES, Math.floor(MOST_PAGES / (1 + keyPages(key))));
}

/** How many pages a key has. */
export function keyPages(key: Key): number {
  return key === "none" ? 0 : key === "all" ? KEY_DEGREES.length : 1;
}

/** The address of an order's file; what is the plainest there is, is left out. */
export function fileAddress(exercise: string, order: Partial<Order>): string {
  const query = new URLSearchParams();
  for (const [name, value] of Object.entries(order)) if (value !== null) query.set(name, String(value));
  return `/sheet/${encodeURIComponent(exercise)}/file?${query}`;
}

/** Enough of what was written to know it again. */
function clip(written: string): string {
  return written.length > 30 ? `${written.slice(0, 30)}…` : written;
}
