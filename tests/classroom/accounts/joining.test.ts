import { describe, expect, it } from "vitest";
import { findPerson } from "@/lib/classroom/access/find-person";
import { classesOfStudent, classesOfTeacher, makeClass } from "@/lib/classroom/accounts/classes";
import { comeBack, newPassphrase } from "@/lib/classroom/accounts/come-back";
import { joinClass } from "@/lib/classroom/accounts/join-class";
import { readPrivateLink, writePrivateLink } from "@/lib/classroom/accounts/private-link";
import { onBothEngines } from "../engines";
import { cookieHeaders, join, openRoom, ROUTER, TEACHER } from "./room";

onBothEngines("students", ({ newStore }) => {
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
    const { name, passphrase, cookies } = await join(room, "Wim de Vries jr.");
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
    // A classmate tries another's name, over and over.
    const wrong = () => comeBack(store, auth, { code, name, passphrase: "oat oat oat oat", address: "203.0.113.66" });
    const said = await Promise.all(Array.from({ length: 120 }, wrong));
    expect(said.filter((each) => !each.ok && each.reason === "wrong")).toHaveLength(10);
    expect(await comeBack(store, auth, { code, name, passphrase, address: "203.0.113.66" })).toMatchObject({
      reason: "too-many",
    });
    expect(await comeBack(store, auth, { code, name, passphrase, address: "198.51.100.3" })).toMatchObject({
      ok: true,
    });
    // Behind the same router the browser that Wim joined with is known.
    const headers = cookieHeaders(cookies);
    expect(await comeBack(store, auth, { code, name, passphrase, address: "203.0.113.66", headers })).toMatchObject({
      ok: true,
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
