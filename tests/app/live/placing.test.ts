import { describe, expect, it } from "vitest";
import type { Reply } from "@/app/_live/send-json";
import { createPlacing, type Place } from "@/app/live/[code]/placing";

const OK: Reply = { ok: true };
const LOST: Reply = { ok: false, reason: "unreached", sentence: "The server cannot be reached just now." };

/** A phone whose sendings the test answers one by one. */
function phone(round = 1, kept: Place | null = null, unsent: Place | null = null) {
  const sent: { readonly round: number; readonly at: Place; readonly answer: (reply: Reply) => void }[] = [];
  const waits: (() => void)[] = [];
  const remembered = new Map<number, Place | null>();
  let rejoined = 0;
  const store = createPlacing({
    send: (of, at) => new Promise((answer) => sent.push({ round: of, at, answer })),
    rejoin: async () => {
      rejoined += 1;
    },
    wait: () => new Promise((resolve) => waits.push(() => resolve())),
    remember: (of, at) => remembered.set(of, at),
  });
  store.getState().enter(round, kept, unsent);
  const now = () => store.getState();
  const drag = (at: Place) => {
    now().begin();
    now().move(at);
    now().rest();
  };
  const settle = () => new Promise((resolve) => setTimeout(resolve, 0));
  return { store, sent, waits, remembered, now, drag, settle, rejoined: () => rejoined };
}

describe("a phone's mark", () => {
  it("is in when the server says so, and not before", async () => {
    const { sent, now, drag, settle, remembered } = phone();
    expect(now().status).toBe("empty");
    drag([1, 2]);
    expect(now().status).toBe("sending");
    expect(remembered.get(1)).toEqual([1, 2]);
    sent[0]?.answer(OK);
    await settle();
    expect(now()).toMatchObject({ status: "in", kept: [1, 2] });
    expect(remembered.get(1)).toBeNull();
  });

  it("is sent one at a time, and of marks set down meanwhile only the newest", async () => {
    const { sent, now, drag, settle } = phone();
    drag([1, 1]);
    drag([2, 2]);
    drag([3, 3]);
    expect(sent.map(({ at }) => at)).toEqual([[1, 1]]);
    sent[0]?.answer(OK);
    await settle();
    expect(sent.map(({ at }) => at)).toEqual([
      [1, 1],
      [3, 3],
    ]);
    sent[1]?.answer(OK);
    await settle();
    expect(now()).toMatchObject({ status: "in", kept: [3, 3] });
  });

  it("is sent again until it is acknowledged, and says that it waits", async () => {
    const { sent, waits, now, drag, settle } = phone();
    drag([1, 1]);
    sent[0]?.answer(LOST);
    await settle();
    expect(now()).toMatchObject({ status: "waiting", kept: null, sentence: LOST.sentence });
    drag([2, 2]);
    waits[0]?.();
    await settle();
    expect(sent[1]?.at).toEqual([2, 2]);
    sent[1]?.answer(OK);
    await settle();
    expect(now()).toMatchObject({ status: "in", kept: [2, 2] });
  });

  it("asks to be known again where the server does not know the phone any more", async () => {
    const { sent, waits, drag, settle, rejoined } = phone();
    drag([1, 1]);
    sent[0]?.answer({ ok: false, reason: "no-place", sentence: "Unknown." });
    await settle();
    expect(rejoined()).toBe(1);
    // Even so it waits, lest a server that knows nobody be asked without end.
    expect(sent).toHaveLength(1);
    waits[0]?.();
    await settle();
    expect(sent).toHaveLength(2);
  });

  it("goes back to what is kept when it comes too late", async () => {
    const { sent, now, drag, settle } = phone(1, [5, 5]);
    drag([1, 1]);
    sent[0]?.answer({ ok: false, reason: "not-open", sentence: "Marks are not taken just now." });
    await settle();
    expect(now()).toMatchObject({ at: [5, 5], kept: [5, 5], status: "refused" });
    expect(sent).toHaveLength(1);
  });

  it("that was not sent before a reload is sent after it", async () => {
    const { sent, now, settle } = phone(2, [5, 5], [6, 6]);
    expect(now().at).toEqual([6, 6]);
    expect(sent[0]).toMatchObject({ round: 2, at: [6, 6] });
    sent[0]?.answer(OK);
    await settle();
    expect(now()).toMatchObject({ status: "in", kept: [6, 6] });
  });

  it("of a round that is over does not come into the next", async () => {
    const { sent, now, drag, settle } = phone();
    drag([1, 1]);
    now().enter(2, null, null);
    sent[0]?.answer(OK);
    await settle();
    expect(now()).toMatchObject({ round: 2, at: null, kept: null, status: "empty" });
    expect(sent).toHaveLength(1);
  });

  it("goes back where it stood when the gesture was something else", async () => {
    const { now, drag, sent, settle } = phone();
    drag([1, 1]);
    sent[0]?.answer(OK);
    await settle();
    now().begin();
    now().move([9, 9]);
    now().undo();
    expect(now().at).toEqual([1, 1]);
    expect(sent).toHaveLength(1);
  });
});
