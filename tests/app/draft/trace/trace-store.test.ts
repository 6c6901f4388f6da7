import { describe, expect, it } from "vitest";
import { LEAST_STRENGTH, readTrace, type Trace, USUAL_STRENGTH } from "@/app/draft/trace/trace";
import { createTraceDesk } from "@/app/draft/trace/trace-store";

const TRACE: Trace = {
  picture: new Blob(["picture"]),
  lines: new Blob(["lines"]),
  width: 1600,
  height: 1200,
  toPlan: [0.01, 0, 0, -0.01, -8, 6],
  places: { "size from": [1, 2] },
  written: "34'",
  strength: USUAL_STRENGTH,
  shown: true,
};

describe("what lies under a plan", () => {
  it("is laid, hidden, made fainter, taken away and put back as it was", () => {
    const desk = createTraceDesk();
    desk.getState().begin("new");
    expect(desk.getState().laying).toBe("new");
    desk.getState().lay(TRACE);
    expect(desk.getState()).toMatchObject({ trace: TRACE, laying: null, before: { trace: null } });
    desk.getState().show(false);
    desk.getState().setStrength(70);
    const fainter = { ...TRACE, shown: false, strength: 70 };
    expect(desk.getState().trace).toEqual(fainter);
    desk.getState().takeAway();
    expect(desk.getState().trace).toBeNull();
    desk.getState().putBack();
    expect(desk.getState().trace).toEqual(fainter);
    // And once more, the other way round.
    desk.getState().putBack();
    expect(desk.getState().trace).toBeNull();
  });

  it("can be had back after another was laid over it, until another plan is opened", () => {
    const desk = createTraceDesk();
    desk.getState().open(TRACE);
    expect(desk.getState().kept).toBe(true);
    desk.getState().lay({ ...TRACE, written: "12'" });
    desk.getState().putBack();
    expect(desk.getState().trace).toEqual(TRACE);
    desk.getState().open(null);
    expect(desk.getState()).toMatchObject({ trace: null, before: null });
  });

  it("never fades so far that it is lost", () => {
    const desk = createTraceDesk();
    desk.getState().lay(TRACE);
    desk.getState().setStrength(0);
    expect(desk.getState().trace?.strength).toBe(LEAST_STRENGTH);
    desk.getState().setStrength(1000);
    expect(desk.getState().trace?.strength).toBe(100);
  });

  it("is as it was when it is left without being laid", () => {
    const desk = createTraceDesk();
    desk.getState().lay(TRACE);
    desk.getState().begin("again");
    desk.getState().leave();
    expect(desk.getState()).toMatchObject({ trace: TRACE, laying: null });
  });
});

describe("a photograph that was kept", () => {
  it("is read again as it is", () => {
    expect(readTrace(TRACE)).toEqual(TRACE);
  });

  it.each([
    { name: "nothing", kept: null },
    { name: "a text", kept: "a photograph" },
    { name: "no picture", kept: { ...TRACE, picture: "blob" } },
    { name: "no lines", kept: { ...TRACE, lines: undefined } },
    { name: "no size", kept: { ...TRACE, width: 0 } },
    { name: "a map that is none", kept: { ...TRACE, toPlan: [1, 0, 0, Number.NaN, 0, 0] } },
    { name: "too short a map", kept: { ...TRACE, toPlan: [1, 0, 0] } },
    { name: "places that are none", kept: { ...TRACE, places: { "size from": ["1", 2] } } },
    { name: "no strength", kept: { ...TRACE, strength: "strong" } },
  ])("is no photograph: $name", ({ kept }) => {
    expect(readTrace(kept)).toBeNull();
  });
});
