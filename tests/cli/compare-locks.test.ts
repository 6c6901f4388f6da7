import { describe, expect, it } from "vitest";
import { sameLocks } from "@/lib/cli/compare-locks.mjs";

const pencil = { version: "1.2.0", integrity: "sha512-pencil" };
const rule = { version: "3.0.0", integrity: "sha512-rule" };
const project = { version: "0.1.0" };

describe("sameLocks", () => {
  it.each([
    { what: "all is there", asked: { pencil, rule }, installed: { pencil, rule }, same: true },
    { what: "a package is missing", asked: { pencil, rule }, installed: { pencil }, same: false },
    { what: "a package is left over", asked: { pencil }, installed: { pencil, rule }, same: false },
    {
      what: "a version differs",
      asked: { pencil },
      installed: { pencil: { ...pencil, version: "1.2.1" } },
      same: false,
    },
    {
      what: "the content differs",
      asked: { pencil },
      installed: { pencil: { ...pencil, integrity: "sha512-other" } },
      same: false,
    },
    {
      what: "what is missing is for another system",
      asked: { pencil, rule: { ...rule, optional: true } },
      installed: { pencil },
      same: true,
    },
    {
      what: "an optional package is of another version",
      asked: { rule: { ...rule, optional: true } },
      installed: { rule: { ...rule, version: "2.9.0" } },
      same: false,
    },
    { what: "nothing is installed", asked: { pencil }, installed: {}, same: false },
  ])("$what: $same", ({ asked, installed, same }) => {
    expect(sameLocks({ packages: { "": project, ...asked } }, { packages: installed })).toBe(same);
  });

  it("takes a lock without packages for an empty one", () => {
    expect(sameLocks({ packages: { "": project, pencil } }, {})).toBe(false);
  });
});
