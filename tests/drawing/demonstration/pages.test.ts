import { describe, expect, it } from "vitest";
import { demonstrationSteps } from "@/lib/drawing/demonstration/demonstration-steps";
import { handoutPages, STEPS_ON_A_PAGE } from "@/lib/drawing/demonstration/handout-pages";
import { stepPages } from "@/lib/drawing/demonstration/step-pages";
import { PAPER_RATIO, type PaperPage } from "@/lib/drawing/paper/paper-page";
import { readTideOffice } from "../../fixtures/tide-office";

const exercise = readTideOffice(["/task", { kind: "plan-to-picture", marks: ["A.foot", "A.top", "B.foot"] }]);
const steps = demonstrationSteps(exercise);

const texts = ({ layers }: PaperPage) =>
  layers.flatMap(({ list, scaleRatio }) =>
    list.flatMap((item) => (item.kind === "lettering" && scaleRatio === PAPER_RATIO ? [item.text] : [])),
  );

describe("a demonstration on paper", () => {
  it.each([
    // ANSI/ASME Y14.1 size A and ISO 216 A4, laid across.
    { paper: "letter", wide: 279.4, high: 215.9 },
    { paper: "a4", wide: 297, high: 210 },
  ] as const)("has a page of $paper for each step, numbered, with its sentence", ({ paper, wide, high }) => {
    const pages = stepPages(exercise, paper);
    expect(pages).toHaveLength(steps.length);
    for (const [i, page] of pages.entries()) {
      expect([page.widthMm, page.heightMm]).toEqual([wide, high]);
      const words = texts(page).join(" ");
      expect(words).toContain(`${i + 1} of ${steps.length}`);
      expect(words).toContain(steps[i]?.sentence);
    }
  });

  it("puts eight steps on a page of the handout, each with its sentence, and nothing past the paper's edge", () => {
    const pages = handoutPages(exercise, "letter");
    expect(pages).toHaveLength(Math.ceil(steps.length / STEPS_ON_A_PAGE));
    const words = pages.flatMap(texts).join(" ");
    for (const { sentence, number, title } of steps) {
      expect(words).toContain(sentence);
      expect(words).toContain(`${number}  ${title}`);
    }
    for (const { layers, widthMm, heightMm } of pages)
      for (const { window, scaleRatio, at } of layers) {
        if (!window) continue;
        const mm = 1000 / scaleRatio;
        expect(at[0] + window[0] * mm).toBeGreaterThanOrEqual(8);
        expect(at[0] + window[2] * mm).toBeLessThanOrEqual(widthMm - 8);
        expect(at[1] - window[3] * mm).toBeGreaterThanOrEqual(8);
        expect(at[1] - window[1] * mm).toBeLessThanOrEqual(heightMm - 8);
      }
  });

  it("says on every page that it is a teaching sketch", () => {
    for (const page of [...stepPages(exercise, "a4"), ...handoutPages(exercise, "a4")])
      expect(texts(page).join(" ")).toContain("not a construction drawing");
  });
});
