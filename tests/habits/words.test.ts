import { describe, expect, it } from "vitest";
import { HABITS } from "@/lib/habits/all-habits";
import type { Asked } from "@/lib/habits/asked";
import { sayHabits } from "@/lib/habits/say-habits";
import { askedFor, habitOf, house } from "./house";

function floorAsked(y: number, kind = "plan-to-picture", rake = 0): Asked {
  const exercise = house({ stage: { rake }, plan: { corners: { Q: [1, y] } }, task: { kind, marks: ["Q.foot"] } });
  return askedFor(exercise, "Q.foot");
}

describe("what a habit says", () => {
  it("is an idea and a fact, two sentences or more, for every habit", () => {
    for (const habit of HABITS) {
      const words = habit.say(floorAsked(2), "amounts" in habit ? 0.8 : null);
      expect(words.split(/[.:?] /).length).toBeGreaterThanOrEqual(2);
      expect(words).not.toMatch(/NaN|undefined|Infinity|null/);
      expect(words.endsWith(".")).toBe(true);
    }
  });

  it.each<[id: string, asked: Asked, amount: number | null, words: readonly string[]]>([
    // the downstage half ends at Z = 2 x 4/12 = 2/3 of the whole, which is 1
    ["plan-depth", floorAsked(2), null, ["You used up depth as the plan does", "67 % of its height"]],
    ["plan-depth", floorAsked(2, "picture-to-plan"), null, ["You read depth off in proportion", "67 % of its height"]],
    ["too-shallow", floorAsked(2), 0.8, ["about 80 % of its depth"]],
    ["too-deep", floorAsked(2), 1.25, ["about 125 % of its depth"]],
    ["full-width", floorAsked(2), null, ["You kept the plan's offset, 1000 mm", "80 %"]],
    [
      "full-width",
      floorAsked(2, "picture-to-plan"),
      null,
      ["You took the drawn offset, 800 mm, for the true one", "80 %"],
    ],
    ["from-back-wall", floorAsked(2), null, ["2000 mm upstage of it"]],
    ["from-back-wall", floorAsked(0), null, ["this place lies on it"]],
    ["from-back-wall", floorAsked(-1), null, ["1000 mm before it"]],
    ["from-the-jamb", floorAsked(2), null, ["Offsets count from the centre line: 1000 mm"]],
    ["wrong-side", floorAsked(2), null, ["stage left, which is the viewer's right"]],
    ["flat-floor", floorAsked(2, "plan-to-picture", 0.05), null, ["You drew the floor level"]],
    ["flat-floor", floorAsked(2, "picture-to-plan", 0.05), null, ["You read it as if the floor were level"]],
    ["behind-instead", floorAsked(-1), null, ["You drew it upstage of the plaster line", "on the apron"]],
  ])("%s", (id, asked, amount, words) => {
    const said = habitOf(id).say(asked, amount);
    for (const part of words) expect(said).toContain(part);
  });

  it("keeps the height of a top with its share, less upstage and more before the plaster line", () => {
    const top = (y: number) => {
      const plan = { columns: [{ id: "K1", at: [1, y], diameter: 0.3, height: 3 }] };
      return askedFor(house({ plan, task: { given: ["K1.centre.foot"], marks: ["K1.centre.top"] } }), "K1.centre.top");
    };
    expect(habitOf("full-height").say(top(2), null)).toContain(
      "3000 mm, over its foot. Heights shorten with depth as widths do: here to 80 %",
    );
    // s = 8/7
    expect(habitOf("full-height").say(top(-1), null)).toContain(
      "Heights grow before the plaster line as widths do: here to 114 %",
    );
  });
});

describe("several ideas of one mark", () => {
  const place = [0, 0] as const;
  const idea = (id: string, question = false) => ({ id, place, question, amount: null });

  it("are all said, the second as coming to the same", () => {
    const words = sayHabits([idea("wrong-side"), idea("from-the-jamb")], floorAsked(2));
    expect(words).toMatch(/^You put it on the other side .* Or, which comes to the same place here: you measured /);
  });

  it("are asked where they are only likely", () => {
    expect(sayHabits([idea("wrong-side", true)], floorAsked(2))).toMatch(/^Could it be this\? You put it/);
  });

  it("are nothing where there are none", () => {
    expect(sayHabits([], floorAsked(2))).toBe("");
  });
});
