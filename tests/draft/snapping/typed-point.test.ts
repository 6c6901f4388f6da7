import { describe, expect, it } from "vitest";
import { typedLength, typedPoint } from "@/lib/draft/snapping/typed-point";

const FOOT = 0.3048;
const from = { at: [1, 2], heading: null } as const;

describe("typedPoint", () => {
  it.each([
    { along: "10'", angle: "0", expected: [1 + 10 * FOOT, 2] },
    { along: "10'-6\"", angle: "90°", expected: [1, 2 + 10.5 * FOOT] },
    { along: "10", angle: "180", expected: [1 - 10 * FOOT, 2] },
    { along: "5 m", angle: "-90", expected: [1, -3] },
    // 3-4-5: the angle whose tangent is 4/3.
    { along: "5 m", angle: "53.13010235415598", expected: [4, 6] },
    { along: "5 m", angle: "413.13010235415598", expected: [4, 6] },
  ])("goes $along at $angle", ({ along, angle, expected }) => {
    const typed = typedPoint({ way: "along", along, angle }, "ft-in", from);
    expect(typed.ok && typed.at[0]).toBeCloseTo(expected[0] as number, 9);
    expect(typed.ok && typed.at[1]).toBeCloseTo(expected[1] as number, 9);
  });

  it("goes exactly along the axes at right angles", () => {
    const typed = typedPoint({ way: "along", along: "3 m", angle: "90" }, "m", { at: [0.1, 0], heading: null });
    expect(typed).toEqual({ ok: true, at: [0.1, 3] });
  });

  it("takes the pointer's heading where no angle is typed", () => {
    const typed = typedPoint({ way: "along", along: "2 m", angle: "" }, "m", { at: [0, 0], heading: Math.PI });
    expect(typed).toEqual({ ok: true, at: [-2, 0] });
  });

  it("reads a place from the centre line and the plaster line", () => {
    const typed = typedPoint({ way: "place", across: "-12'-6\"", upstage: "3" }, "ft-in", null);
    expect(typed.ok && typed.at[0]).toBeCloseTo(-12.5 * FOOT, 12);
    expect(typed.ok && typed.at[1]).toBeCloseTo(3 * FOOT, 12);
  });

  it.each([
    { typed: { way: "along", along: "", angle: "0" }, field: "along", say: /Write a length/ },
    { typed: { way: "along", along: "ten", angle: "0" }, field: "along", say: /"ten" is not a length/ },
    { typed: { way: "along", along: "0", angle: "0" }, field: "along", say: /above 0/ },
    { typed: { way: "along", along: "-2'", angle: "0" }, field: "along", say: /above 0/ },
    { typed: { way: "along", along: "2'", angle: "" }, field: "angle", say: /Write degrees/ },
    { typed: { way: "along", along: "2'", angle: "north" }, field: "angle", say: /"north" is not an angle/ },
    { typed: { way: "place", across: "2' 14\"", upstage: "0" }, field: "across", say: /12 inches or more/ },
    { typed: { way: "place", across: "0", upstage: "4000" }, field: "upstage", say: /more than 1 km/ },
  ] as const)("says what is wrong with $typed", ({ typed, field, say }) => {
    const result = typedPoint(typed, "ft-in", from);
    expect(result).toMatchObject({ ok: false, field });
    expect(!result.ok && result.say).toMatch(say);
  });

  it("needs a corner to go on from", () => {
    expect(typedPoint({ way: "along", along: "2'", angle: "0" }, "ft-in", null)).toMatchObject({
      ok: false,
      field: "along",
    });
  });

  it("asks back when a bare metric number was meant in millimetres", () => {
    const typed = typedLength("3600", "m");
    expect(!typed.ok && typed.say).toContain("3600 mm, or 3.6 m");
    expect(typedLength("3.6", "m")).toEqual({ ok: true, metres: 3.6 });
  });
});
