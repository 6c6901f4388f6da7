import { beforeEach, describe, expect, it, vi } from "vitest";
import type { CheckedDrawing, PointState } from "@/app/_photo/checked-drawing";
import { inOrder, type PilePage, pageDoubts, type ReadPage, rankOf } from "@/app/class/[classId]/pile/page-state";
import { createPile, forget, type PileStore, surePages } from "@/app/class/[classId]/pile/pile-store";
import { sendPage } from "@/app/class/[classId]/pile/send-page";
import type { SheetWork } from "@/lib/classroom/pile/sheet-works";
import type { Exercise } from "@/lib/exercise/exercise";

const STUDENTS = [
  { memberId: "ada", name: "Ada", number: "1" },
  { memberId: "bo", name: "Bo", number: "2" },
];
const work = (itemId: string, other: Partial<SheetWork> = {}): SheetWork => ({
  itemId,
  homeworkId: "h",
  homework: "Week one",
  setAt: "2026-11-02T08:00:00.000Z",
  dueAt: null,
  archived: false,
  memberIds: ["ada", "bo"],
  ownVariant: false,
  excused: [],
  handedIn: {},
  ...other,
});

function drawing(state: PointState = "read"): CheckedDrawing {
  const at = state === "missing" ? null : ([1, 2] as const);
  return {
    format: "plasterline.check/1",
    exercise: "floor",
    version: 1,
    scale: "3/32in=1ft",
    frame: { ratio: 128, at: [100, 100] },
    box: { left: 0, top: 0, right: 200, bottom: 150 },
    picture: "blob:picture",
    points: [{ point: "A.foot", at, read: { at, state }, state }],
    lines: [],
    ownEye: null,
    residualMm: 0.05,
    doubts: [],
    confirmed: false,
    handedIn: null,
  };
}

function page(id: string, other: Partial<ReadPage> = {}): PilePage & { readonly state: ReadPage } {
  const state: ReadPage = {
    at: "read",
    exercise: { id: "floor", title: "Points on the floor" } as Exercise,
    works: [work("a")],
    copy: null,
    itemId: "a",
    itemBy: "only",
    memberId: "ada",
    memberBy: "teacher",
    name: "blob:name",
    drawing: drawing(),
    late: false,
    rank: 0,
    sending: false,
    complaint: null,
    sentAs: null,
    taken: null,
    ...other,
  };
  return { id, from: `${id}.jpg`, state };
}

function pileOf(...pages: readonly PilePage[]): PileStore {
  const store = createPile(STUDENTS);
  store.getState().put(pages);
  return store;
}

const stateOf = (store: PileStore, id: string): ReadPage => {
  const state = store.getState().pages.find((each) => each.id === id)?.state;
  if (state?.at !== "read") throw new Error("The page was read.");
  return state;
};
const receipt = { receivedAt: "2026-11-25T09:00:00.000Z", late: false, result: { score: 88 } };
const answers = (reply: unknown) => vi.fn(async () => Response.json(reply));

beforeEach(() => {
  vi.unstubAllGlobals();
  URL.revokeObjectURL = vi.fn();
});

describe("the order of a pile", () => {
  it("has doubtful pages first, then those whose student alone is wanting, and keeps its order while they are settled", () => {
    const sure = page("sure");
    const nameless = page("nameless", { memberId: null, memberBy: null });
    const doubtful = page("doubtful", { memberId: null, memberBy: null, drawing: drawing("doubtful") });
    const ranked = [sure, nameless, doubtful].map((each) => ({
      ...each,
      state: { ...each.state, rank: rankOf(each, false) },
    }));
    const store = pileOf(...ranked);
    const order = () => inOrder(store.getState().pages).map(({ id }) => id);
    expect(order()).toEqual(["doubtful", "nameless", "sure"]);
    store.getState().chooseStudent("nameless", "bo");
    store.getState().change("doubtful", drawing("right"));
    expect(order()).toEqual(["doubtful", "nameless", "sure"]);
  });
});

describe("what is sure", () => {
  it.each([
    ["a page with everything", {}, 1],
    ["no student", { memberId: null, memberBy: null }, 0],
    ["a doubtful point", { drawing: drawing("doubtful") }, 0],
    ["a point that was not found", { drawing: drawing("missing") }, 0],
    ["a point that was settled", { drawing: drawing("moved") }, 1],
    ["a page that is being sent", { sending: true }, 0],
    ["a page in the gradebook", { taken: { receivedAt: "", late: false, score: 1 } }, 0],
  ] as const)("%s", (_, other, count) => {
    expect(surePages(pileOf(page("p", other)).getState())).toHaveLength(count);
  });

  it("takes two pages of one student for doubtful, the one in the gradebook too", () => {
    const store = pileOf(page("p"), page("q"));
    expect(surePages(store.getState())).toEqual([]);
    store.getState().chooseStudent("q", "bo");
    expect(surePages(store.getState())).toHaveLength(2);
    const taken = { receivedAt: "", late: false, score: 1 };
    expect(surePages(pileOf(page("p", { taken }), page("q")).getState())).toEqual([]);
  });

  it("believes numbers when told so", () => {
    const store = pileOf(page("p", { memberBy: "number" }));
    expect(surePages(store.getState())).toEqual([]);
    store.getState().byNumber(true);
    expect(surePages(store.getState())).toHaveLength(1);
  });
});

describe("choosing", () => {
  it("keeps the student who was read on the sheet when another homework is chosen, and looks for others anew", () => {
    const works = [work("a"), work("b", { memberIds: ["bo"] })];
    const store = pileOf(page("p", { works }), page("q", { works, copy: 2, memberId: "bo", memberBy: "number" }));
    store.getState().chooseItem("p", "b");
    expect(stateOf(store, "p")).toMatchObject({ itemId: "b", itemBy: "teacher", memberId: "ada", memberBy: "teacher" });
    const [first] = inOrder(store.getState().pages);
    expect(first && pageDoubts(first, store.getState().pages, false).map(({ kind }) => kind)).toEqual(["not-set-to"]);
    store.getState().chooseItem("q", "b");
    expect(stateOf(store, "q")).toMatchObject({ itemId: "b", memberId: "bo", memberBy: "number" });
    store.getState().chooseItem("q", "elsewhere");
    expect(stateOf(store, "q").itemId).toBe("b");
  });

  it("changes nothing of a page that is in the gradebook", () => {
    const store = pileOf(page("p", { taken: { receivedAt: "", late: false, score: 1 } }));
    const before = stateOf(store, "p");
    store.getState().chooseStudent("p", "bo");
    store.getState().callLate("p", true);
    store.getState().change("p", drawing("moved"));
    expect(stateOf(store, "p")).toEqual(before);
  });

  it("gives the pictures back when a page is taken out", () => {
    const store = pileOf(page("p"));
    store.getState().takeOut("p");
    expect(store.getState().pages).toEqual([]);
    expect(URL.revokeObjectURL).toHaveBeenCalledTimes(2);
    forget({ at: "unread", say: "", remedy: "", photo: null });
    expect(URL.revokeObjectURL).toHaveBeenCalledTimes(2);
  });
});

describe("sending a page", () => {
  it("sends points made on paper at the printed scale, and shows what came of them", async () => {
    const fetched = answers({ ok: true, receipt });
    vi.stubGlobal("fetch", fetched);
    const store = pileOf(page("p", { late: true }));
    await sendPage(store, page("p", { late: true }));
    const [path, { body }] = fetched.mock.calls[0] as unknown as [string, { body: string }];
    expect(path).toBe("/api/class/pile");
    expect(JSON.parse(body)).toMatchObject({
      itemId: "a",
      memberId: "ada",
      late: true,
      marks: { scale: "3/32in=1ft", marks: [{ point: "A.foot", at: [1, 2], with: "paper" }] },
    });
    expect(body).not.toContain("blob:");
    expect(stateOf(store, "p")).toMatchObject({ sending: false, complaint: null, taken: { score: 88, late: false } });
  });

  it("is the same hand-in when it is sent again, and another for another student", async () => {
    const ids: string[] = [];
    const fetched = vi.fn(async (_: string, { body }: { body: string }) => {
      ids.push(JSON.parse(body).id);
      throw new TypeError("The network is away.");
    });
    vi.stubGlobal("fetch", fetched);
    const store = pileOf(page("p"));
    const send = () => sendPage(store, { id: "p", from: "p.jpg", state: stateOf(store, "p") });
    await send();
    expect(stateOf(store, "p").complaint).toMatch(/cannot be reached/);
    await send();
    store.getState().chooseStudent("p", "bo");
    expect(stateOf(store, "p").complaint).toBeNull();
    await send();
    expect(ids[0]).toMatch(/^[0-9a-f]{32}$/);
    expect(ids[1]).toBe(ids[0]);
    expect(ids[2]).not.toBe(ids[0]);
  });

  it("says why the server does not take it, and sends nothing without a student", async () => {
    const fetched = answers({ ok: false, sentence: "This student has used all attempts." });
    vi.stubGlobal("fetch", fetched);
    const store = pileOf(page("p"));
    await sendPage(store, page("p"));
    expect(stateOf(store, "p")).toMatchObject({ complaint: "This student has used all attempts.", taken: null });
    await sendPage(store, page("p", { memberId: null }));
    expect(fetched).toHaveBeenCalledTimes(1);
  });
});
