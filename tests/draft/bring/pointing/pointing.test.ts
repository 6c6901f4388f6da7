import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { BroughtPoint } from "@/lib/draft/bring/brought";
import {
  PLACES,
  type Pointing,
  type PointingEvent,
  placesAsked,
  point,
  pointedPair,
  startPointing,
} from "@/lib/draft/bring/pointing/pointing";
import { sayAsked } from "@/lib/draft/bring/pointing/say-pointing";

const run = (start: Pointing, ...events: readonly PointingEvent[]) => events.reduce(point, start);
const at = (x: number, y: number): readonly PointingEvent[] => [
  { do: "hold", held: { at: [x, y], by: null } },
  { do: "set" },
];

describe("pointing", () => {
  it("asks for the centre line from the audience, the plaster line, and the size only where it is not known", () => {
    const asked = [startPointing(true)];
    for (let i = 0; i < 6; i++) asked.push(run(asked.at(-1) as Pointing, ...at(i, i * i)));
    expect(asked.map((now) => now.asked)).toEqual([...PLACES, null]);
    expect(asked.map(sayAsked)[0]).toContain("centre line, near the audience");
    expect(asked.map(sayAsked).at(-1)).toContain("Everything is pointed at");
    const last = asked.at(-1) as Pointing;
    expect(pointedPair(last, "centre line")).toEqual([
      [0, 0],
      [1, 1],
    ]);
    expect(pointedPair(last, "size")).toEqual([
      [4, 16],
      [5, 25],
    ]);
    expect(placesAsked(startPointing(false))).toHaveLength(4);
  });

  it("has no pair while one of its places is missing", () => {
    expect(pointedPair(run(startPointing(false), ...at(1, 2)), "centre line")).toBeNull();
  });

  it("sets nothing where nothing is held", () => {
    const start = startPointing(false);
    expect(run(start, { do: "set" })).toEqual(start);
    expect(run(start, { do: "hold", held: null }, { do: "set" }).places).toEqual({});
  });

  it("refuses the same place twice for one line, in words, and takes it for another line", () => {
    const twice = run(startPointing(false), ...at(3, 4), ...at(3, 4));
    expect(twice.asked).toBe("centre line upstage");
    expect(twice.trouble).toContain("same place");
    const other = run(startPointing(false), ...at(3, 4), ...at(3, 9), ...at(3, 4));
    expect(other.trouble).toBe("");
    expect(other.places["plaster line"]).toEqual([3, 4]);
  });

  it("sets a place again without asking the others anew, and takes that back", () => {
    const all = run(startPointing(false), ...at(0, 0), ...at(0, 9), ...at(-5, 3), ...at(5, 3));
    const again = run(all, { do: "ask", place: "plaster line" }, ...at(-7, 3));
    expect(again.asked).toBeNull();
    expect(again.places["plaster line"]).toEqual([-7, 3]);
    const back = run(again, { do: "take back" });
    expect(back.places).toEqual(all.places);
  });

  it("moves a place that was set", () => {
    const moved = run(startPointing(false), ...at(0, 0), { do: "move", place: "centre line downstage", to: [1, 1] });
    expect(moved.places["centre line downstage"]).toEqual([1, 1]);
    expect(moved.asked).toBe("centre line upstage");
  });

  it("takes a line that was found as if it had been pointed at, and takes it back in one", () => {
    const taken = run(startPointing(false), {
      do: "take line",
      pair: "plaster line",
      line: [
        [-4, 0],
        [4, 0],
      ],
    });
    expect(pointedPair(taken, "plaster line")).not.toBeNull();
    expect(taken.asked).toBe("centre line downstage");
    expect(run(taken, { do: "take back" }).places).toEqual({});
  });

  it("turns the centre line round, and what is asked for stays; without one it does nothing", () => {
    const start = startPointing(false);
    expect(run(start, { do: "turn round" })).toEqual(start);
    const turned = run(start, ...at(0, 0), ...at(0, 9), { do: "turn round" });
    expect(pointedPair(turned, "centre line")).toEqual([
      [0, 9],
      [0, 0],
    ]);
    expect(turned.asked).toBe("plaster line");
  });

  it("asks for the size when it turns out not to be known, and not any more when it is", () => {
    const all = run(startPointing(false), ...at(0, 0), ...at(0, 9), ...at(-5, 3), ...at(5, 3));
    const asks = run(all, { do: "ask size", asksSize: true });
    expect(asks.asked).toBe("size from");
    expect(run(asks, { do: "ask size", asksSize: false }).asked).toBeNull();
  });

  it("goes back to the beginning by taking back, whatever was done", () => {
    const place = fc.tuple(
      fc.integer({ min: -9, max: 9 }),
      fc.integer({ min: -9, max: 9 }),
    ) as fc.Arbitrary<BroughtPoint>;
    const name = fc.constantFrom(...PLACES);
    const event: fc.Arbitrary<PointingEvent> = fc.oneof(
      place.map((to) => ({ do: "hold", held: { at: to, by: null } }) as const),
      fc.constant({ do: "set" } as const),
      name.map((each) => ({ do: "ask", place: each }) as const),
      fc.tuple(name, place).map(([each, to]) => ({ do: "move", place: each, to }) as const),
      fc.boolean().map((asksSize) => ({ do: "ask size", asksSize }) as const),
      fc.constantFrom({ do: "take back" } as const, { do: "turn round" } as const),
    );
    fc.assert(
      fc.property(fc.array(event, { maxLength: 40 }), (events) => {
        let now = run(startPointing(true), ...events);
        expect(now.asked === null || placesAsked(now).includes(now.asked)).toBe(true);
        for (let i = now.before.length; i > 0; i--) now = point(now, { do: "take back" });
        expect(now.places).toEqual({});
      }),
      { seed: 20, numRuns: 300 },
    );
  });
});
