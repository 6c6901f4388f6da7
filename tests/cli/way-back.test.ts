import { existsSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { makeAuth } from "@/lib/classroom/accounts/auth";
import { makeFirstTeacher } from "@/lib/classroom/accounts/first-teacher";
import { cookieSecret } from "@/lib/classroom/accounts/settings";
import { takeWayBack } from "@/lib/classroom/accounts/way-back";
import { ALL_MIGRATIONS } from "@/lib/classroom/store/migrations/all-migrations";
import { openForErrand, openStore } from "@/lib/classroom/store/open-store";
import { packageProgram } from "@/lib/cli/package-program.mjs";
import { PROJECT_ROOT } from "@/lib/cli/project-root.mjs";
import { runNode } from "@/lib/cli/run-node.mjs";
import { temporaryFiles } from "./temporary-files";

const files = temporaryFiles();
const TEACHER = { name: "Ida Brandt", email: "ida@tidemill.example", password: "seven tidy gulls" };

const wayBack = (words: readonly string[], data: string) =>
  runNode([packageProgram(PROJECT_ROOT, "tsx"), join(PROJECT_ROOT, "lib", "cli", "way-back.ts"), ...words], {
    cwd: PROJECT_ROOT,
    output: "keep",
    env: { PLASTERLINE_DATA: data, DATABASE_URL: "" },
  });

/** A server's store with one teacher in it, held as a running server holds it. */
async function openWithTeacher(folder: string) {
  const opening = await openStore({ folder });
  if (!opening.ok) throw new Error(opening.refusal.sentence);
  const { store } = opening;
  const auth = makeAuth(store, { secret: await cookieSecret(store), secure: false });
  const made = await makeFirstTeacher(store, auth, { ...TEACHER, word: "", address: "::1", atTheServer: true });
  if (!made.ok) throw new Error(made.sentence);
  return { store, auth };
}

const wordIn = (output: string) => /^ {2}([A-Z]{4}(?:-[A-Z]{4}){4})$/m.exec(output)?.[1] ?? "";

describe("npm run way-back", () => {
  it("tells a word that works, beside a running server and without one", async () => {
    const folder = join(files.folder(), "served");
    const { store, auth } = await openWithTeacher(folder);
    const use = (word: string) => takeWayBack(store, auth, { word, password: "nine new brooms", address: "::1" });
    const beside = await wayBack([TEACHER.email.toUpperCase()], folder);
    expect(beside).toMatchObject({ code: 0, output: expect.stringContaining("A way back for Ida Brandt") });
    expect(beside.output).toContain(`/class/way-back#${wordIn(beside.output)}`);
    expect(await use(wordIn(beside.output))).toMatchObject({ ok: true });
    await store.close();

    const alone = await wayBack([TEACHER.email], folder);
    expect(alone).toMatchObject({ code: 0 });
    const again = await openStore({ folder });
    if (!again.ok) throw new Error(again.refusal.sentence);
    const { store: reopened } = again;
    const anew = makeAuth(reopened, { secret: await cookieSecret(reopened), secure: false });
    const proof = { word: wordIn(alone.output), password: "ten tall towers", address: "::1" };
    expect(await takeWayBack(reopened, anew, proof)).toMatchObject({ ok: true });
    await reopened.close();
  }, 60_000);

  it("says why not in one sentence", async () => {
    const folder = join(files.folder(), "refused");
    const { store } = await openWithTeacher(folder);
    expect(await wayBack(["nobody@tidemill.example"], folder)).toMatchObject({
      code: 1,
      output: "No teacher here has that e-mail address. Look at it once more.\n",
    });
    await store.close();
    const nowhere = join(files.folder(), "nowhere");
    expect(await wayBack([TEACHER.email], nowhere)).toMatchObject({
      code: 1,
      output: expect.stringMatching(/^No class is kept here/),
    });
    expect((await wayBack([], nowhere)).output).toContain("npm run way-back -- E-MAIL");
    expect((await wayBack(["--help"], nowhere)).output).toContain("npm run way-back -- E-MAIL");
    expect(existsSync(nowhere)).toBe(false);
  }, 60_000);

  it("leaves the form of a running server's store alone", async () => {
    const folder = join(files.folder(), "older");
    const older = await openStore({ folder }, ALL_MIGRATIONS.slice(0, -1));
    if (!older.ok) throw new Error(older.refusal.sentence);
    expect(await openForErrand({ folder })).toMatchObject({ ok: false, refusal: { reason: "older" } });
    await older.store.close();
    // With no server running it is brought to today's form, as a start would do.
    const errand = await openForErrand({ folder });
    expect(errand).toMatchObject({ ok: true });
    if (!errand.ok) return;
    expect(await openForErrand({ folder }, ALL_MIGRATIONS.slice(0, -1))).toMatchObject({
      ok: false,
      refusal: { reason: "newer" },
    });
    await errand.store.close();
  }, 60_000);
});
