import type { Hand } from "./hand";

const LINE_WORDS = {
  stair: {
    title: "A stair",
    first: "Set down one end of the lowest nosing. The flight climbs to the left of it, going on.",
    next: "Set down its other end.",
  },
  leg: { title: "A leg", first: "Set down its onstage edge.", next: "Set down its offstage edge." },
  border: { title: "A border", first: "Set down one end of it.", next: "Set down its other end." },
  backing: { title: "A backing", first: "Set down one end of it.", next: "Set down its other end." },
} as const;

const PUT_WORDS = {
  point: { title: "Points", step: "Set down a point of the floor. Go on as long as you like." },
  furniture: { title: "Furniture", step: "Set down its middle. It faces the house; turn it afterwards." },
  column: { title: "Columns", step: "Set down its middle." },
} as const;

/** What the pencil is doing, and what to do next. */
export function wordsOfHand(hand: Exclude<Hand, { readonly kind: "choose" }>): {
  readonly title: string;
  readonly step: string;
} {
  switch (hand.kind) {
    case "walls":
      return {
        title: "Walls",
        step: [
          "Set down the first corner. Go from stage right round to stage left: onstage then lies to the right of the run.",
          "Set down the next corner, or type where it stands.",
        ][hand.corners.length === 0 ? 0 : 1] as string,
      };
    case "platform":
      return {
        title: "A platform",
        step:
          hand.corners.length === 0
            ? "Set down its first corner."
            : hand.corners.length < 3
              ? "Set down its next corner."
              : "Set down its next corner, or come back to the first.",
      };
    case "line":
      return {
        title: LINE_WORDS[hand.draws].title,
        step: LINE_WORDS[hand.draws][hand.from === null ? "first" : "next"],
      };
    case "put":
      return PUT_WORDS[hand.puts];
    case "opening":
      return { title: "An opening", step: "Point at a wall, slide it along, and set it down; or say where." };
  }
}
