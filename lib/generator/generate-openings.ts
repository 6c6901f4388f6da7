import type { OpeningKind } from "../plan/plan";
import { addOpenings, openingNames } from "./add-openings";
import { wallStyle } from "./generate-walls";
import type { Draw, Idea } from "./idea";
import { inWords, listed } from "./in-words";
import { runWalls } from "./run-walls";

type Style = {
  readonly count: number;
  readonly given: "all" | "all but one" | "feet" | "none";
  readonly corners: number;
};

/** How many openings, and how much of the walls is drawn already; `corners` is the most of their points asked besides. */
const STYLES: readonly Style[] = [
  { count: 1, given: "all", corners: 0 },
  { count: 2, given: "all", corners: 0 },
  { count: 2, given: "all but one", corners: 2 },
  { count: 3, given: "feet", corners: 4 },
  { count: 3, given: "none", corners: 7 },
];

/** Walls have the thickness of a reveal, feet. */
export const REVEAL_FT = 0.5;
const WAYS: readonly OpeningKind[] = ["door", "arch", "passage"];
const ANY: readonly OpeningKind[] = ["door", "window", "arch", "passage", "niche"];
/** What an opening is called in a brief. */
export const CALLED: Readonly<Record<OpeningKind, string>> = {
  door: "door",
  window: "window",
  arch: "arch",
  passage: "passage",
  niche: "fireplace",
};

/** Doors, windows and ways through, placed on walls that are drawn already at first, and later not. */
export function thinkOutOpenings(draw: Draw): Idea | null {
  const { dice, frame, level, most, deepest } = draw;
  const style = STYLES[level - 1] as Style;
  const run = runWalls(dice, frame, wallStyle(level < 3 ? level : level - 1, deepest), REVEAL_FT);
  if (!run) return null;
  const kinds = [dice.pick(WAYS), ...Array.from({ length: style.count - 1 }, () => dice.pick(ANY))];
  const [b, c] = [run.corners[1], run.corners[2]];
  const level1 = run.plan.walls.filter(({ from, to }) => from === b && to === c).map(({ id }) => id);
  const inRun = run.plan.walls.filter(({ from, to }) => run.corners.includes(from) && run.corners.includes(to));
  const plan = addOpenings(dice, frame, run.plan, kinds, level === 1 ? level1 : inRun.map(({ id }) => id));
  const openings = plan.walls.flatMap((wall) => wall.openings);
  if (openings.length < style.count) return null;
  const tail = run.corners.at(-1);
  const drawn = run.corners.filter(
    (corner) => style.given !== "none" && (style.given !== "all but one" || corner !== tail),
  );
  const given = drawn.flatMap((corner) =>
    style.given === "feet" ? [`${corner}.foot`] : [`${corner}.foot`, `${corner}.top`],
  );
  const corners = ["foot", "top"].flatMap((role) => run.corners.map((corner) => `${corner}.${role}`));
  return {
    plan,
    kind: "plan-to-picture",
    given,
    wanted: [
      { names: corners, most: Math.min(style.corners, most - 4) },
      { names: openingNames(plan), most },
    ],
    skills: ["opening", "height", ...(level >= 3 ? ["raking-wall"] : ["depth-by-eye"])],
    place: "room",
    brief: () => {
      const kindsHere = [...new Set(openings.map(({ kind }) => kind))];
      const what = listed(
        kindsHere.map((kind) =>
          inWords(
            openings.filter((one) => one.kind === kind).length,
            CALLED[kind],
            `${CALLED[kind]}${kind === "arch" ? "es" : "s"}`,
          ),
        ),
      );
      const walls = {
        all: "The walls are drawn already",
        "all but one": `The walls are drawn but for ${tail}`,
        feet: "Of the walls only the feet are drawn",
        none: "Nothing is drawn yet: walls first",
      }[style.given];
      return `${walls}. Place ${what}: each jamb's foot or sill, then its head.`;
    },
  };
}
