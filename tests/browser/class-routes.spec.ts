import { readdirSync } from "node:fs";
import { dirname } from "node:path";
import { expect, test } from "@playwright/test";
import { planText } from "../classroom/library/two-teachers";
import { PAGES, ROUTES, type RouteRow, type Statuses } from "./class-routes";
import { openWorld, ROLES, type Role, type World } from "./class-world";

// What one test made, the next one uses.
test.describe.configure({ mode: "serial" });

let world: World;
test.beforeAll(async () => {
  world = await openWorld();
});
test.afterAll(async () => world.close());

/** The folders below `app` that hold a file of this name. */
function foldersWith(name: string, below: RegExp): readonly string[] {
  const files = readdirSync("app", { recursive: true, encoding: "utf8" });
  return files
    .filter((file) => file.endsWith(name))
    .map((file) => dirname(file).replaceAll("\\", "/"))
    .filter((folder) => below.test(`${folder}/`));
}

async function statusOf(role: Role, path: string, body?: unknown): Promise<number> {
  const { server, cookies } = world;
  const posted = { method: "POST", body: JSON.stringify(body) };
  const answer = await fetch(`${server.address}${path}`, {
    ...(body === undefined ? {} : posted),
    headers: { "Content-Type": "application/json", Origin: server.address, Cookie: cookies[role] },
    redirect: "manual",
  });
  // A stream would go on for ever.
  await answer.body?.cancel();
  return answer.status;
}

const ask = (role: Role, folder: string, { body, query }: RouteRow) =>
  statusOf(role, `/${folder}${query?.(world) ?? ""}`, body?.(world));

const isDone = (status: number) => status === 200;

/** All that is kept of the class, and what its teacher sees of the teachers here. */
async function allKept(): Promise<string> {
  const headers = { Cookie: world.cookies.teacher };
  const kept = await fetch(`${world.server.address}/api/class/export?classId=${world.classId}`, { headers });
  const teachers = await fetch(`${world.server.address}/class/teachers`, { headers });
  const main = /<main.*<\/main>/s.exec(await teachers.text())?.[0];
  return JSON.stringify([(await kept.json()).tables, main]);
}

/** What each role was answered where it was asked. */
async function answers(
  table: Readonly<Record<string, { readonly statuses: Statuses }>>,
  which: (status: number) => boolean,
  asked: (role: Role, folder: string) => Promise<number>,
) {
  const [expected, found]: [Record<string, number>, Record<string, number>] = [{}, {}];
  for (const [folder, { statuses }] of Object.entries(table))
    for (const [i, role] of ROLES.entries()) {
      const status = statuses[i] ?? 0;
      if (!which(status)) continue;
      expected[`${folder}, ${role}`] = status;
      found[`${folder}, ${role}`] = await asked(role, folder);
    }
  return { expected, found };
}

const row = (folder: string): RouteRow => {
  const found = ROUTES[folder];
  if (!found) throw new Error(`${folder} has no row.`);
  return found;
};

test("every route and every page of Class stands in the table of who may ask it", () => {
  const routes = [...foldersWith("route.ts", /^api\//), ...foldersWith("route.ts", /^(class|live)\//)];
  expect([...routes].sort()).toEqual(Object.keys(ROUTES).sort());
  const pages = foldersWith("page.tsx", /^(class|live)\//);
  expect([...pages, "draft/library", "practise/[id]"].sort()).toEqual(Object.keys(PAGES).sort());
});

test("each page shows itself to those it is for, and is not there for the others", async () => {
  test.slow();
  const path = (folder: string) => PAGES[folder]?.path(world) ?? "";
  const { expected, found } = await answers(
    PAGES,
    () => true,
    (role, folder) => statusOf(role, path(folder)),
  );
  expect(found).toEqual(expected);
});

test("each route refuses those whom it is not for, and nothing has changed", async () => {
  test.slow();
  const before = await allKept();
  const { expected, found } = await answers(
    ROUTES,
    (status) => !isDone(status),
    (role, folder) => ask(role, folder, row(folder)),
  );
  expect(found).toEqual(expected);
  expect(await allKept()).toBe(before);
});

test("what is in another's class cannot be had by naming one's own with it", async () => {
  const { memberId, classmateId, elsewhereId, elsewhereMemberId, planId } = world;
  const handIn = row("api/class/hand-in").body?.(world) as object;
  const terms = { homeworkId: "week-one", dueAt: null, excused: true };
  const regrade = { homeworkId: "week-one", strictness: "as-set", exercises: "as-set" };
  const cases: readonly (readonly [Role, string, unknown])[] = [
    ["own student", "hand-in", { ...handIn, memberId: classmateId }],
    ["student elsewhere", "hand-in", { ...handIn, memberId: elsewhereMemberId }],
    ["teacher elsewhere", "reuse-homework", { homeworkId: "week-one", classId: elsewhereId, dueAt: null }],
    ["teacher elsewhere", "homework-terms", { ...terms, memberId: elsewhereMemberId }],
    ["teacher elsewhere", "regrade", { ...regrade, classId: elsewhereId }],
    ["teacher elsewhere", "keep-plan", { planId, base: 2, text: planText("Mine"), words: "" }],
    ["teacher", "homework-terms", { ...terms, memberId: elsewhereMemberId }],
    ["teacher", "renew-passphrase", { memberId: elsewhereMemberId }],
    ["teacher", "erase-class", { classId: elsewhereId }],
    ["teacher elsewhere", "override", { itemId: "floor", memberId: elsewhereMemberId, score: 1, reason: "None" }],
    ["teacher elsewhere", "override", { itemId: "floor", memberId, score: 1, reason: "None" }],
  ];
  for (const [role, route, body] of cases)
    expect([role, route, await statusOf(role, `/api/class/${route}`, body)]).toEqual([role, route, 403]);
});

test("each route does what it is for, for those it is for", async () => {
  test.slow();
  const { expected, found } = await answers(ROUTES, isDone, (role, folder) => ask(role, folder, row(folder)));
  expect(found).toEqual(expected);
});

test("a folder of marks is graded so often from one address, and then not for a while", async () => {
  const asked = async () => {
    const answer = await fetch(`${world.server.address}/api/class/folder`, {
      method: "POST",
      headers: { "Content-Type": "application/json", Origin: world.server.address },
      body: JSON.stringify({ files: [] }),
    });
    return { status: answer.status, reply: (await answer.json()) as { readonly sentence?: string } };
  };
  // Six of the sixty went to the table above.
  const said = [];
  for (let i = 0; i < 56; i++) said.push(await asked());
  expect(said.slice(0, 54).map(({ status }) => status)).toEqual(said.slice(0, 54).map(() => 200));
  expect(said.slice(54).map(({ status }) => status)).toEqual([429, 429]);
  expect(said.at(-1)?.reply.sentence).toMatch(/^Many folders were graded from here just now\. Wait 1[45] minutes/);
});
