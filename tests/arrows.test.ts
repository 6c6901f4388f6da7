import { cpSync, mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { afterAll, describe, expect, it } from "vitest";
import { cruiseArrows } from "@/lib/cli/cruise-arrows.mjs";
import { PROJECT_ROOT } from "@/lib/cli/project-root.mjs";
import { runNode } from "@/lib/cli/run-node.mjs";

const planted: string[] = [];

/** Lays out a small tree like the project's. */
function plant(files: Readonly<Record<string, string>>) {
  const root = mkdtempSync(join(tmpdir(), "plasterline-arrows-"));
  planted.push(root);
  for (const name of ["tsconfig.json", "package.json"]) cpSync(join(PROJECT_ROOT, name), join(root, name));
  for (const [path, text] of Object.entries(files)) {
    mkdirSync(dirname(join(root, path)), { recursive: true });
    writeFileSync(join(root, path), text);
  }
  return root;
}

/** Cruises a small tree with the project's rules. */
async function cruisePlanted(files: Readonly<Record<string, string>>) {
  const { modules, broken } = await cruiseArrows(plant(files), { afresh: true });
  return { modules, broken: broken.map(({ rule, from, to }) => `${from} > ${to}: ${rule}`).sort() };
}

afterAll(() => {
  for (const root of planted) rmSync(root, { recursive: true, force: true });
});

/** Enough that a parser which reads only part of the tree is noticed; the project has many more. */
const FEWEST_MODULES = 20;

/** Runs the check as `npm run arrows` does, on this project or on another root. */
function runArrows(...root: readonly string[]) {
  return runNode([join(PROJECT_ROOT, "lib", "cli", "arrows.mjs"), ...root], { cwd: PROJECT_ROOT, output: "keep" });
}

describe("the arrows of this project", () => {
  it("are read, and point one way", async () => {
    const { code, output } = await runArrows();
    const [, modules, broken] = /^(\d+) modules read, (\d+) arrows point the wrong way\.$/m.exec(output) ?? [];
    expect({ code, broken }, output).toEqual({ code: 0, broken: "0" });
    expect(Number(modules)).toBeGreaterThan(FEWEST_MODULES);
  });
});

describe("a planted arrow", () => {
  it("up the list of rooms is allowed", async () => {
    const { modules, broken } = await cruisePlanted({
      "lib/measure/length.ts": "export type Length = number;",
      "lib/plan/wall.ts": 'import type { Length } from "../measure/length";\nexport type Wall = { long: Length };',
      "app/practise/page.tsx":
        'import type { Wall } from "@/lib/plan/wall";\nexport default function Page({ wall }: { wall: Wall }) { return <p>{wall.long}</p>; }',
    });
    expect({ modules, broken }).toEqual({ modules: 3, broken: [] });
  });

  it.each([
    {
      what: "down the list of rooms",
      files: {
        "lib/measure/length.ts": 'import { grade } from "../grading/grade";\nexport const length = grade;',
        "lib/grading/grade.ts": "export const grade = 1;",
      },
      broken: ["lib/measure/length.ts > lib/grading/grade.ts: lib-measure-looks-up-only"],
    },
    {
      what: "down the list, for a type alone",
      files: {
        "lib/stage/stage.ts": 'import type { Grade } from "../grading/grade";\nexport type Stage = Grade;',
        "lib/grading/grade.ts": "export type Grade = 1;",
      },
      broken: ["lib/stage/stage.ts > lib/grading/grade.ts: lib-stage-looks-up-only"],
    },
    {
      what: "down the list, passed on by an export",
      files: {
        "lib/plan/plan.ts": 'export * from "@/lib/drawing/list";',
        "lib/drawing/list.ts": "export const list = 1;",
      },
      broken: ["lib/plan/plan.ts > lib/drawing/list.ts: lib-plan-looks-up-only"],
    },
    {
      what: "between rooms that keep apart, upward too",
      files: {
        "lib/draft/edit.ts": 'import { find } from "../photo/find";\nexport const edit = find;',
        "lib/photo/find.ts": "export const find = 1;",
      },
      broken: ["lib/draft/edit.ts > lib/photo/find.ts: lib-draft-looks-up-only"],
    },
    {
      what: "into a folder that is no room",
      files: {
        "lib/plan/plan.ts": 'import { misc } from "../odds/misc";\nexport const plan = misc;',
        "lib/odds/misc.ts": "export const misc = 1;",
      },
      broken: ["lib/plan/plan.ts > lib/odds/misc.ts: lib-is-imported-in-a-room"],
    },
    {
      what: "from lib to a page",
      files: {
        "lib/drawing/hand.ts": 'import { hand } from "@/app/_sheet/hand";\nexport const list = hand;',
        "app/_sheet/hand.tsx": "export const hand = <b />;",
      },
      broken: ["lib/drawing/hand.ts > app/_sheet/hand.tsx: lib-knows-no-page"],
    },
    {
      what: "from a page to a program",
      files: {
        "app/page.tsx": 'import { run } from "@/lib/cli/run";\nexport default function Page() { return <p>{run}</p>; }',
        "lib/cli/run.ts": "export const run = 1;",
      },
      broken: ["app/page.tsx > lib/cli/run.ts: app-leaves-programs-alone"],
    },
    {
      what: "from one route to another, and from a shared part to a route",
      files: {
        "app/draft/tool.tsx": "export const tool = <b />;",
        "app/practise/page.tsx":
          'import { tool } from "../draft/tool";\nexport default function Page() { return tool; }',
        "app/_parts/bar.tsx": 'import { tool } from "@/app/draft/tool";\nexport const bar = tool;',
      },
      broken: [
        "app/_parts/bar.tsx > app/draft/tool.tsx: shared-knows-no-route",
        "app/practise/page.tsx > app/draft/tool.tsx: route-keeps-to-itself",
      ],
    },
    {
      what: "round in a circle",
      files: {
        "lib/geometry/one.ts": 'import { two } from "./two";\nexport const one = () => two;',
        "lib/geometry/two.ts": 'import { one } from "./one";\nexport const two = () => one;',
      },
      broken: ["lib/geometry/one.ts > lib/geometry/two.ts: no-cycle"],
    },
    {
      what: "to nowhere",
      files: { "lib/geometry/one.ts": 'import { two } from "./two";\nexport const one = two;' },
      broken: ["lib/geometry/one.ts > ./two: no-broken-import"],
    },
  ])("$what is reported", async ({ files, broken }) => {
    expect((await cruisePlanted(files)).broken).toEqual(broken);
  });

  it("to a heavy or a page's package from a room that does without is reported", async () => {
    const stub = { "package.json": '{"name":"stub","main":"index.js"}', "index.js": "module.exports = {};" };
    const { broken } = await cruisePlanted({
      "node_modules/zod/package.json": stub["package.json"],
      "node_modules/zod/index.js": stub["index.js"],
      "node_modules/react/package.json": stub["package.json"],
      "node_modules/react/index.js": stub["index.js"],
      "lib/plan/read-plan.ts": 'import * as z from "zod";\nexport const plan = z;',
      "lib/exercise/read-exercise.ts": 'import * as z from "zod";\nexport const exercise = z;',
      "lib/drawing/draw.ts": 'import React from "react";\nexport const draw = React;',
      "lib/cli/start.mjs": 'import * as z from "zod";\nexport const start = z;',
      "lib/cli/later.mjs": 'export const later = () => import("zod");',
    });
    expect(broken).toEqual([
      "lib/cli/start.mjs > node_modules/zod/index.js: programs-run-before-install",
      "lib/drawing/draw.ts > node_modules/react/index.js: lib-knows-no-page",
      "lib/plan/read-plan.ts > node_modules/zod/index.js: zod-at-the-edge",
    ]);
  });
});

describe("the check", () => {
  it("fails on a planted arrow, and says which and why", async () => {
    const root = plant({
      "lib/measure/length.ts": 'import { grade } from "../grading/grade";\nexport const length = grade;',
      "lib/grading/grade.ts": "export const grade = 1;",
    });
    const { code, output } = await runArrows(root);
    expect(code).toBe(1);
    expect(output).toContain("lib/measure/length.ts imports lib/grading/grade.ts\n  lib-measure-looks-up-only: ");
    expect(output).toContain("2 modules read, 1 arrow points the wrong way.");
  });

  it("fails where it could read no module", async () => {
    const { code, output } = await runArrows(plant({ "lib/measure/notes.txt": "no module" }));
    expect(code).toBe(1);
    expect(output).toContain("No module was read, so nothing was checked.");
  });
});
