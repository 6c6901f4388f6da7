import { createStore, type StoreApi } from "zustand/vanilla";
import type { Plane } from "@/app/_sheet/view";
import type { DemonstrationStep } from "@/lib/drawing/demonstration/demonstration-step";

export type Place = readonly [number, number];

/** What someone called out, set on the drawing for them. */
export type Guess = { readonly label: string; readonly at: Place };

export const PENCILS = ["red", "blue"] as const;
export type PencilColour = (typeof PENCILS)[number];

/** A line drawn by free hand, metres of the drawing it was drawn on. It stays with its step, and is there when one comes back. */
export type PencilLine = {
  readonly id: number;
  readonly step: number;
  readonly plane: Plane;
  readonly colour: PencilColour;
  readonly points: readonly Place[];
};

export type Card = "keys" | "corners";

/** `waiting`: guesses are taken. `shown`: the true point is on the sheet beside them. */
export type Trying = "no" | "waiting" | "shown";

export type Demonstration = {
  readonly steps: readonly DemonstrationStep[];
  /** Which step is on the sheet, from 0. */
  readonly at: number;
  readonly blank: boolean;
  readonly ring: boolean;
  readonly pencil: PencilColour | null;
  readonly lines: readonly PencilLine[];
  readonly trying: Trying;
  readonly guesses: readonly Guess[];
  /** Where the keys hold the next guess. */
  readonly aim: Place | null;
  /** Which guess's words are shown. */
  readonly chosen: number;
  readonly card: Card | null;
  readonly on: () => void;
  readonly back: () => void;
  readonly go: (at: number) => void;
  readonly setBlank: (blank: boolean) => void;
  readonly setRing: (ring: boolean) => void;
  readonly setPencil: (pencil: PencilColour | null) => void;
  readonly begin: (plane: Plane, at: Place) => void;
  readonly draw: (at: Place) => void;
  readonly rubOut: (what: "last" | "all") => void;
  readonly letTry: () => void;
  readonly guess: (at: Place, label: string) => void;
  readonly takeBack: () => void;
  readonly setAim: (aim: Place | null) => void;
  readonly choose: (guess: number) => void;
  readonly show: () => void;
  readonly leaveTry: () => void;
  readonly setCard: (card: Card | null) => void;
  readonly putAway: () => void;
};

export type DemonstrationStore = StoreApi<Demonstration>;

const NOT_TRYING = { trying: "no", guesses: [], aim: null, chosen: 0 } as const;

/** A demonstration under way. Going on while a guess is awaited shows the true point first; while the screen is blank, it lights it again. */
export function createDemonstration(steps: readonly DemonstrationStep[]): DemonstrationStore {
  return createStore<Demonstration>((set, get) => {
    const inside = (at: number) => Math.min(Math.max(Math.trunc(at) || 0, 0), steps.length - 1);
    const go = (at: number) => set({ ...NOT_TRYING, at: inside(at), blank: false });
    return {
      steps,
      at: 0,
      blank: false,
      ring: false,
      pencil: null,
      lines: [],
      ...NOT_TRYING,
      card: null,
      go,
      on: () => {
        const { blank, trying, at, show } = get();
        if (blank) set({ blank: false });
        else if (trying === "waiting") show();
        else go(at + 1);
      },
      back: () => {
        const { blank, trying, at } = get();
        if (blank) set({ blank: false });
        else if (trying === "shown") set({ trying: "waiting" });
        else if (trying === "waiting") set(NOT_TRYING);
        else go(at - 1);
      },
      setBlank: (blank) => set({ blank }),
      setRing: (ring) => set({ ring }),
      setPencil: (pencil) => set({ pencil }),
      begin: (plane, at) =>
        set(({ lines, at: step, pencil }) => {
          if (!pencil) return {};
          const id = lines.reduce((most, line) => Math.max(most, line.id), 0) + 1;
          return { lines: [...lines, { id, step, plane, colour: pencil, points: [at] }] };
        }),
      draw: (at) =>
        set(({ lines }) => {
          const last = lines.at(-1);
          return last ? { lines: [...lines.slice(0, -1), { ...last, points: [...last.points, at] }] } : {};
        }),
      rubOut: (what) =>
        set(({ lines, at }) => {
          if (what === "all") return { lines: lines.filter((line) => line.step !== at) };
          const last = lines.findLast((line) => line.step === at);
          return { lines: lines.filter((line) => line !== last) };
        }),
      letTry: () =>
        set(({ at }) => {
          const step = waitingStep(steps, at);
          return step === null ? {} : { ...NOT_TRYING, at: step, trying: "waiting", blank: false, pencil: null };
        }),
      guess: (at, label) =>
        set(({ guesses, trying }) => {
          if (trying !== "waiting") return {};
          const next = { label: label === "" ? String(guesses.length + 1) : label, at };
          return { guesses: [...guesses, next], chosen: guesses.length, aim: null };
        }),
      takeBack: () =>
        set(({ guesses }) => ({ guesses: guesses.slice(0, -1), chosen: Math.max(0, guesses.length - 2) })),
      setAim: (aim) => set({ aim }),
      choose: (chosen) => set({ chosen }),
      show: () => set(({ trying }) => (trying === "waiting" ? { trying: "shown", aim: null } : {})),
      leaveTry: () => set(NOT_TRYING),
      setCard: (card) => set({ card }),
      putAway: () =>
        set(({ card, blank, trying, pencil }) => {
          if (card) return { card: null };
          if (blank) return { blank: false };
          if (pencil) return { pencil: null };
          return trying === "no" ? {} : NOT_TRYING;
        }),
    };
  });
}

/** The step at which the class may guess: the present one, or, where that gives the point away, the one that asks for it; null where no point is left. */
function waitingStep(steps: readonly DemonstrationStep[], at: number): number | null {
  const here = steps[at];
  if (here?.kind === "place") return at;
  if (here?.kind === "line" && here.shown.drawn < here.shown.lines.length) return at;
  const point = here?.point ?? steps.slice(at).find((step) => step.point !== null)?.point;
  const first = steps.findIndex((step) => step.point !== null && step.point === point);
  return first < 0 ? null : first;
}
