import { existsSync, readdirSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { openStore } from "@/lib/classroom/store/open-store";
import { packageProgram } from "@/lib/cli/package-program.mjs";
import { PROJECT_ROOT } from "@/lib/cli/project-root.mjs";
import { runNode } from "@/lib/cli/run-node.mjs";
import { putSmallClass } from "../classroom/store/small-class";
import { temporaryFiles } from "./temporary-files";

const files = temporaryFiles();

const run = (program: string, words: readonly string[], data: string) =>
  runNode([packageProgram(PROJECT_ROOT, "tsx"), join(PROJECT_ROOT, "lib", "cli", `${program}.ts`), ...words], {
    cwd: PROJECT_ROOT,
    output: "keep",
    env: { PLASTERLINE_DATA: data, DATABASE_URL: "", INIT_CWD: files.folder() },
  });

async function open(folder: string) {
  const opening = await openStore({ folder });
  if (!opening.ok) throw new Error(opening.refusal.sentence);
  return opening.store;
}

describe("npm run backup and npm run restore", () => {
  it("save a running server's work, put it elsewhere, and refuse in one sentence what would lose something", async () => {
    const [here, there] = [join(files.folder(), "here"), join(files.folder(), "there")];
    const store = await open(here);
    expect(await run("backup", ["all.gz"], here)).toMatchObject({
      code: 1,
      output: "Nothing is kept here yet, so there is nothing to back up.\n",
    });
    await putSmallClass(store);

    const saved = await run("backup", ["all.gz"], here);
    expect(saved).toMatchObject({ code: 0, output: `6 rows are kept in ${join(files.folder(), "all.gz")}\n` });
    expect(await run("backup", [], here)).toMatchObject({ code: 0 });
    expect(readdirSync(join(here, "backups"))).toHaveLength(1);
    expect((await run("backup", ["all.gz"], here)).output).toMatch(/is there already; name another file\.\n$/);
    expect((await run("restore", ["all.gz", "--over"], here)).output).toMatch(/^Another Plasterline/);
    await store.close();

    expect(await run("restore", ["all.gz"], there)).toMatchObject({ code: 0, output: "6 rows were put back.\n" });
    expect((await run("restore", ["all.gz"], there)).output).toMatch(/say so with --over/);
    const over = await run("restore", ["all.gz", "--over"], there);
    expect(over.output).toMatch(/^6 rows were put back\. What was there before is in .*before-restore\.jsonl\.gz\n$/);
    const after = await open(there);
    expect(await after.db.selectFrom("member").select("name").execute()).toEqual([{ name: "Wim" }]);
    await after.close();
  }, 60_000);

  it("say how they are called, and do nothing, when the call is not clear", async () => {
    const nowhere = join(files.folder(), "nowhere");
    expect((await run("restore", [], nowhere)).output).toContain("npm run restore -- FILE --over");
    expect((await run("backup", ["--help"], nowhere)).output).toContain("npm run backup");
    expect(existsSync(nowhere)).toBe(false);
  });
});
