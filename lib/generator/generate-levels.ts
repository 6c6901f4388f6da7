import { BLANK_PLAN } from "../plan/blank-plan";
import { capital } from "../plan/first-letter";
import type { Plan } from "../plan/plan";
import { boxNames } from "./add-furniture";
import { addPlatform, nosingNames, type PlatformStyle } from "./add-levels";
import { isPlayable } from "./clear-stage";
import type { Draw, Idea } from "./idea";
import { inWords, listed } from "./in-words";
import type { RunStyle } from "./run-shapes";
import { runWalls } from "./run-walls";

type Style = Omit<PlatformStyle, "id" | "nearest" | "deepest" | "small">;

/** The platforms of each level, in the order they are built. */
const STYLES: readonly (readonly Style[])[] = [
  [{ risers: [2, 4], flight: "none", splayed: false }],
  [{ risers: [2, 2], flight: "front", splayed: false }],
  [{ risers: [3, 4], flight: "front", splayed: true }],
  [
    { risers: [4, 4], flight: "end", splayed: false },
    { risers: [2, 3], flight: "none", splayed: true },
  ],
  [
    { risers: [4, 4], flight: "front", splayed: true },
    { risers: [3, 4], flight: "end", splayed: false },
  ],
];
/** Nothing stands nearer to the plaster line, feet. */
const NEAREST_FT = 5;
const WALLS_FROM = 4;
/** The room that the platforms of the later levels stand in. */
const ROOM: RunStyle = { shapes: ["box"], deep: [15, 18], splay: [1, 3], skew: 0, returns: false };
const TRIES = 60;

/** Platforms and flights: feet, tops and nosings. */
export function thinkOutLevels(draw: Draw): Idea | null {
  const { dice, frame, level, most } = draw;
  const run = level >= WALLS_FROM ? runWalls(dice, frame, ROOM) : null;
  if (level >= WALLS_FROM && !run) return null;
  const styles = STYLES[level - 1] ?? [];
  const plan = styles.reduce<Plan | null>(
    (sofar, style, i) => sofar && buildOne(draw, sofar, { ...style, id: `P${i + 1}`, small: run !== null }),
    run?.plan ?? BLANK_PLAN,
  );
  if (!plan) return null;
  const given = [
    ...(level === 1 ? ["P1.1.foot"] : []),
    ...(run?.corners ?? []).flatMap((corner) => [`${corner}.foot`, `${corner}.top`]),
  ];
  const nosings = plan.stairs.reduce((sum, { steps }) => sum + 2 * steps, 0);
  const forPlatforms = Math.ceil((most - Math.min(nosings, most / 2)) / styles.length);
  const platforms = plan.platforms.map(({ id, outline }) => ({
    names: boxNames(id, outline.length),
    most: forPlatforms,
  }));
  const flights = plan.stairs.map((stair) => ({ names: nosingNames(stair), most: 2 * stair.steps }));
  return {
    plan,
    kind: "plan-to-picture",
    given,
    wanted: [...platforms, ...flights],
    skills: ["platform", "depth-by-eye", "height", ...(plan.stairs.length > 0 ? ["stair"] : [])],
    place: run ? "room" : "floor",
    brief: () => {
      const risers = plan.stairs.map(({ steps }) => `one of ${inWords(steps + 1, "riser")}`);
      const flight = risers.length > 0 ? ` and ${inWords(risers.length, "flight")} (${listed(risers)})` : "";
      return `${capital(inWords(styles.length, "platform"))}${flight}. Place the feet on the stage floor that the eye sees, then the tops${risers.length > 0 ? ", then the nosings from the lowest up" : ""}. A teaching sketch is not a construction drawing.`;
    },
  };
}

function buildOne(
  { dice, frame, deepest }: Draw,
  plan: Plan,
  style: Omit<PlatformStyle, "nearest" | "deepest">,
): Plan | null {
  for (let i = 0; i < TRIES; i += 1) {
    const next = addPlatform(dice, frame, plan, { ...style, nearest: NEAREST_FT, deepest });
    if (isPlayable(next, frame)) return next;
  }
  return null;
}
