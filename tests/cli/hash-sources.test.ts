import { mkdirSync, mkdtempSync, rmSync, utimesSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { hashSources } from "@/lib/cli/hash-sources.mjs";

let root = "";

function write(path: string, content: string) {
  mkdirSync(dirname(join(root, path)), { recursive: true });
  writeFileSync(join(root, path), content);
}

beforeEach(() => {
  root = mkdtempSync(join(tmpdir(), "plasterline-hash-"));
  write("app/page.tsx", "page");
  write("lib/stage/stage.ts", "stage");
  write("exercises/box.json", "{}");
  write("package-lock.json", "{}");
});
afterEach(() => rmSync(root, { recursive: true, force: true }));

describe("hashSources", () => {
  it("is the same for the same content, whatever the files' times", () => {
    const before = hashSources(root);
    utimesSync(join(root, "app/page.tsx"), new Date(0), new Date(0));
    expect(hashSources(root)).toBe(before);
  });

  it.each([
    { what: "a page changes", change: () => write("app/page.tsx", "Page") },
    { what: "a page is added", change: () => write("app/draft/page.tsx", "") },
    { what: "a file moves", change: () => [rmSync(join(root, "app/page.tsx")), write("app/home.tsx", "page")] },
    { what: "an exercise changes", change: () => write("exercises/box.json", "{ }") },
    { what: "a package changes", change: () => write("package-lock.json", '{"lockfileVersion":3}') },
    { what: "a setting is added", change: () => write("next.config.mjs", "") },
    {
      what: "text moves from one file's end to the next one's start",
      change: () => [write("lib/stage/a.ts", "one"), write("lib/stage/b.ts", "")],
    },
  ])("differs when $what", ({ change }) => {
    const before = hashSources(root);
    change();
    expect(hashSources(root)).not.toBe(before);
  });

  it.each(["lib/cli/start.mjs", "tests/arrows.test.ts", "README.md", ".next/BUILD_ID"])("does not mind %s", (path) => {
    const before = hashSources(root);
    write(path, "new");
    expect(hashSources(root)).toBe(before);
  });
});
