import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll } from "vitest";

/** A folder of files for one test file: `write` puts one there and gives its path. It is gone after the tests. */
export function temporaryFiles(): {
  readonly folder: () => string;
  readonly write: (name: string, text: string) => string;
} {
  let folder = "";
  beforeAll(() => {
    folder = mkdtempSync(join(tmpdir(), "plasterline-"));
  });
  afterAll(() => {
    rmSync(folder, { recursive: true, force: true });
  });
  return {
    folder: () => folder,
    write: (name, text) => {
      const path = join(folder, name);
      writeFileSync(path, text);
      return path;
    },
  };
}
