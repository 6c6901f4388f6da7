import { describe, expect, it } from "vitest";
import { doubtsOf, type JudgedPage } from "@/lib/classroom/pile/doubts-of";
import { matchPage, matchStudent, type PileStudent } from "@/lib/classroom/pile/match-page";
import type { SheetWork } from "@/lib/classroom/pile/sheet-works";

const STUDENTS: readonly PileStudent[] = [
  { memberId: "ada", name: "Ada", number: "7" },
  { memberId: "bo", name: "Bo", number: "08" },
  { memberId: "cem", name: "Cem", number: "9b" },
  { memberId: "dot", name: "Dot", number: null },
  { memberId: "eve", name: "Eve", number: "12" },
  { memberId: "fay", name: "Fay", number: "12" },
];
const ALL = STUDENTS.map(({ memberId }) => memberId);
const work = (itemId: string, other: Partial<SheetWork> = {}): SheetWork => ({
  itemId,
  homeworkId: `of ${itemId}`,
  homework: "Week one",
  setAt: "2026-11-02T08:00:00.000Z",
  dueAt: null,
  archived: false,
  memberIds: ALL,
  ownVariant: false,
  excused: [],
  handedIn: {},
  ...other,
});

describe("where a page belongs", () => {
  it.each([
    ["the only homework", [work("a")], "a", "only"],
    ["the newest of several", [work("b"), work("a")], "b", "newest"],
    ["the open one beside one put away", [work("b", { archived: true }), work("a")], "a", "only"],
    ["one put away where there is no other", [work("b", { archived: true })], "b", "put-away"],
    ["nowhere", [], null, null],
  ] as const)("%s", (_, works, itemId, itemBy) => {
    expect(matchPage(works, null, STUDENTS)).toEqual({ itemId, itemBy, memberId: null, memberBy: null });
  });

  it.each([
    [7, "ada"],
    [8, "bo"],
    [9, null],
    [12, null],
    [70, null],
    [null, null],
  ] as const)("sheet %s is %s's", (copy, memberId) => {
    expect(matchStudent(work("a"), copy, STUDENTS)).toEqual({ memberId, memberBy: memberId && "number" });
  });

  it("does not look beyond those it was set to", () => {
    expect(matchStudent(work("a", { memberIds: ["bo"] }), 7, STUDENTS).memberId).toBeNull();
  });

  it("knows a student by an exercise made for nobody else, whatever the sheet's number", () => {
    const own = work("a", { ownVariant: true, memberIds: ["dot"] });
    expect(matchStudent(own, 7, STUDENTS)).toEqual({ memberId: "dot", memberBy: "variant" });
    expect(matchStudent({ ...own, memberIds: ["dot", "eve"] }, null, STUDENTS).memberId).toBeNull();
  });
});

const sure: JudgedPage = {
  id: "p1",
  works: [work("a")],
  itemId: "a",
  itemBy: "only",
  memberId: "ada",
  memberBy: "teacher",
  openPoints: 0,
  drawnPoints: 5,
  photoDoubts: [],
};
const beside = (other: Partial<JudgedPage>) => ({ ...sure, id: "p2", ...other });

describe("what is doubtful about a page", () => {
  it.each([
    ["nothing", {}, [], []],
    ["no student", { memberId: null, memberBy: null }, [], ["no-student!"]],
    ["a number alone", { memberBy: "number" }, [], ["by-number"]],
    ["a variant", { memberBy: "variant" }, [], []],
    ["several homeworks", { itemBy: "newest" }, [], ["several"]],
    ["one the teacher chose", { itemBy: "teacher" }, [], []],
    ["put away", { itemBy: "put-away" }, [], ["put-away"]],
    ["not set to the student", { works: [work("a", { memberIds: ["bo"] })] }, [], ["not-set-to!"]],
    ["handed in before", { works: [work("a", { handedIn: { ada: 2 } })] }, [], ["handed-in"]],
    ["another's hand-in", { works: [work("a", { handedIn: { bo: 1 } })] }, [], []],
    ["excused", { works: [work("a", { excused: ["ada"] })] }, [], ["excused"]],
    ["points open", { openPoints: 2 }, [], ["open-points!"]],
    ["nothing drawn", { drawnPoints: 0 }, [], ["no-points!"]],
    ["the photograph", { photoDoubts: ["Blurred."] }, [], ["photo"]],
    ["the same student twice", {}, [beside({})], ["twice"]],
    ["another student", {}, [beside({ memberId: "bo" })], []],
    ["another exercise", {}, [beside({ itemId: "b" })], []],
    ["itself among the pages", {}, [sure], []],
    ["two without a student", { memberId: null }, [beside({ memberId: null })], ["no-student!"]],
  ] as const)("%s", (_, other, pages, kinds) => {
    const doubts = doubtsOf({ ...sure, ...(other as Partial<JudgedPage>) }, pages, false);
    expect(doubts.map(({ kind, blocks }) => (blocks ? `${kind}!` : kind))).toEqual(kinds);
    for (const { say } of doubts) expect(say).toMatch(/^[A-Z0-9].*[.?]$/u);
  });

  it("believes the numbers once the teacher says that the sheets were given out by them", () => {
    expect(doubtsOf({ ...sure, memberBy: "number" }, [], true)).toEqual([]);
  });
});
