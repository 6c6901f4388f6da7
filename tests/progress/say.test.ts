import { describe, expect, it } from "vitest";
import type { Part } from "@/lib/progress/error-parts";
import type { MarkRecord } from "@/lib/progress/record";
import { DAY_MS, sayAgo, sayCount, sayMany } from "@/lib/progress/say-number";
import { sayShaky } from "@/lib/progress/say-shaky";
import { type SkillState, skillStates } from "@/lib/progress/skill-states";
import { aMark, aRecord, day, evidenceFor, marksFor } from "./records";

describe("sayCount, sayMany", () => {
  it.each([
    [0, "no", "no marks"],
    [1, "one", "one mark"],
    [12, "twelve", "twelve marks"],
    [13, "13", "13 marks"],
  ])("%i", (count, word, many) => {
    expect([sayCount(count), sayMany(count, "mark")]).toEqual([word, many]);
  });
});

describe("sayAgo", () => {
  it.each([
    [-3, "today"],
    [0.9, "today"],
    [1, "one day ago"],
    [9.5, "nine days ago"],
    [14, "two weeks ago"],
    [60, "eight weeks ago"],
    [61, "two months ago"],
    [400, "13 months ago"],
  ])("%f days", (days, words) => {
    expect(sayAgo(days * DAY_MS)).toBe(words);
  });
});

describe("sayShaky", () => {
  const say = (id: string, ...attempts: readonly (readonly MarkRecord[])[]) => {
    const states = skillStates(attempts.map((marks, i) => aRecord("points", day(i), marks)));
    return sayShaky(states.find(({ skill }) => skill.id === id) as SkillState);
  };

  it.each([
    ["++uu+", "Depth by eye is shaky: two of your last five marks were too far upstage."],
    ["ddddd++d+++", "Depth by eye is shaky: one of your last five marks was too far downstage."],
    ["udu", "Depth by eye is shaky: your last three marks were off, two too far upstage and one too far downstage."],
    ["u", "Depth by eye is shaky: your last mark was too far upstage."],
    ["uuuuuuu", "Depth by eye is shaky: your last five marks were too far upstage."],
    ["+", "Depth by eye has only been tried once."],
    ["++", "Depth by eye has only been tried twice."],
    ["d++++++", "Depth by eye is nearly there: your last five marks were right."],
    ["+oo", "Depth by eye leans on hints: two of your last three marks were made after one."],
  ])("of %s says: %s", (signs, words) => {
    expect(say("depth-by-eye", marksFor("depth-by-eye", signs))).toBe(words);
  });

  it("says that a skill has slipped", () => {
    expect(say("depth-by-eye", marksFor("depth-by-eye", "+++"), marksFor("depth-by-eye", "d"))).toBe(
      "Depth by eye has slipped: one of your last four marks was too far downstage.",
    );
  });

  it.each([
    ["height", "height", { heightMm: 4 }, "Heights are shaky: your last mark was too high."],
    ["height", "height", { heightMm: -4 }, "Heights are shaky: your last mark was too low."],
    ["ray-to-cvp", "across", { acrossMm: 4 }, "Rays to the CVP are shaky: your last mark was too far right on paper."],
    ["ray-to-cvp", "across", { acrossMm: -4 }, "Rays to the CVP are shaky: your last mark was too far left on paper."],
    ["raking-wall", "wall", {}, "Raking walls are shaky: your last mark was off the wall's line."],
    ["furniture", "place", {}, "Furniture is shaky: your last mark was out of place."],
  ] as readonly (readonly [string, Part, Partial<MarkRecord>, string])[])(
    "of %s wrong in its %s",
    (skill, part, error, words) => {
      expect(say(skill, [aMark({ ...error, within: false, evidence: [evidenceFor(skill, false, part)] })])).toBe(words);
    },
  );
});
