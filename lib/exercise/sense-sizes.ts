import { SAME_POINT_M, segmentsCross } from "../geometry/segments-cross";
import { distance } from "../geometry/vector";
import { FOOT_M } from "../measure/length";
import type { Plan } from "../plan/plan";
import type { PlanPoint } from "../stage/frame";
import type { Exercise } from "./exercise";
import { type Finding, fault, note } from "./finding";

/** Nothing on a stage is larger or farther than this, metres. */
const LARGEST_M = 1000;

/** Nothing that has a size is smaller: figures divided by less would no longer be finite, metres. */
const SMALLEST_M = 1e-4;

/** Usual limits of a stair for the public: riser at most 7 in, tread at least 11 in (IBC 1011.5.2 as quoted). */
const STEEPEST_RISER_M = 7 * (FOOT_M / 12);
const SHALLOWEST_TREAD_M = 11 * (FOOT_M / 12);
const ROUNDING_M = 1e-9;

type Size = { readonly where: string; readonly what: string; readonly value: number; readonly zero?: true };

/** Sizes that must be more than nothing (or not less), and none absurdly large. */
export function checkSizes(exercise: Exercise): readonly Finding[] {
  const { plan } = exercise;
  return [
    ...sizesOf(exercise).flatMap(checkSize),
    ...placesOf(plan).flatMap(({ where, at }) =>
      Math.max(Math.abs(at[0]), Math.abs(at[1])) > LARGEST_M
        ? [fault(where, "this place is more than 1 km away", "check its unit")]
        : [],
    ),
    ...plan.platforms.flatMap(({ outline }, i) => checkOutline(outline, `/plan/platforms/${i}/outline`)),
    ...plan.stairs.flatMap(({ nosing, riser, tread }, i) => checkStair(nosing, riser, tread, `/plan/stairs/${i}`)),
  ];
}

function checkSize({ where, what, value, zero }: Size): readonly Finding[] {
  if (Math.abs(value) > LARGEST_M) return [fault(where, `${what} is more than 1 km`, "check its unit")];
  if (value < 0 || (value === 0 && !zero))
    return [
      fault(
        where,
        `${what} must be ${zero ? "0 or more" : "more than 0"}`,
        zero ? "write 0 or more" : "write a length above 0",
      ),
    ];
  if (value < SMALLEST_M && !zero)
    return [fault(where, `${what} is less than a tenth of a millimetre`, "check its unit")];
  return [];
}

function sizesOf({ stage, viewer, plan }: Exercise): readonly Size[] {
  const each = <Item extends object>(list: string, items: readonly Item[], keys: readonly (keyof Item & string)[]) =>
    items.flatMap((item, i) =>
      keys.map((key) => ({ where: `/plan/${list}/${i}/${key}`, what: `"${key}"`, value: item[key] as number })),
    );
  const loose = <Item extends object>(list: string, items: readonly Item[], keys: readonly (keyof Item & string)[]) =>
    each(list, items, keys).map((size) => ({ ...size, zero: true as const }));
  return [
    { where: "/stage/opening/width", what: "the opening's width", value: stage.opening.width },
    { where: "/stage/opening/height", what: "the opening's height", value: stage.opening.height },
    { where: "/stage/depth", what: "the stage's depth", value: stage.depth },
    { where: "/stage/apron", what: "the apron", value: stage.apron, zero: true },
    { where: "/stage/rake", what: "the rake", value: stage.rake, zero: true },
    { where: "/viewer/distance", what: "the eye's distance", value: viewer.distance },
    { where: "/viewer/eyeHeight", what: "the eye's height above the stage floor", value: viewer.eyeHeight },
    { where: "/viewer/offset", what: "the eye's offset", value: Math.abs(viewer.offset), zero: true },
    ...each("walls", plan.walls, ["height"]),
    ...loose("walls", plan.walls, ["thickness", "base"]),
    ...each("platforms", plan.platforms, ["height"]),
    ...loose("platforms", plan.platforms, ["base"]),
    ...each("stairs", plan.stairs, ["tread", "riser"]),
    ...loose("stairs", plan.stairs, ["base"]),
    ...each("furniture", plan.furniture, ["width", "depth", "height"]),
    ...loose("furniture", plan.furniture, ["base"]),
    ...each("columns", plan.columns, ["diameter", "height"]),
    ...loose("columns", plan.columns, ["base"]),
    ...each("masking", plan.masking, ["height"]),
  ];
}

function placesOf(plan: Plan): readonly { where: string; at: PlanPoint }[] {
  return [
    ...[...plan.corners].map(([name, at]) => ({ where: `/plan/corners/${name}`, at })),
    ...plan.platforms.flatMap(({ outline }, i) =>
      outline.map((at, j) => ({ where: `/plan/platforms/${i}/outline/${j}`, at })),
    ),
    ...plan.stairs.flatMap(({ nosing }, i) => nosing.map((at, j) => ({ where: `/plan/stairs/${i}/nosing/${j}`, at }))),
    ...plan.furniture.map(({ at }, i) => ({ where: `/plan/furniture/${i}/at`, at })),
    ...plan.columns.map(({ at }, i) => ({ where: `/plan/columns/${i}/at`, at })),
    ...plan.masking.flatMap(({ line }, i) => line.map((at, j) => ({ where: `/plan/masking/${i}/line/${j}`, at }))),
  ];
}

function checkOutline(outline: readonly PlanPoint[], where: string): readonly Finding[] {
  if (outline.length < 3) return [fault(where, "an outline needs three corners or more", "add the missing corners")];
  const sides = outline.map((at, i) => [at, outline[(i + 1) % outline.length] as PlanPoint] as const);
  if (sides.some(([a, b]) => distance(a, b) < SAME_POINT_M))
    return [fault(where, "two corners of the outline are one place", "take one out; the outline closes by itself")];
  const crossing = sides.some((side, i) => sides.slice(i + 1).some((other) => segmentsCross(side, other)));
  return crossing ? [fault(where, "the outline crosses itself", "list its corners in order round the edge")] : [];
}

function checkStair(
  [first, second]: readonly [PlanPoint, PlanPoint],
  riser: number,
  tread: number,
  where: string,
): readonly Finding[] {
  const findings: Finding[] = [];
  if (distance(first, second) < SAME_POINT_M)
    findings.push(fault(`${where}/nosing`, "the nosing's two ends are one place", "give both ends of the lowest step"));
  if (riser > STEEPEST_RISER_M + ROUNDING_M || tread < SHALLOWEST_TREAD_M - ROUNDING_M)
    findings.push(
      note(
        where,
        "this flight is steeper than the usual limits (riser at most 7 in, tread at least 11 in)",
        "a teaching sketch is not a construction drawing: local codes and licensed practice decide",
      ),
    );
  return findings;
}

/** Every id once: of walls, platforms, stairs, furniture, columns, masking and corners together, and of the openings of one wall. */
export function checkIds(plan: Plan): readonly Finding[] {
  const lists = {
    walls: plan.walls,
    platforms: plan.platforms,
    stairs: plan.stairs,
    furniture: plan.furniture,
    columns: plan.columns,
    masking: plan.masking,
  };
  const all = Object.entries(lists).flatMap(([list, items]) =>
    items.map(({ id }, i) => ({ id, where: `/plan/${list}/${i}/id` })),
  );
  return [
    ...duplicates(all, new Set(plan.corners.keys())),
    ...plan.walls.flatMap(({ openings }, i) =>
      duplicates(
        openings.map(({ id }, j) => ({ id, where: `/plan/walls/${i}/openings/${j}/id` })),
        new Set(),
      ),
    ),
  ];
}

function duplicates(named: readonly { id: string; where: string }[], taken: Set<string>): readonly Finding[] {
  return named.flatMap(({ id, where }) => {
    const twice = taken.has(id);
    taken.add(id);
    return twice ? [fault(where, `"${id}" is the name of something else already`, "give each its own id")] : [];
  });
}
