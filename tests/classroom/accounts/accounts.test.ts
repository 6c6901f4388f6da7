import { getMigrations } from "better-auth/db/migration";
import { describe, expect, it } from "vitest";
import { findPerson } from "@/lib/classroom/access/find-person";
import { type Auth, authOptions, makeAuth } from "@/lib/classroom/accounts/auth";
import { classesOfStudent, classesOfTeacher, makeClass } from "@/lib/classroom/accounts/classes";
import { comeBack, newPassphrase } from "@/lib/classroom/accounts/come-back";
import { firstRun, makeFirstTeacher } from "@/lib/classroom/accounts/first-teacher";
import { type Joined, joinClass } from "@/lib/classroom/accounts/join-class";
import { readPrivateLink, writePrivateLink } from "@/lib/classroom/accounts/private-link";
import { cookieSecret, firstRunWord } from "@/lib/classroom/accounts/settings";
import { signIn } from "@/lib/classroom/accounts/sign-in";
import type { Store } from "@/lib/classroom/store/store";
import { onBothEngines } from "../engines";

const TEACHER = { name: "Ida Brandt", email: "Ida@Tidemill.example", password: "seven tidy gulls" };
const ROUTER = "203.0.113.7";

type Room = {
  readonly store: Store;
  readonly auth: Auth;
  readonly teacherId: string;
  readonly code: string;
  readonly classId: string;
};

async function openRoom(store: Store): Promise<Room> {
  const auth = makeAuth(store, { secret: await cookieSecret(store), secure: false });
  const made = await makeFirstTeacher(store, auth, { ...TEACHER, word: "", address: ROUTER, atTheServer: true });
  if (!made.ok) throw new Error(made.sentence);
  const room = await makeClass(store, made.userId, "First year");
  if (!room.ok) throw new Error(room.sentence);
  return { store, auth, teacherId: made.userId, code: room.code, classId: room.classId };
}

async function join(
  { store, auth, code }: Room,
  name: string,
  address = ROUTER,
  userId: string | null = null,
): Promise<Joined> {
  const joined = await joinClass(store, auth, { code, name, address, userId });
  if (!joined.ok) throw new Error(joined.sentence);
  return joined;
}

/** What a browser would send back of the cookies it was given. */
function cookieHeaders(lines: readonly string[]): Headers {
  return new Headers({ cookie: lines.map((line) => line.split(";")[0]).join("; ") });
}

onBothEngines("accounts", ({ newStore }) => {
  it("are kept in the very tables that the library would make", async () => {
    const store = await newStore();
    const plan = await getMigrations(authOptions(store, { secret: "x".repeat(40), secure: false }));
    expect({ made: plan.toBeCreated, added: plan.toBeAdded, indexes: plan.toBeAddedIndexes }).toEqual({
      made: [],
      added: [],
      indexes: [],
    });
    expect(plan.schemaProblems).toEqual([]);
  });

  it("begin with one first teacher, also when two are first at once", async () => {
    const store = await newStore();
    const auth = makeAuth(store, { secret: await cookieSecret(store), secure: false });
    expect(await firstRun(store)).toBe(true);
    const made = await Promise.all(
      ["one", "two", "three"].map((name) =>
        makeFirstTeacher(store, auth, {
          ...TEACHER,
          email: `${name}@tidemill.example`,
          word: "",
          address: "::1",
          atTheServer: true,
        }),
      ),
    );
    expect(made.filter(({ ok }) => ok)).toHaveLength(1);
    expect(made.filter((each) => !each.ok && each.reason === "not-first")).toHaveLength(2);
    expect(await firstRun(store)).toBe(false);
    expect(await store.db.selectFrom("user").select("role").execute()).toEqual([{ role: "teacher" }]);
  });

  it("let nobody else in the room be the first without the word from the server", async () => {
    const store = await newStore();
    const auth = makeAuth(store, { secret: await cookieSecret(store), secure: false });
    const from = { ...TEACHER, address: ROUTER, atTheServer: false };
    expect(await makeFirstTeacher(store, auth, { ...from, word: "AAAAAA" })).toMatchObject({
      ok: false,
      reason: "wrong-word",
    });
    expect(await firstRun(store)).toBe(true);
    const word = (await firstRunWord(store)).toLowerCase();
    expect(
      await makeFirstTeacher(store, auth, { ...from, word: `${word.slice(0, 3)} ${word.slice(3)}` }),
    ).toMatchObject({ ok: true });
  });

  it("sign a teacher in and out, and know who it is by the cookie alone", async () => {
    const room = await openRoom(await newStore());
    const { store, auth, teacherId } = room;
    const right = await signIn(store, auth, {
      email: " ida@tidemill.example ",
      password: TEACHER.password,
      address: ROUTER,
    });
    if (!right.ok) throw new Error(right.sentence);
    const headers = cookieHeaders(right.cookies);
    expect(await findPerson(store, auth, headers)).toEqual({ kind: "teacher", userId: teacherId, name: TEACHER.name });
    const wrong = await signIn(store, auth, { email: TEACHER.email, password: "seven tidy ducks", address: ROUTER });
    expect(wrong).toMatchObject({ ok: false, reason: "wrong" });
    const nobody = await signIn(store, auth, { email: "nobody@tidemill.example", password: "x", address: ROUTER });
    expect(nobody.ok ? "" : nobody.sentence).toBe(wrong.ok ? "" : wrong.sentence);
    const ended = await auth.signOut(headers);
    expect(ended.join()).toMatch(/Max-Age=0/i);
    expect(await findPerson(store, auth, headers)).toEqual({ kind: "nobody" });
    const forged = new Headers({ cookie: headers.get("cookie")?.replace(/.$/, "x") ?? "" });
    expect(await findPerson(store, auth, forged)).toEqual({ kind: "nobody" });
  });

  it("have cookies that no script reads, no other site sends, and that travel by https where there is one", async () => {
    const { store, auth } = await openRoom(await newStore());
    const proof = { email: TEACHER.email, password: TEACHER.password, address: ROUTER };
    const plain = await signIn(store, auth, proof);
    const secure = await signIn(store, makeAuth(store, { secret: await cookieSecret(store), secure: true }), proof);
    if (!plain.ok || !secure.ok) throw new Error("Both sign in.");
    for (const line of [...plain.cookies, ...secure.cookies]) {
      expect(line).toMatch(/; HttpOnly(;|$)/i);
      expect(line).toMatch(/; SameSite=Lax(;|$)/i);
      expect(line).toMatch(/; Path=\/(;|$)/i);
    }
    expect(plain.cookies.join()).not.toMatch(/; Secure/i);
    for (const line of secure.cookies) expect(line).toMatch(/^__Secure-.*; Secure(;|$)/i);
  });

  it("keep neither addresses nor programs with a session, and no name with the counts of tries", async () => {
    const { store, auth } = await openRoom(await newStore());
    await signIn(store, auth, { email: TEACHER.email, password: "wrong", address: ROUTER });
    const sessions = await store.db.selectFrom("session").select(["ipAddress", "userAgent"]).execute();
    for (const { ipAddress, userAgent } of sessions)
      expect([ipAddress || null, userAgent || null]).toEqual([null, null]);
    const tries = JSON.stringify(await store.db.selectFrom("tries").selectAll().execute());
    expect(tries).not.toMatch(/203\.0|tidemill/);
  });

  it("stop a guesser of one password, from however many addresses, and let the owner in when the time is over", async () => {
    const { store, auth } = await openRoom(await newStore());
    const guess = (i: number) =>
      signIn(store, auth, { email: TEACHER.email, password: `guess ${i}`, address: `203.0.113.${i}` });
    const said = await Promise.all(Array.from({ length: 40 }, (_, i) => guess(i)));
    expect(said.filter((each) => !each.ok && each.reason === "wrong")).toHaveLength(10);
    expect(said.filter((each) => !each.ok && each.reason === "too-many")).toHaveLength(30);
    const owner = { email: TEACHER.email, password: TEACHER.password, address: "203.0.113.99" };
    const early = await signIn(store, auth, owner);
    expect(early.ok ? "" : early.sentence).toMatch(/^There were too many wrong tries\. Wait 1[45] minutes/);
    await store.db
      .updateTable("tries")
      .set({ since: new Date(Date.now() - 15 * 60_000).toISOString() })
      .execute();
    expect(await signIn(store, auth, owner)).toMatchObject({ ok: true });
  });

  it("stop one address that tries many accounts", async () => {
    const { store, auth } = await openRoom(await newStore());
    const said = await Promise.all(
      Array.from({ length: 70 }, (_, i) =>
        signIn(store, auth, { email: `t${i}@tidemill.example`, password: "x", address: ROUTER }),
      ),
    );
    expect(said.filter((each) => !each.ok && each.reason === "too-many")).toHaveLength(10);
    expect(await signIn(store, auth, { ...TEACHER, address: "198.51.100.1" })).toMatchObject({ ok: true });
  });

  it("let thirty students join at once from one address, and come back at once by their passphrases", async () => {
    const room = await openRoom(await newStore());
    const { store, auth, code } = room;
    const begun = Date.now();
    const joined = await Promise.all(Array.from({ length: 30 }, (_, i) => join(room, `Student ${i}`)));
    const back = await Promise.all(
      joined.map(({ name, passphrase }) =>
        comeBack(store, auth, { code, name, passphrase: passphrase ?? "", address: ROUTER }),
      ),
    );
    expect(back.every(({ ok }) => ok)).toBe(true);
    expect(Date.now() - begun).toBeLessThan(60_000);
    for (const [i, { memberId, classId, cookies }] of joined.entries()) {
      const person = await findPerson(store, auth, cookieHeaders(cookies));
      expect(person).toMatchObject({ kind: "student", name: `Student ${i}`, places: [{ memberId, classId }] });
    }
    expect(new Set(joined.map(({ passphrase }) => passphrase)).size).toBe(30);
  });

  it("give each name of a class to one student, whatever capitals it is written in", async () => {
    const room = await openRoom(await newStore());
    await join(room, "  Wim   Óskar ");
    const again = await joinClass(room.store, room.auth, {
      code: room.code,
      name: "wim óskar",
      address: ROUTER,
      userId: null,
    });
    expect(again).toMatchObject({ ok: false, reason: "name-taken" });
    const both = await Promise.all(
      ["Tess", "TESS"].map((name) =>
        joinClass(room.store, room.auth, { code: room.code, name, address: ROUTER, userId: null }),
      ),
    );
    expect(both.filter(({ ok }) => ok)).toHaveLength(1);
    const nobody = await joinClass(room.store, room.auth, {
      code: room.code,
      name: " \u200b ",
      address: ROUTER,
      userId: null,
    });
    expect(nobody).toMatchObject({ ok: false, reason: "no-name" });
    expect(await room.store.db.selectFrom("user").select("id").where("role", "=", "student").execute()).toHaveLength(2);
  });

  it("give a student the place that the teacher's list keeps", async () => {
    const room = await openRoom(await newStore());
    await room.store.db
      .insertInto("member")
      .values({
        id: "listed",
        class_id: room.classId,
        user_id: null,
        name: "Noor",
        number: "7",
        joined_at: null,
        removed: 0,
      })
      .execute();
    expect(await join(room, "noor")).toMatchObject({ memberId: "listed" });
    const [row] = await room.store.db.selectFrom("member").selectAll().execute();
    expect(row).toMatchObject({ name: "Noor", number: "7" });
    expect(row?.joined_at).not.toBeNull();
  });

  it("let a student who is signed in join a second class with the same account, and no one a class twice", async () => {
    const room = await openRoom(await newStore());
    const { store, auth, teacherId } = room;
    const first = await join(room, "Wim");
    const person = await findPerson(store, auth, cookieHeaders(first.cookies));
    const second = await makeClass(store, teacherId, "Second year");
    if (!second.ok || person.kind !== "student") throw new Error("There are a class and a student.");
    const again = await join({ ...room, code: second.code }, "Wim", ROUTER, person.userId);
    expect(again).toMatchObject({ passphrase: null, cookies: [] });
    expect((await classesOfStudent(store, person.userId)).map(({ title }) => title)).toEqual([
      "First year",
      "Second year",
    ]);
    expect((await classesOfTeacher(store, teacherId)).map(({ students }) => students)).toEqual([1, 1]);
  });

  it("stop a guesser of class codes, and a closed class's code", async () => {
    const room = await openRoom(await newStore());
    const attempt = (code: string) =>
      joinClass(room.store, room.auth, { code, name: "Eve", address: "198.51.100.9", userId: null });
    const said = [];
    for (let i = 0; i < 61; i++) said.push(await attempt("AAAAAA"));
    expect(said.filter((each) => !each.ok && each.reason === "no-class")).toHaveLength(60);
    expect(await attempt(room.code)).toMatchObject({ ok: false, reason: "too-many" });
    await room.store.db.updateTable("class").set({ archived: 1 }).execute();
    const closed = await joinClass(room.store, room.auth, {
      code: room.code,
      name: "Wim",
      address: ROUTER,
      userId: null,
    });
    expect(closed).toMatchObject({ ok: false, reason: "no-class" });
  });

  it("bring a student back by passphrase or private link, and no one by a wrong one, and count the wrong ones", async () => {
    const room = await openRoom(await newStore());
    const { store, auth, code } = room;
    const { name, passphrase } = await join(room, "Wim de Vries jr.");
    if (passphrase === null) throw new Error("A new student has a passphrase.");
    const link = writePrivateLink({ code, name, passphrase });
    const way = readPrivateLink(link.slice(link.indexOf("#")));
    expect(way).toEqual({ code, name, passphrase });
    const written = {
      code: code.toLowerCase(),
      name: "wim de vries JR.",
      passphrase: passphrase.toUpperCase().replaceAll(" ", " - "),
    };
    expect(await comeBack(store, auth, { ...written, address: ROUTER })).toMatchObject({ ok: true });
    const wrong = (i: number) =>
      comeBack(store, auth, { code, name, passphrase: "oat oat oat oat", address: `203.0.113.${i}` });
    const said = await Promise.all(Array.from({ length: 15 }, (_, i) => wrong(i)));
    expect(said.filter((each) => !each.ok && each.reason === "wrong")).toHaveLength(10);
    expect(await comeBack(store, auth, { code, name, passphrase, address: "198.51.100.3" })).toMatchObject({
      reason: "too-many",
    });
  });

  it("give a student a new passphrase, end the old one's sessions, and open no other teacher's class by it", async () => {
    const room = await openRoom(await newStore());
    const { store, auth, code } = room;
    const { memberId, name, passphrase: old, cookies } = await join(room, "Wim");
    const renewed = await newPassphrase(store, auth, memberId);
    if (!renewed.ok) throw new Error(renewed.sentence);
    expect(await findPerson(store, auth, cookieHeaders(cookies))).toEqual({ kind: "nobody" });
    expect(await comeBack(store, auth, { code, name, passphrase: old ?? "", address: ROUTER })).toMatchObject({
      ok: false,
    });
    const back = await comeBack(store, auth, { ...renewed.way, address: ROUTER });
    if (!back.ok) throw new Error(back.sentence);

    const other = { ...TEACHER, email: "other@tidemill.example" };
    await store.db
      .insertInto("user")
      .values({
        id: "other",
        name: "Bo",
        email: other.email,
        emailVerified: store.engine === "postgres" ? false : 0,
        image: null,
        createdAt: new Date().toISOString(),
        updatedAt: new Date().toISOString(),
        role: "teacher",
      })
      .execute();
    const elsewhere = await makeClass(store, "other", "Evening class");
    if (!elsewhere.ok) throw new Error(elsewhere.sentence);
    await join({ ...room, code: elsewhere.code }, "Wim", ROUTER, back.userId);
    const again = await newPassphrase(store, auth, memberId);
    if (!again.ok) throw new Error(again.sentence);
    const taken = await comeBack(store, auth, { ...again.way, address: ROUTER });
    if (!taken.ok) throw new Error(taken.sentence);
    expect((await classesOfStudent(store, taken.userId)).map(({ title }) => title)).toEqual(["First year"]);
    expect((await classesOfStudent(store, back.userId)).map(({ title }) => title)).toEqual(["Evening class"]);
  });
});

describe("a private link", () => {
  it.each(["", "#", "#ABCDEF", "#ABCDEF.Wim", "#ABCDEF.Wim.a-b.c", "#ABCDEF.%E0%A4%A.a-b-c-d"])(
    "%j is not whole",
    (fragment) => {
      expect(readPrivateLink(fragment)).toBeUndefined();
    },
  );
});
