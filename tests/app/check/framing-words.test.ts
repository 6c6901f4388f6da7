import { describe, expect, it } from "vitest";
import type { FrameAnswer } from "@/app/_photo/worker/messages";
import { sayFrame } from "@/app/check/choose/framing-words";

function frame(seen: number, change: Partial<FrameAnswer> = {}): FrameAnswer {
  const at = Array.from({ length: seen }, (_, id) => [id, id / 10, id / 20] as const);
  return { kind: "frame", seen, at, dark: false, tilted: false, ...change };
}
const shifted = frame(8, { at: frame(8).at.map(([id, x, y]) => [id, x + 0.05, y] as const) });

describe("the words while framing", () => {
  it.each([
    ["no mark", frame(0), null, /No mark/],
    ["no mark in the dark", frame(0, { dark: true }), null, /dark/],
    ["five of eight", frame(5), frame(5), /^5 of 8 marks seen: bring the whole sheet into view\.$/],
    ["all, in the dark", frame(8, { dark: true }), frame(8), /more light/],
    ["all, aslant", frame(8, { tilted: true }), frame(8), /straight down/],
    ["all, for the first time", frame(8), null, /hold still/],
    ["all, moving", frame(8), shifted, /hold still/],
  ])("say what is wanted and press nothing: %s", (_, now, before, words) => {
    const said = sayFrame(now, before);
    expect(said.words).toMatch(words);
    expect(said.ready).toBe(false);
  });

  it.each([7, 8])("press the shutter when %i marks rest", (seen) => {
    expect(sayFrame(frame(seen), frame(seen)).ready).toBe(true);
  });
});
