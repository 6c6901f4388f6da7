import { getMigrations } from "better-auth/db/migration";
import { expect, it } from "vitest";
import { findPerson } from "@/lib/classroom/access/find-person";
import { authOptions, makeAuth } from "@/lib/classroom/accounts/auth";
import { firstRun, makeFirstTeacher } from "@/lib/classroom/accounts/first-teacher";
import { cookieSecret, firstRunWord } from "@/lib/classroom/accounts/settings";
import { prove, signIn } from "@/lib/classroom/accounts/sign-in";
import { onBothEngines } from "../engines";
import { cookieHeaders, openRoom, passQuarterHour, ROUTER, TEACHER } from "./room";

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

  it("stop a guesser of one password where they sit, and let the owner in from elsewhere", async () => {
    const { store, auth } = await openRoom(await newStore());
    const guess = (i: number, address: string) =>
      signIn(store, auth, { email: TEACHER.email, password: `guess ${i}`, address });
    // Far more than the account has for all addresses together: those that are stopped do not count there.
    const said = await Promise.all(Array.from({ length: 130 }, (_, i) => guess(i, "203.0.113.66")));
    expect(said.filter((each) => !each.ok && each.reason === "wrong")).toHaveLength(10);
    expect(said.filter((each) => !each.ok && each.reason === "too-many")).toHaveLength(120);
    const owner = { email: TEACHER.email, password: TEACHER.password };
    const there = await signIn(store, auth, { ...owner, address: "203.0.113.66" });
    expect(there.ok ? "" : there.sentence).toMatch(/^There were too many wrong tries\. Wait 1[45] minutes/);
    expect(await signIn(store, auth, { ...owner, address: "203.0.113.99" })).toMatchObject({ ok: true });
    // That the owner came in elsewhere gives the guesser nothing new.
    expect(await guess(0, "203.0.113.66")).toMatchObject({ reason: "too-many" });
    await passQuarterHour(store);
    expect(await signIn(store, auth, { ...owner, address: "203.0.113.66" })).toMatchObject({ ok: true });
  });

  it("stop a guesser of one password who has many addresses, after a hundred wrong ones in all", async () => {
    const { store, auth } = await openRoom(await newStore());
    const account = TEACHER.email.toLowerCase();
    // No password is digested here: a hundred of them would take a minute.
    const guess = (i: number) =>
      prove(store, auth, { account, address: `203.0.113.${i % 20}`, wrong: "" }, async () => undefined);
    const said = await Promise.all(Array.from({ length: 140 }, (_, i) => guess(i)));
    expect(said.filter((each) => !each.ok && each.reason === "wrong")).toHaveLength(100);
    expect(said.filter((each) => !each.ok && each.reason === "too-many")).toHaveLength(40);
    const owner = { email: TEACHER.email, password: TEACHER.password, address: "203.0.113.99" };
    expect(await signIn(store, auth, owner)).toMatchObject({ reason: "too-many" });
    await passQuarterHour(store);
    expect(await signIn(store, auth, owner)).toMatchObject({ ok: true });
  });

  it("let a known browser in, whatever others try from the same address or from everywhere", async () => {
    const { store, auth } = await openRoom(await newStore());
    const account = TEACHER.email.toLowerCase();
    const owner = { email: TEACHER.email, password: TEACHER.password, address: ROUTER };
    const before = await signIn(store, auth, owner);
    if (!before.ok) throw new Error(before.sentence);
    const headers = cookieHeaders(before.cookies);
    await auth.signOut(headers);
    // What is left after signing out opens nothing, and says nothing about whose it is.
    const known = cookieHeaders(before.cookies.filter((line) => line.startsWith("plasterline.known=")));
    expect(await findPerson(store, auth, known)).toEqual({ kind: "nobody" });
    expect(known.get("cookie")).toMatch(/^plasterline\.known=[\w-]{22}\.[\w-]{43}$/);
    const guess = (i: number) =>
      prove(
        store,
        auth,
        { account, address: i < 60 ? ROUTER : `203.0.113.${i % 20}`, wrong: "" },
        async () => undefined,
      );
    for (let i = 0; i < 200; i++) await guess(i);
    expect(await signIn(store, auth, owner)).toMatchObject({ reason: "too-many" });
    expect(await signIn(store, auth, { ...owner, headers: known })).toMatchObject({ ok: true });
    // It is known for this one account, and has no more tries than anybody.
    expect(auth.known(known, account)).toBeDefined();
    expect(auth.known(known, "other@tidemill.example")).toBeUndefined();
    const forged = new Headers({
      cookie: known.get("cookie")?.replace(/.$/, (last) => (last === "A" ? "E" : "A")) ?? "",
    });
    expect(auth.known(forged, account)).toBeUndefined();
    expect(auth.known(new Headers(), account)).toBeUndefined();
    const again = () =>
      prove(store, auth, { account, address: ROUTER, headers: known, wrong: "" }, async () => undefined);
    const said = await Promise.all(Array.from({ length: 12 }, again));
    expect(said.filter((each) => !each.ok && each.reason === "wrong")).toHaveLength(10);
    expect(said.filter((each) => !each.ok && each.reason === "too-many")).toHaveLength(2);
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
});
