import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import { createPost } from "@/app/_parts/hand-ins/post";
import { forgetWaiting, keepWaiting, keptReceipt, keptWaiting, newWaiting } from "@/app/_parts/hand-ins/waiting";
import type { MarkSet } from "@/lib/exercise/marks";

const MARKS: MarkSet = { format: "plasterline.marks/1", exercise: "alcove", marks: [{ point: "A.foot", at: [1, 2] }] };
const work = (itemId = "item", now = new Date("2026-11-25T09:00:00.000Z")) =>
  newWaiting({ itemId, memberId: "wim", title: "An alcove", marks: MARKS }, now);
const receipt = (id: string) => ({ id, receivedAt: "2026-11-25T09:00:01.000Z", late: false, attemptsLeft: null });

type Reply = { readonly status?: number; readonly body: unknown } | "no-network";
const sent: string[] = [];
let answer: (id: string) => Reply;

beforeEach(() => {
  window.localStorage.clear();
  sent.length = 0;
  answer = (id) => ({ body: { ok: true, receipt: receipt(id) } });
  vi.stubGlobal("fetch", async (_: string, { body }: { readonly body: string }) => {
    const { id } = JSON.parse(body) as { readonly id: string };
    sent.push(id);
    const reply = answer(id);
    if (reply === "no-network") throw new TypeError("no network");
    return { status: reply.status ?? 200, json: async () => reply.body };
  });
});
afterEach(() => vi.unstubAllGlobals());

const settled = () => new Promise((resolve) => setTimeout(resolve, 20));

describe("homework on its way to the server", () => {
  it("is kept before it is sent, and forgotten only when the server has it", async () => {
    const post = createPost();
    const one = work();
    let kept = -1;
    answer = (id) => {
      kept = keptWaiting(window.localStorage).length;
      return { body: { ok: true, receipt: receipt(id) } };
    };
    post.getState().handIn(one);
    await settled();
    expect(kept).toBe(1);
    expect(keptWaiting(window.localStorage)).toEqual([]);
    expect(keptReceipt(window.localStorage, "wim", "item")).toEqual(receipt(one.id));
    expect(post.getState().receiptOf("wim", "item")).toEqual(receipt(one.id));
  });

  it("waits while there is no network, and goes when it is back", async () => {
    const post = createPost();
    const close = post.getState().open();
    answer = () => "no-network";
    const one = work();
    post.getState().handIn(one);
    await settled();
    expect(post.getState().waiting).toEqual([one]);
    answer = (id) => ({ body: { ok: true, receipt: receipt(id) } });
    window.dispatchEvent(new Event("online"));
    await settled();
    expect(post.getState().waiting).toEqual([]);
    expect(new Set(sent)).toEqual(new Set([one.id]));
    close();
    keepWaiting(window.localStorage, work());
    window.dispatchEvent(new Event("online"));
    await settled();
    expect(new Set(sent).size).toBe(1);
  });

  it("is sent by the next page that opens", async () => {
    const [one, two] = [work("a"), work("b", new Date("2026-11-25T09:05:00.000Z"))];
    for (const each of [two, one]) keepWaiting(window.localStorage, each);
    const close = createPost().getState().open();
    await settled();
    expect(sent).toEqual([one.id, two.id]);
    expect(keptWaiting(window.localStorage)).toEqual([]);
    close();
  });

  it.each([
    [403, "forbidden"],
    [429, "too-many"],
    [503, "busy"],
    [507, "full"],
    [500, "mistake"],
    [400, "unread"],
  ])("waits on after status %i, %s, and tells what the server said", async (status, reason) => {
    answer = () => ({ status, body: { ok: false, reason, sentence: "Not now." } });
    const post = createPost();
    post.getState().handIn(work());
    await settled();
    expect(post.getState()).toMatchObject({ said: "Not now.", waiting: [{ refused: null }] });
  });

  it.each(["gone", "not-yours", "bad-marks", "too-long", "no-attempt-left"])(
    "that the server will never take (%s) is kept for its student, and sent no more",
    async (reason) => {
      answer = () => ({ status: 422, body: { ok: false, reason, sentence: "Never." } });
      const post = createPost();
      const one = work();
      post.getState().handIn(one);
      await settled();
      await post.getState().send();
      expect(sent).toEqual([one.id]);
      expect(keptWaiting(window.localStorage)).toMatchObject([{ refused: "Never.", marks: MARKS }]);
      post.getState().putAway(one.id);
      expect(keptWaiting(window.localStorage)).toEqual([]);
    },
  );

  it("does not stop at one that the server refuses for now: the others go", async () => {
    const [one, two] = [work("a"), work("b", new Date("2026-11-25T09:05:00.000Z"))];
    answer = (id) =>
      id === one.id
        ? { status: 403, body: { ok: false, reason: "forbidden", sentence: "Not yours." } }
        : { body: { ok: true, receipt: receipt(id) } };
    for (const each of [one, two]) keepWaiting(window.localStorage, each);
    const close = createPost().getState().open();
    await settled();
    expect(keptWaiting(window.localStorage)).toEqual([one]);
    close();
  });

  it("of two windows both arrives, whichever sends", async () => {
    answer = () => "no-network";
    const [left, right] = [createPost(), createPost()];
    const [one, two] = [work(), work("item", new Date("2026-11-25T09:05:00.000Z"))];
    left.getState().handIn(one);
    right.getState().handIn(two);
    await settled();
    answer = (id) => ({ body: { ok: true, receipt: receipt(id) } });
    const close = left.getState().open();
    await settled();
    expect(new Set(sent)).toEqual(new Set([one.id, two.id]));
    expect(keptWaiting(window.localStorage)).toEqual([]);
    close();
  });

  it("is not lost with the storage full: it stays as long as the page", async () => {
    const full = vi.spyOn(Storage.prototype, "setItem").mockImplementation(() => {
      throw new DOMException("full", "QuotaExceededError");
    });
    answer = () => "no-network";
    const post = createPost();
    const one = work();
    post.getState().handIn(one);
    await settled();
    expect(post.getState()).toMatchObject({ waiting: [one], unkept: [one] });
    answer = (id) => ({ body: { ok: true, receipt: receipt(id) } });
    await post.getState().send();
    expect(post.getState()).toMatchObject({ waiting: [], unkept: [] });
    expect(post.getState().receiptOf("wim", "item")).toEqual(receipt(one.id));
    full.mockRestore();
  });

  it("passes over what is no hand-in", () => {
    window.localStorage.setItem("plasterline.hand-in.x", "{");
    window.localStorage.setItem("plasterline.hand-in.y", '{"format":"plasterline.hand-in/1"}');
    expect(keptWaiting(window.localStorage)).toEqual([]);
    forgetWaiting(window.localStorage, "x");
    expect(window.localStorage.getItem("plasterline.hand-in.x")).toBeNull();
  });
});
