import { describe, expect, it } from "vitest";
import { findPerson } from "@/lib/classroom/access/find-person";
import { wordSubjects } from "@/lib/classroom/access/find-subject";
import { mayDo } from "@/lib/classroom/access/may-do";
import { changePassword } from "@/lib/classroom/accounts/change-password";
import { classesOfTeacher, makeClass } from "@/lib/classroom/accounts/classes";
import { acceptInvitation, invite } from "@/lib/classroom/accounts/invitation";
import { signIn } from "@/lib/classroom/accounts/sign-in";
import { teachersHere, withdrawWord, wordsOfTeacher } from "@/lib/classroom/accounts/teachers";
import { ACCOUNT_LIMIT, countTry } from "@/lib/classroom/accounts/tries";
import { makeWayBack, takeWayBack } from "@/lib/classroom/accounts/way-back";
import { readWordLink, sayWord, writeWordLink } from "@/lib/classroom/accounts/word-link";
import { onBothEngines } from "../engines";
import { cookieHeaders, join, openRoom, ROUTER, type Room, TEACHER } from "./room";

const HOUR_MS = 60 * 60 * 1000;
const DAY_MS = 24 * HOUR_MS;
const BO = { name: "Bo Lind", email: "Bo@Tidemill.example", password: "eight slow herons", address: ROUTER };
const NEW = "nine new brooms";
const later = (ms: number) => new Date(Date.now() + ms);

async function invitation({ store, teacherId }: Room, note = "Bo"): Promise<string> {
  const made = await invite(store, teacherId, note);
  if (!made.ok) throw new Error(made.sentence);
  return made.word;
}

async function letIn(room: Room) {
  const made = await acceptInvitation(room.store, room.auth, { ...BO, word: await invitation(room) });
  if (!made.ok) throw new Error(made.sentence);
  return made;
}

async function wayBackFor({ store }: Room, madeBy: string | null, email = TEACHER.email) {
  const made = await makeWayBack(store, { email, madeBy });
  if (!made.ok) throw new Error(made.sentence);
  return made.word;
}

onBothEngines("teachers", ({ newStore }) => {
  it("come in by an invitation, however it is written, and have classes of their own", async () => {
    const room = await openRoom(await newStore());
    const { store, auth, teacherId } = room;
    const word = await invitation(room);
    const written = ` ${sayWord(word).toLowerCase()} `;
    const bo = await acceptInvitation(store, auth, { ...BO, word: written });
    if (!bo.ok) throw new Error(bo.sentence);
    expect(await findPerson(store, auth, cookieHeaders(bo.cookies))).toEqual({
      kind: "teacher",
      userId: bo.userId,
      name: BO.name,
    });
    expect(await classesOfTeacher(store, bo.userId)).toEqual([]);
    await makeClass(store, bo.userId, "Evening class");
    expect((await classesOfTeacher(store, bo.userId)).map(({ title }) => title)).toEqual(["Evening class"]);
    expect((await classesOfTeacher(store, teacherId)).map(({ title }) => title)).toEqual(["First year"]);
    expect(await teachersHere(store)).toEqual([BO.name, TEACHER.name]);
    expect(await wordsOfTeacher(store, teacherId)).toMatchObject([
      { kind: "invitation", state: "used", whose: BO.name, note: "Bo", own: true },
    ]);
    expect(await wordsOfTeacher(store, bo.userId)).toEqual([]);
    expect(await signIn(store, auth, { ...BO, email: "bo@tidemill.EXAMPLE " })).toMatchObject({ ok: true });
  });

  it("are let in once by one invitation, also when three come at the same moment", async () => {
    const room = await openRoom(await newStore());
    const word = await invitation(room);
    const said = await Promise.all(
      ["a", "b", "c"].map((letter) =>
        acceptInvitation(room.store, room.auth, { ...BO, email: `${letter}@tidemill.example`, word }),
      ),
    );
    expect(said.filter(({ ok }) => ok)).toHaveLength(1);
    expect(said.filter((each) => !each.ok && each.reason === "no-word")).toHaveLength(2);
    expect(await teachersHere(room.store)).toHaveLength(2);
  });

  it("are not let in by an invitation that has run out, was withdrawn, or is a way back", async () => {
    const room = await openRoom(await newStore());
    const { store, auth, teacherId } = room;
    const word = await invitation(room);
    const by = (any: string, now?: Date) => acceptInvitation(store, auth, { ...BO, word: any }, now);
    expect(await by(word, later(7 * DAY_MS + 1000))).toMatchObject({ ok: false, reason: "no-word" });
    expect((await wordsOfTeacher(store, teacherId, later(7 * DAY_MS + 1000)))[0]?.state).toBe("over");
    const [row] = await wordsOfTeacher(store, teacherId);
    expect(row?.state).toBe("open");
    await withdrawWord(store, row?.id ?? "");
    expect(await by(word)).toMatchObject({ ok: false, reason: "no-word" });
    expect(await wordsOfTeacher(store, teacherId)).toEqual([]);
    expect(await by(await wayBackFor(room, null))).toMatchObject({ ok: false, reason: "no-word" });
    expect(await by("")).toMatchObject({ ok: false, reason: "no-word" });
    const other = await invitation(room);
    expect(await takeWayBack(store, auth, { word: other, password: NEW, address: ROUTER })).toMatchObject({
      ok: false,
      reason: "no-word",
    });
    expect(await by(other, later(7 * DAY_MS - 60_000))).toMatchObject({ ok: true });
  });

  it("keep their e-mail addresses apart, and an invitation that could not be used works on", async () => {
    const room = await openRoom(await newStore());
    const word = await invitation(room);
    const by = (email: string, name = BO.name) => acceptInvitation(room.store, room.auth, { ...BO, word, email, name });
    expect(await by("IDA@tidemill.example")).toMatchObject({ ok: false, reason: "email-taken" });
    expect(await by(BO.email, " \u200b ")).toMatchObject({ ok: false, reason: "no-name" });
    expect(await by(BO.email)).toMatchObject({ ok: true });
  });

  it("have words of which the store keeps a digest only, and at whose guessing an address is stopped", async () => {
    const room = await openRoom(await newStore());
    const { store, auth } = room;
    const word = await invitation(room);
    expect(word).toMatch(/^[A-HJKMNPRTWXY]{20}$/);
    const kept = JSON.stringify(await store.db.selectFrom("one_time_word").selectAll().execute());
    expect(kept).not.toContain(word);
    const guess = (address: string) =>
      takeWayBack(store, auth, { word: "AAAA-BBBB-CCCC-DDDD-EEEE", password: NEW, address });
    const said = await Promise.all(Array.from({ length: 35 }, () => guess("203.0.113.66")));
    expect(said.filter((each) => !each.ok && each.reason === "no-word")).toHaveLength(30);
    expect(said.filter((each) => !each.ok && each.reason === "too-many")).toHaveLength(5);
    expect(await acceptInvitation(store, auth, { ...BO, word, address: "203.0.113.66" })).toMatchObject({
      reason: "too-many",
    });
    expect(await acceptInvitation(store, auth, { ...BO, word })).toMatchObject({ ok: true });
  });

  it("come back by a colleague's word: once, with a new password, and signed out wherever they were", async () => {
    const room = await openRoom(await newStore());
    const { store, auth, teacherId } = room;
    const bo = await letIn(room);
    const stolen = await wayBackFor(room, bo.userId);
    const word = await wayBackFor(room, bo.userId, " IDA@tidemill.example");
    const before = await signIn(store, auth, { ...TEACHER, address: ROUTER });
    if (!before.ok) throw new Error(before.sentence);
    const by = (any: string, now?: Date) =>
      takeWayBack(store, auth, { word: any, password: NEW, address: ROUTER }, now);
    expect(await by(word, later(DAY_MS + 1000))).toMatchObject({ ok: false, reason: "no-word" });
    // Of several the newest counts.
    expect(await by(stolen)).toMatchObject({ ok: false, reason: "no-word" });
    const back = await by(word);
    if (!back.ok) throw new Error(back.sentence);
    expect(back.userId).toBe(teacherId);
    expect(await findPerson(store, auth, cookieHeaders(before.cookies))).toEqual({ kind: "nobody" });
    expect(await findPerson(store, auth, cookieHeaders(back.cookies))).toMatchObject({ userId: teacherId });
    expect(await findPerson(store, auth, cookieHeaders(bo.cookies))).toMatchObject({ userId: bo.userId });
    expect(await by(word)).toMatchObject({ ok: false, reason: "no-word" });
    expect(await signIn(store, auth, { ...TEACHER, address: ROUTER })).toMatchObject({ reason: "wrong" });
    expect(await signIn(store, auth, { ...TEACHER, password: NEW, address: ROUTER })).toMatchObject({ ok: true });
    // Whose way back it was sees who made it.
    expect(await wordsOfTeacher(store, teacherId)).toMatchObject([
      { kind: "way-back", state: "used", madeBy: BO.name, own: false },
      { kind: "invitation" },
    ]);
  });

  it("come back by the server's word within the hour, also when a guesser has used up their account's tries", async () => {
    const room = await openRoom(await newStore());
    const { store, auth } = room;
    const late = await wayBackFor(room, null);
    const by = (word: string, now?: Date) => takeWayBack(store, auth, { word, password: NEW, address: ROUTER }, now);
    expect(await by(late, later(HOUR_MS + 1000))).toMatchObject({ ok: false, reason: "no-word" });
    for (let i = 0; i < ACCOUNT_LIMIT.most; i++) await countTry(store, ACCOUNT_LIMIT, TEACHER.email.toLowerCase());
    expect(await signIn(store, auth, { ...TEACHER, address: ROUTER })).toMatchObject({ reason: "too-many" });
    expect(await by(await wayBackFor(room, null))).toMatchObject({ ok: true });
    expect(await signIn(store, auth, { ...TEACHER, password: NEW, address: ROUTER })).toMatchObject({ ok: true });
  });

  it("make no way back for themselves, for a student, or for nobody", async () => {
    const room = await openRoom(await newStore());
    const { store, teacherId } = room;
    const bo = await letIn(room);
    const of = (email: string) => makeWayBack(store, { email, madeBy: bo.userId });
    expect(await of("bo@tidemill.example")).toMatchObject({ ok: false, reason: "yourself" });
    expect(await of("nobody@tidemill.example")).toMatchObject({ ok: false, reason: "nobody" });
    await join(room, "Wim");
    const student = await store.db
      .selectFrom("user")
      .select("email")
      .where("role", "=", "student")
      .executeTakeFirstOrThrow();
    expect(await of(student.email)).toMatchObject({ ok: false, reason: "nobody" });
    expect(await wordsOfTeacher(store, teacherId)).toMatchObject([{ kind: "invitation" }]);
  });

  it("withdraw their own words, and a way back that another made for them", async () => {
    const room = await openRoom(await newStore());
    const { store, teacherId } = room;
    const bo = await letIn(room);
    const [ida, boHimself] = [teacherId, bo.userId].map((userId) => ({ kind: "teacher", userId, name: "" }) as const);
    if (!ida || !boHimself) throw new Error("There are two.");
    await wayBackFor(room, bo.userId);
    const may = async (person: typeof ida, wordId: string) =>
      (await wordSubjects(store, wordId)).some((subject) => mayDo(person, "withdraw-word", subject));
    const [wayBack] = await wordsOfTeacher(store, bo.userId);
    expect([await may(ida, wayBack?.id ?? ""), await may(boHimself, wayBack?.id ?? "")]).toEqual([true, true]);
    await invitation(room);
    const open = (await wordsOfTeacher(store, teacherId)).find(
      ({ state, kind }) => kind === "invitation" && state === "open",
    );
    expect([await may(ida, open?.id ?? ""), await may(boHimself, open?.id ?? "")]).toEqual([true, false]);
    // Who was let in by an invitation does not own it.
    const used = (await wordsOfTeacher(store, teacherId)).find(({ state }) => state === "used");
    expect(await may(boHimself, used?.id ?? "")).toBe(false);
    expect(await wordSubjects(store, "none")).toEqual([]);
    await withdrawWord(store, used?.id ?? "");
    expect((await wordsOfTeacher(store, teacherId)).map(({ id }) => id)).toContain(used?.id);
  });

  it("change their password when they know the old one, and are signed out everywhere else", async () => {
    const room = await openRoom(await newStore());
    const { store, auth, teacherId } = room;
    const bo = await letIn(room);
    const elsewhere = await signIn(store, auth, { ...TEACHER, address: ROUTER });
    if (!elsewhere.ok) throw new Error(elsewhere.sentence);
    const waiting = await wayBackFor(room, bo.userId);
    const to = (old: string, address = ROUTER) =>
      changePassword(store, auth, { userId: teacherId, old, password: NEW, address });
    const wrong = await to("seven tidy ducks");
    expect(wrong).toMatchObject({ ok: false, reason: "wrong", sentence: "The old password is not right." });
    expect(await findPerson(store, auth, cookieHeaders(elsewhere.cookies))).toMatchObject({ kind: "teacher" });
    const changed = await to(TEACHER.password);
    if (!changed.ok) throw new Error(changed.sentence);
    expect(await findPerson(store, auth, cookieHeaders(elsewhere.cookies))).toEqual({ kind: "nobody" });
    expect(await findPerson(store, auth, cookieHeaders(changed.cookies))).toMatchObject({ userId: teacherId });
    expect(await store.db.selectFrom("session").select("id").where("userId", "=", teacherId).execute()).toHaveLength(1);
    // A way back made before is over too.
    expect(await takeWayBack(store, auth, { word: waiting, password: "x".repeat(12), address: ROUTER })).toMatchObject({
      reason: "no-word",
    });
    for (let i = 0; i < 10; i++) await to("a guess", "203.0.113.66");
    expect(await to(NEW, "203.0.113.66")).toMatchObject({ ok: false, reason: "too-many" });
  });

  it("find words on the list for thirty days after they ran out, and not longer", async () => {
    const room = await openRoom(await newStore());
    const { store, teacherId } = room;
    await invitation(room, "first");
    await invite(store, teacherId, "second", later(36 * DAY_MS));
    expect(await wordsOfTeacher(store, teacherId)).toHaveLength(2);
    await invite(store, teacherId, "third", later(38 * DAY_MS));
    expect((await wordsOfTeacher(store, teacherId)).map(({ note }) => note)).toEqual(["third", "second"]);
  });
});

describe("a one-time word's link", () => {
  it("comes back out as it went in, with its word behind the #", () => {
    const link = writeWordLink("invited", "ABCDEFGHJKMNPRTWXYAB");
    expect(link).toBe("/class/invited#ABCD-EFGH-JKMN-PRTW-XYAB");
    expect(readWordLink(link.slice(link.indexOf("#")))).toBe("ABCD-EFGH-JKMN-PRTW-XYAB");
  });

  it.each(["", "#", "#12", "#<b>", "#%41", "#ABCD.EFGH"])("%j holds none", (fragment) => {
    expect(readWordLink(fragment)).toBe("");
  });
});
