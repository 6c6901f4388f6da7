import { randomUUID } from "node:crypto";
import { FILES, marksOf } from "../classroom/gradebook/drawn-class";
import { planText } from "../classroom/library/two-teachers";
import type { World } from "./class-world";

/** Statuses in the order of the roles: nobody, own student, classmate, student elsewhere, teacher elsewhere, teacher. */
export type Statuses = readonly [number, number, number, number, number, number];

const TEACHER: Statuses = [403, 403, 403, 403, 403, 200];
const TEACHERS: Statuses = [403, 403, 403, 403, 200, 200];
const ANYONE: Statuses = [200, 200, 200, 200, 200, 200];
/** Open to anyone, and what is asked here cannot be had: a wrong word, password or code. */
const WRONG: Statuses = [422, 422, 422, 422, 422, 422];
const PAGE_OF_TEACHER: Statuses = [404, 404, 404, 404, 404, 200];

export type RouteRow = {
  readonly statuses: Statuses;
  /** What is posted; a route without it is asked by GET with `query`. */
  readonly body?: (world: World) => unknown;
  readonly query?: (world: World) => string;
};

const item = ({ memberId }: World) => ({ itemId: "floor", memberId });
const ofClass = ({ classId }: World) => ({ classId });
const ofMember = ({ memberId }: World) => ({ memberId });
const terms = { dueAt: null, excused: false };
const handIn = (memberId: string) => ({
  id: randomUUID(),
  itemId: "floor",
  memberId,
  marks: marksOf(FILES.floor),
  madeAt: "2026-11-09T12:00:00.000Z",
});
const rules = {
  title: "Week two",
  dueAt: null,
  attempts: 0,
  counts: "best",
  feedback: "at-once",
  strictness: null,
  hints: "allowed",
  weight: 1,
  criteria: [{ name: "Line quality", points: 5 }],
  toWhom: { kind: "all" },
};
const homework = (classId: string) => ({
  ...rules,
  classId,
  items: [{ source: "course", exerciseId: "points-on-the-floor", weight: 1 }],
});
const noWord = "AAAA-BBBB-CCCC-DDDD-EEEE";
const someone = { name: "Eve", email: "eve@elsewhere.example", password: "seven tidy gulls" };

/** Every route that answers requests about a class, by its folder. What takes things away stands at the end. */
export const ROUTES: Readonly<Record<string, RouteRow>> = {
  "api/class/first-teacher": { statuses: WRONG, body: () => ({ ...someone, word: "" }) },
  "api/class/sign-in": { statuses: WRONG, body: () => ({ email: someone.email, password: "x" }) },
  "api/class/join": { statuses: WRONG, body: () => ({ code: "AAAAAA", name: "Eve" }) },
  "api/class/back": { statuses: WRONG, body: () => ({ code: "AAAAAA", name: "Eve", passphrase: "oat oat oat oat" }) },
  "api/class/invited": { statuses: WRONG, body: () => ({ ...someone, word: noWord }) },
  "api/class/way-back": { statuses: WRONG, body: () => ({ word: noWord, password: someone.password }) },
  "api/class/folder": { statuses: ANYONE, body: () => ({ files: [] }) },
  "api/class/make-class": { statuses: TEACHERS, body: () => ({ title: "Another" }) },
  "api/class/invite": { statuses: TEACHERS, body: () => ({ note: "" }) },
  "api/class/make-way-back": { statuses: TEACHERS, body: () => ({ email: "cem@tidemill.example" }) },
  "api/class/password": {
    statuses: [403, 403, 403, 403, 422, 422],
    body: () => ({ old: "not the old one", password: "nine new brooms" }),
  },
  "api/class/export": { statuses: TEACHER, query: ({ classId }) => `?classId=${classId}` },
  "api/class/gradebook": { statuses: TEACHER, query: ({ classId }) => `?classId=${classId}` },
  "api/class/keep-days": { statuses: TEACHER, body: (world) => ({ ...ofClass(world), keepDays: 0 }) },
  "api/class/class-list": { statuses: TEACHER, body: (world) => ({ ...ofClass(world), text: "Noor\n", put: true }) },
  "api/class/set-homework": { statuses: TEACHER, body: ({ classId }) => homework(classId) },
  "api/class/change-homework": {
    statuses: TEACHER,
    body: () => ({
      ...rules,
      homeworkId: "week-one",
      items: ["floor", "lamps"].map((itemId) => ({ source: "kept", itemId, weight: 1 })),
      agreed: { hides: 0, seal: null },
    }),
  },
  "api/class/count-in-time": { statuses: TEACHER, body: () => ({ handInId: "w1", reason: null }) },
  "api/class/reuse-homework": {
    statuses: TEACHER,
    body: ({ classId }) => ({ homeworkId: "week-one", classId, dueAt: null }),
  },
  "api/class/homework-terms": {
    statuses: TEACHER,
    body: ({ memberId }) => ({ homeworkId: "week-one", memberId, ...terms }),
  },
  "api/class/excuse": {
    statuses: TEACHER,
    body: ({ memberId }) => ({ homeworkId: "week-one", memberId, excused: false }),
  },
  "api/class/weights": { statuses: TEACHER, body: (world) => ({ ...ofClass(world), homework: [], items: [] }) },
  "api/class/regrade": {
    statuses: TEACHER,
    body: ({ classId }) => ({ classId, homeworkId: "week-one", strictness: "as-set", exercises: "as-set" }),
  },
  "api/class/hand-in": {
    statuses: [403, 200, 403, 403, 403, 403],
    body: ({ memberId }) => handIn(memberId),
  },
  "api/class/pile": {
    statuses: TEACHER,
    body: ({ memberId }) => {
      const { marks, ...sent } = handIn(memberId);
      return { ...sent, marks: { ...marks, scale: "1/4in=1ft" }, late: false };
    },
  },
  "api/class/pile-sheet": {
    statuses: TEACHER,
    body: (world) => ({ ...ofClass(world), exercise: "points-on-the-floor", version: 1 }),
  },
  "api/class/remark": { statuses: TEACHER, body: () => ({ handInId: "w1", words: "Look again.", strokes: [] }) },
  "api/class/override": { statuses: TEACHER, body: (world) => ({ ...item(world), score: 50, reason: "Late bus" }) },
  "api/class/take-back": { statuses: TEACHER, body: item },
  "api/class/criterion": {
    statuses: TEACHER,
    body: (world) => ({ ...item(world), criterion: "Line quality", points: 3 }),
  },
  "api/class/keep-plan": {
    statuses: TEACHER,
    body: ({ planId }) => ({ planId, base: 2, text: planText("Second"), words: "" }),
  },
  "api/class/plan": { statuses: TEACHER, query: ({ planId }) => `?planId=${planId}` },
  "api/class/share-plan": { statuses: TEACHER, body: ({ planId }) => ({ planId, shared: true }) },
  // Whoever teaches here and has the link gets a copy of their own.
  "api/class/shared-plan": { statuses: TEACHERS, body: ({ shareWord }) => ({ word: shareWord }) },
  "api/class/copy-plan": { statuses: TEACHERS, body: ({ shareWord }) => ({ word: shareWord, planId: randomUUID() }) },
  "api/class/go-back-plan": {
    statuses: TEACHER,
    body: ({ planId, versionId }) => ({ planId, versionId, base: 2 }),
  },
  "api/class/throw-plan": { statuses: TEACHER, body: ({ planId }) => ({ planId, thrown: true }) },
  // Whoever has the code is let in to place a mark; what others placed is the teacher's to show.
  "api/live/join": { statuses: ANYONE, body: ({ voteId }) => ({ voteId }) },
  "api/live/events": { statuses: [403, 200, 200, 403, 403, 200], query: ({ voteId }) => `?vote=${voteId}` },
  "api/live/guess": {
    statuses: [403, 200, 200, 403, 403, 403],
    body: ({ voteId }) => ({ voteId, round: 1, at: [0, 0] }),
  },
  "api/live/result": { statuses: TEACHER, query: ({ voteId }) => `?vote=${voteId}` },
  "api/live/move": { statuses: TEACHER, body: ({ voteId }) => ({ voteId, round: 1, move: "show" }) },
  // It ends the vote before it.
  "class/live": {
    statuses: TEACHER,
    body: ({ classId }) => ({ classId, exerciseId: "points-on-the-floor", point: "B.foot" }),
  },
  "api/class/withdraw-word": { statuses: TEACHER, body: ({ wordId }) => ({ wordId }) },
  "api/class/archive-homework": { statuses: TEACHER, body: () => ({ homeworkId: "week-one", archived: true }) },
  "api/class/erase-plan": { statuses: TEACHER, body: ({ planId }) => ({ planId, versionId: null }) },
  "api/class/renew-passphrase": { statuses: TEACHER, body: ofMember },
  "api/class/erase-member": { statuses: TEACHER, body: ofMember },
  "api/class/erase-class": { statuses: TEACHER, body: ofClass },
  "api/class/sign-out": { statuses: ANYONE, body: () => ({}) },
};

export type PageRow = { readonly statuses: Statuses; readonly path: (world: World) => string };

/** Every page of Class, of a vote's phones, and of homework on hand, by its folder. */
export const PAGES: Readonly<Record<string, PageRow>> = {
  class: { statuses: ANYONE, path: () => "/class" },
  "class/join": { statuses: ANYONE, path: () => "/class/join" },
  "class/back": { statuses: ANYONE, path: () => "/class/back" },
  "class/invited": { statuses: ANYONE, path: () => "/class/invited" },
  "class/way-back": { statuses: ANYONE, path: () => "/class/way-back" },
  // What it shows is asked of the server by the word behind the #, as whoever looks.
  "class/shared": { statuses: ANYONE, path: () => "/class/shared" },
  "class/plans": { statuses: [404, 404, 404, 404, 200, 200], path: () => "/class/plans" },
  "class/plans/[planId]": { statuses: PAGE_OF_TEACHER, path: ({ planId }) => `/class/plans/${planId}` },
  "class/folder": { statuses: ANYONE, path: () => "/class/folder" },
  "class/teachers": { statuses: [404, 404, 404, 404, 200, 200], path: () => "/class/teachers" },
  "class/[classId]": { statuses: PAGE_OF_TEACHER, path: ({ classId }) => `/class/${classId}` },
  "class/[classId]/gradebook": { statuses: PAGE_OF_TEACHER, path: ({ classId }) => `/class/${classId}/gradebook` },
  "class/[classId]/pile": { statuses: PAGE_OF_TEACHER, path: ({ classId }) => `/class/${classId}/pile` },
  "class/[classId]/teach-again": { statuses: PAGE_OF_TEACHER, path: ({ classId }) => `/class/${classId}/teach-again` },
  "class/[classId]/homework/set": {
    statuses: PAGE_OF_TEACHER,
    path: ({ classId }) => `/class/${classId}/homework/set`,
  },
  "class/[classId]/homework/[homeworkId]": {
    statuses: PAGE_OF_TEACHER,
    path: ({ classId }) => `/class/${classId}/homework/week-one`,
  },
  "class/[classId]/homework/[homeworkId]/change": {
    statuses: PAGE_OF_TEACHER,
    path: ({ classId }) => `/class/${classId}/homework/week-one/change`,
  },
  "class/[classId]/live": { statuses: PAGE_OF_TEACHER, path: ({ classId }) => `/class/${classId}/live` },
  "class/[classId]/live/[voteId]": {
    statuses: PAGE_OF_TEACHER,
    path: ({ classId, voteId }) => `/class/${classId}/live/${voteId}`,
  },
  "class/[classId]/drawing/[handInId]": {
    statuses: [404, 200, 404, 404, 404, 200],
    path: ({ classId }) => `/class/${classId}/drawing/w1`,
  },
  live: { statuses: ANYONE, path: () => "/live" },
  "live/[code]": { statuses: ANYONE, path: ({ voteCode }) => `/live/${voteCode}` },
  "draft/library": { statuses: PAGE_OF_TEACHER, path: ({ planId }) => `/draft/library?plan=${planId}` },
  // To nobody it says to come back to class first; the homework is every student's of the class.
  "practise/[id]": {
    statuses: [200, 200, 200, 404, 404, 404],
    path: () => "/practise/points-on-the-floor?homework=floor",
  },
};
