import { describe, expect, it } from "vitest";
import { FOOT_M } from "@/lib/measure/length";
import { parseScale, toPaperMm } from "@/lib/measure/scale";
import { project } from "@/lib/perspective/project";
import { expectedOf, publishedCase, sourceOf } from "./published-cases";
import { expectWithin } from "./within";

const MM_PER_INCH = 25.4;

/** Paper inches of a stage length in feet, all the way through the engine: feet, metres, scale, millimetres. */
function paperInches(feet: number, scale: string): number {
  const ratio = parseScale(scale);
  if (ratio === null) throw new Error(`${scale} is not read as a scale.`);
  return toPaperMm(feet * FOOT_M, ratio) / MM_PER_INCH;
}

const handout = publishedCase("northern-06-scale");
describe(`${handout.id}: ${sourceOf(handout)}`, () => {
  it.each([
    { name: "36ft", feet: 36 },
    { name: "16ft", feet: 16 },
    { name: "back wall line rise 4ft", feet: 4 },
  ])("$name in half-inch scale", ({ name, feet }) => {
    const { value, tolerance } = expectedOf(handout, name);
    expectWithin(paperInches(feet, "1/2in=1ft"), value, tolerance);
  });
});

const article = publishedCase("tdt1978-02-scale-readings");
describe(`${article.id}: ${sourceOf(article)}`, () => {
  it.each([
    { name: "view distance, 60 scale (in)", feet: 40 },
    { name: "scale, 60 scale (in per ft)", feet: 1 },
    { name: "opening height 60 scale (in)", feet: 20 },
    { name: "opening width 60 scale (in)", feet: 32 },
  ])("$name", ({ name, feet }) => {
    const { value, tolerance } = expectedOf(article, name);
    expectWithin(paperInches(feet, "5/12in=1ft"), value, tolerance);
  });

  it.each([
    { name: "10 scale (1/4in=1ft): reading in", scale: "1/4in=1ft" },
    { name: "50 scale: 38.55 reads as inches", scale: "1/2in=1ft" },
  ])("the arch's upstage edge, drawn: $name", ({ name, scale }) => {
    const edge = project({ distance: 40, eyeHeight: 4, offset: 0 }, [16, 1.5, 0]);
    if (!edge.seen) throw new Error("The edge is not seen.");
    const { value, tolerance } = expectedOf(article, name);
    expectWithin(paperInches(edge.at[0], scale), value, tolerance);
  });
});

describe("usual metric scales (common practice, no source)", () => {
  it.each([
    { scale: "1:25", mm: 40 },
    { scale: "1:50", mm: 20 },
    { scale: "1:100", mm: 10 },
  ])("a metre in $scale is $mm mm", ({ scale, mm }) => {
    expect(toPaperMm(1, parseScale(scale) ?? Number.NaN)).toBe(mm);
  });
});
