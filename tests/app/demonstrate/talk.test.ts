import { describe, expect, it } from "vitest";
import { type Message, openTalk, readMessage, type TalkWindow } from "@/app/demonstrate/[id]/talk";

const SHOWING = { at: 3, blank: false, trying: "no", guesses: 0, startedAt: 1_700_000_000_000 } as const;

/** Windows of one browser that has no channels: what one keeps, the others are told of, and only when it changes. */
function browserWithoutChannels() {
  const kept = new Map<string, string>();
  const windows: EventTarget[] = [];
  return (): TalkWindow => {
    const own = new EventTarget();
    windows.push(own);
    const setItem = (key: string, newValue: string) => {
      if (kept.get(key) === newValue) return;
      kept.set(key, newValue);
      for (const other of windows)
        if (other !== own) other.dispatchEvent(Object.assign(new Event("storage"), { key, newValue }));
    };
    return {
      addEventListener: own.addEventListener.bind(own),
      removeEventListener: own.removeEventListener.bind(own),
      localStorage: { setItem } as unknown as Storage,
    };
  };
}

/** The same with channels, as Node has them. */
function browserWithChannels() {
  const plain = browserWithoutChannels();
  return (): TalkWindow => ({ ...plain(), BroadcastChannel });
}

describe.each([
  { by: "a channel", browser: browserWithChannels },
  { by: "what the browser keeps", browser: browserWithoutChannels },
])("two windows talking by $by", ({ browser }) => {
  it("hear each other, both ways, the same word twice, and no other exercise's", async () => {
    const open = browser();
    const heard: [string, Message][] = [];
    const ear = (who: string) => (message: Message) => heard.push([who, message]);
    const shown = openTalk("a", ear("demonstration"), open());
    const notes = openTalk("a", ear("notes"), open());
    const other = openTalk("b", ear("other"), open());
    notes.send({ kind: "press", press: "on" });
    notes.send({ kind: "press", press: "on" });
    shown.send({ kind: "showing", showing: SHOWING });
    for (let i = 0; i < 50 && heard.length < 3; i++) await new Promise((done) => setTimeout(done, 10));
    expect(heard.filter(([who]) => who === "demonstration")).toEqual([
      ["demonstration", { kind: "press", press: "on" }],
      ["demonstration", { kind: "press", press: "on" }],
    ]);
    expect(heard.filter(([who]) => who === "notes")).toEqual([["notes", { kind: "showing", showing: SHOWING }]]);
    expect(heard.filter(([who]) => who === "other")).toEqual([]);
    for (const talk of [shown, notes, other]) talk.close();
  });
});

describe("words from outside", () => {
  it.each([
    [{ kind: "ask" }, true],
    [{ kind: "bye", role: "notes" }, true],
    [{ kind: "go", at: 4 }, true],
    [{ kind: "showing", showing: SHOWING }, true],
    [{ kind: "press", press: "blank" }, true],
    [{ kind: "press", press: "constructor" }, false],
    [{ kind: "go", at: -1 }, false],
    [{ kind: "go", at: 1.5 }, false],
    [{ kind: "bye", role: "nobody" }, false],
    [{ kind: "showing", showing: { ...SHOWING, startedAt: "today" } }, false],
    [{ kind: "showing", showing: null }, false],
    ["ask", false],
    [null, false],
  ])("%j are taken: %s", (data, taken) => {
    expect(readMessage(data) !== null).toBe(taken);
  });
});
