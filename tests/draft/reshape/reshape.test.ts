import { describe, expect, it } from "vitest";
import type { Draft, Thing } from "@/lib/draft/draft";
import { applyEdit } from "@/lib/draft/edits/apply-edit";
import { type Handle, type HandleName, nameOfHandle } from "@/lib/draft/reshape/handle";
import { handlesOf } from "@/lib/draft/reshape/handles-of";
import { type Reshaped, reshape } from "@/lib/draft/reshape/reshape";
import { stepHandle } from "@/lib/draft/reshape/step-handle";
import { distance } from "@/lib/geometry/vector";
import { furnitureCorners } from "@/lib/plan/furniture-corners";
import { stairNosings } from "@/lib/plan/stair-nosings";
import type { PlanPoint } from "@/lib/stage/frame";
import { edited, fiveWalls } from "../edits/five-walls";

const BY_KEYS = { grid: 0.1, tolerance: 0, units: "m" } as const;
const BY_MOUSE = { grid: 0.1, tolerance: 0.15, units: "m" } as const;

const SQUARE: readonly PlanPoint[] = [
  [-1, 2],
  [1, 2],
  [1, 3],
  [-1, 3],
];

/** A set with one of each thing that has handles. */
function furnished(): Draft {
  return [
    { edit: "add-platform", platform: { outline: SQUARE, height: 0.3, base: 0 } } as const,
    {
      edit: "add-stair",
      stair: {
        nosing: [
          [-0.5, 1],
          [0.5, 1],
        ],
        steps: 4,
        tread: 0.3,
        riser: 0.15,
        base: 0,
      },
    } as const,
    {
      edit: "add-furniture",
      furniture: { kind: "table", at: [2, 2], turn: 0, width: 1, depth: 0.6, height: 0.7, base: 0 },
    } as const,
    { edit: "add-column", column: { at: [-2, 2], diameter: 0.3, height: 3, base: 0 } } as const,
    {
      edit: "add-masking",
      masking: {
        kind: "leg",
        line: [
          [-4, 0.6],
          [-6, 0.6],
        ],
        trim: null,
        height: 5,
      },
    } as const,
  ].reduce<Draft>((draft, change) => edited(draft, change), fiveWalls());
}

const P1: Thing = { kind: "platform", id: "P1" };
const S1: Thing = { kind: "stair", id: "S1" };
const TABLE: Thing = { kind: "furniture", id: "table" };

function handle(draft: Draft, thing: Thing, name: HandleName): Handle {
  const found = handlesOf(draft.exercise.plan, thing).find((each) => nameOfHandle(each) === name);
  if (!found) throw new Error(`No handle ${name}.`);
  return found;
}

function pulled(draft: Draft, thing: Thing, name: HandleName, to: PlanPoint, by: Parameters<typeof reshape>[4]) {
  const { plan } = draft.exercise;
  const reshaped = reshape(plan, thing, handle(draft, thing, name), to, by) as Reshaped;
  const after = applyEdit(draft, reshaped.edit);
  if (!after.ok) throw new Error(after.say);
  return { ...reshaped, plan: after.draft.exercise.plan, draft: after.draft };
}

describe("a platform's outline", () => {
  it("has a handle at each corner and in the middle of each edge", () => {
    expect(handlesOf(furnished().exercise.plan, P1).map(nameOfHandle)).toEqual(
      [1, 2, 3, 4].flatMap((n) => [`corner ${n}`, `edge ${n}`]),
    );
  });

  it("goes level with a neighbour and upstage of the other where it is pulled near", () => {
    const { plan, caught } = pulled(furnished(), P1, "corner 3", [1.08, 2.93], BY_MOUSE);
    expect(plan.platforms[0]?.outline).toEqual(SQUARE);
    expect(caught.map(({ by }) => by).sort()).toEqual(["across", "upstage"]);
  });

  it("gets a corner where the middle of an edge is pulled out, and the marks of those behind it follow", () => {
    const marked = edited(furnished(), { edit: "set-task", task: { marks: ["P1.2.top", "P1.4.foot"], given: [] } });
    const { plan, draft, handle: now } = pulled(marked, P1, "edge 2", [1.7, 2.5], BY_KEYS);
    expect(now).toBe("corner 3");
    expect(plan.platforms[0]?.outline[2]).toEqual([expect.closeTo(1.7, 9), 2.5]);
    expect(draft.exercise.task.marks).toEqual(["P1.2.top", "P1.5.foot"]);
    const taken = edited(draft, { edit: "take-platform-corner", id: "P1", corner: 3 });
    expect(taken.exercise.plan.platforms[0]?.outline).toEqual(SQUARE);
    expect(taken.exercise.task.marks).toEqual(["P1.2.top", "P1.4.foot"]);
  });

  it("loses the marks of a corner that is taken out", () => {
    const marked = edited(furnished(), { edit: "set-task", task: { marks: ["P1.2.top", "P1.4.foot"], given: [] } });
    const taken = edited(marked, { edit: "take-platform-corner", id: "P1", corner: 2 });
    expect(taken.exercise.task.marks).toEqual(["P1.3.foot"]);
  });

  it.each([
    [{ edit: "take-platform-corner", id: "P1", corner: 9 } as const, "no corner 9"],
    [{ edit: "take-platform-corner", id: "P7", corner: 1 } as const, 'no platform "P7"'],
    [{ edit: "add-platform-corner", id: "P1", after: 0, at: [0, 0] } as const, "no corner 0"],
    [{ edit: "add-platform-corner", id: "P1", after: 1, at: [1, 2] } as const, "stands there already"],
  ])("refuses %o", (change, say) => {
    const after = applyEdit(furnished(), change);
    expect(after.ok ? "" : after.say).toContain(say);
  });

  it("keeps three corners", () => {
    const three = edited(furnished(), { edit: "take-platform-corner", id: "P1", corner: 1 });
    const after = applyEdit(three, { edit: "take-platform-corner", id: "P1", corner: 1 });
    expect(after.ok ? "" : after.say).toContain("at least 3 corners");
  });
});

describe("a stair", () => {
  it("turns and widens by the ends of its lowest nosing", () => {
    const { plan } = pulled(furnished(), S1, "end 2", [-0.5, 2], BY_KEYS);
    // Now it climbs toward stage right, to the left of straight upstage.
    const top = stairNosings(plan.stairs[0] as (typeof plan.stairs)[0], { rake: 0 }).at(-1);
    expect(top?.start[0]).toBeCloseTo(-1.4, 9);
    expect(top?.end[1]).toBeCloseTo(2, 9);
  });

  it("has its treads by the highest nosing, by half centimetres, and its risers as they were", () => {
    const { plan } = pulled(furnished(), S1, "top 2", [0.52, 1.87], BY_KEYS);
    expect(plan.stairs[0]).toMatchObject({ steps: 4, riser: 0.15, tread: 0.29 });
    expect(plan.stairs[0]?.nosing).toEqual([
      [-0.5, 1],
      [0.5, 1],
    ]);
  });

  it("widens by the highest nosing on the side that is pulled", () => {
    const { plan } = pulled(furnished(), S1, "top 1", [-0.93, 1.9], BY_KEYS);
    expect(plan.stairs[0]?.nosing[0][0]).toBeCloseTo(-0.9, 9);
    expect(plan.stairs[0]?.nosing[1]).toEqual([0.5, 1]);
  });

  it("of one riser has no highest nosing of its own", () => {
    const one = edited(furnished(), { edit: "change-stair", id: "S1", change: { steps: 1 } });
    expect(handlesOf(one.exercise.plan, S1).map(nameOfHandle)).toEqual(["end 1", "end 2"]);
  });
});

describe("furniture, columns, masking and openings", () => {
  it("turns by fives of a degree, and square to a wall where it nearly is", () => {
    // W2 goes from [-4, 1] to [-3, 5]: its direction is 75.96 degrees.
    const { plan: free } = pulled(furnished(), TABLE, "turn 1", [2 + Math.sin(0.79), 2 - Math.cos(0.79)], BY_MOUSE);
    expect(free.furniture[0]?.turn).toBeCloseTo(Math.PI / 4, 9);
    const raking = Math.atan2(4, 1);
    const asked = raking - Math.PI / 2 + 0.03;
    const { plan, caught } = pulled(furnished(), TABLE, "turn 1", [2 + Math.sin(asked), 2 - Math.cos(asked)], BY_MOUSE);
    expect(plan.furniture[0]?.turn).toBeCloseTo(raking - Math.PI / 2, 9);
    expect(caught[0]?.by).toBe("square");
  });

  it("turns by keys to the left and right", () => {
    const draft = furnished();
    const turn = handle(draft, TABLE, "turn 1");
    const to = stepHandle(draft.exercise.plan, TABLE, turn, { direction: "stage left", grid: 0.1, times: 6 });
    const { plan } = pulled(draft, TABLE, "turn 1", to as PlanPoint, BY_KEYS);
    expect(plan.furniture[0]?.turn).toBeCloseTo(Math.PI / 6, 9);
    expect(stepHandle(draft.exercise.plan, TABLE, turn, { direction: "upstage", grid: 0.1, times: 1 })).toBeNull();
  });

  it("furniture is sized by a corner about the corner over against it", () => {
    const { plan } = pulled(furnished(), TABLE, "size 3", [2.72, 2.28], BY_KEYS);
    const corners = furnitureCorners(plan.furniture[0] as (typeof plan.furniture)[0]);
    expect(corners[0]?.map((each) => Math.round(each * 1e9) / 1e9)).toEqual([1.5, 1.7]);
    expect(plan.furniture[0]?.width).toBeCloseTo(1.2, 9);
    expect(plan.furniture[0]?.depth).toBe(0.6);
  });

  it("a column is as thick as its rim says", () => {
    const { plan } = pulled(furnished(), { kind: "column", id: "K1" }, "size 1", [-1.76, 2], BY_KEYS);
    expect(plan.columns[0]?.diameter).toBeCloseTo(0.5, 9);
  });

  it("a leg is as long as its ends are apart", () => {
    const { plan } = pulled(furnished(), { kind: "masking", id: "leg" }, "end 2", [-5.03, 0.66], BY_MOUSE);
    expect(plan.masking[0]?.line[1]).toEqual([-5, 0.6]);
  });

  it("an opening goes as far as its wall and keeps a width", () => {
    const draft = furnished();
    const wall = draft.exercise.plan.walls.find(({ openings }) => openings.length > 0);
    const [opening] = wall?.openings ?? [];
    if (!wall || !opening) throw new Error("The set has an opening.");
    const thing: Thing = { kind: "opening", wall: wall.id, id: opening.id };
    const far = pulled(draft, thing, "jamb 2", [99, 5], BY_KEYS).plan.walls.find(({ id }) => id === wall.id);
    const line = draft.exercise.plan;
    const [from, to] = [line.corners.get(wall.from), line.corners.get(wall.to)] as [PlanPoint, PlanPoint];
    const [widened] = far?.openings ?? [];
    expect((widened?.at ?? 0) + (widened?.width ?? 0)).toBeCloseTo(distance(from, to), 9);
    const after = pulled(draft, thing, "jamb 1", [99, 5], BY_KEYS).plan.walls.find(({ id }) => id === wall.id);
    const narrow = after?.openings[0] ?? opening;
    expect(narrow.width).toBeCloseTo(0.1, 9);
    expect(narrow.at + narrow.width).toBeCloseTo(opening.at + opening.width, 9);
  });
});
