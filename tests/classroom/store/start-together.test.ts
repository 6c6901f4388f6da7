import { existsSync, statSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { openStore } from "@/lib/classroom/store/open-store";
import { hasPostgres, opened, storesOf } from "../engines";
import { killServer } from "./kill-server";
import { childProgram, startChild } from "./start-child";

/** `npm run bench` kills fifty times. */
const KILLS = Number(process.env.PLASTERLINE_KILLS ?? 10);
const A_KILL_MS = 6000;

const program = childProgram();

describe.skipIf(!hasPostgres)("servers on one PostgreSQL", () => {
  const { newPlace } = storesOf("postgres");

  it("lets thirty-two processes start at once on a new database", async () => {
    const place = await newPlace();
    const children = await Promise.all(Array.from({ length: 32 }, () => startChild(program(), place)));
    for (const child of children) child.say("open");
    const said = await Promise.all(children.map((child) => child.line()));
    for (const child of children) child.say("close");
    await Promise.all(children.map(({ ended }) => ended));
    expect(said).toEqual(children.map(() => "opened"));
  }, 180_000);

  it(
    `loses no acknowledged hand-in when its server is killed, ${KILLS} times`,
    async () => {
      const { acknowledged, lost } = await killServer(program(), await newPlace(), KILLS);
      expect(lost).toEqual([]);
      expect(acknowledged).toBeGreaterThan(KILLS);
    },
    KILLS * A_KILL_MS,
  );
});

describe("servers on one folder", () => {
  const { newPlace } = storesOf("sqlite");

  it("refuses a second process in plain words, and lets the next one in when the first is killed", async () => {
    const place = await newPlace();
    const first = await startChild(program(), place);
    first.say("open");
    expect(await first.line()).toBe("opened");
    const second = await startChild(program(), place);
    second.say("open");
    expect(await second.line()).toMatch(/^Another Plasterline on this computer is already using this data folder\. /);
    first.kill();
    await first.ended;
    await (await opened(place)).close();
  }, 60_000);

  it("refuses a second store in this process as well", async () => {
    const place = await newPlace();
    const store = await opened(place);
    expect(await openStore(place)).toMatchObject({ ok: false, refusal: { reason: "held" } });
    await store.close();
  });

  it("keeps its folder to its owner", async () => {
    const place = await newPlace();
    const store = await opened({ folder: join(place.folder, "deep", "data") });
    await store.close();
    expect(existsSync(join(place.folder, "deep", "data", "plasterline.db"))).toBe(true);
    if (process.platform !== "win32") expect(statSync(join(place.folder, "deep", "data")).mode & 0o777).toBe(0o700);
  });

  it(
    `loses no acknowledged hand-in when its server is killed, ${KILLS} times`,
    async () => {
      const { acknowledged, lost } = await killServer(program(), await newPlace(), KILLS);
      expect(lost).toEqual([]);
      expect(acknowledged).toBeGreaterThan(KILLS);
    },
    KILLS * A_KILL_MS,
  );
});
