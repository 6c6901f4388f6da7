import { describe, expect, it } from "vitest";
import { runCommand } from "@/lib/cli/run-command";
import { commandFiles, MARKS, printed } from "./call-in-process";

const files = commandFiles();

describe("validate", () => {
  it("passes the format's own example and marks for it", async () => {
    const [one, two] = [files.exercise(), files.marks("marks.json")];
    expect(await printed(0, "validate", one, two)).toEqual({
      files: [
        { file: one, ok: true, findings: [] },
        { file: two, ok: true, findings: [] },
      ],
    });
  });

  it("passes notes, and says them", async () => {
    const path = files.exercise(["/plan/corners/Q", [0, 5]]);
    expect(await printed(0, "validate", path)).toEqual({
      files: [
        {
          file: path,
          ok: true,
          findings: [
            { where: "/plan/corners/Q", message: expect.any(String), hint: expect.any(String), weight: "note" },
          ],
        },
      ],
    });
  });

  it.each([
    ["no sense", ["/task/marks/0", "A.heel"], "/task/marks/0"],
    ["no form", ["/plan/walls/0/heigth", 3], "/plan/walls/0/heigth"],
    ["an impossible rise", ["/viewer", { backWallRise: 9, eyeHeight: 8 }], "/viewer/backWallRise"],
  ] as const)("does not pass what has %s, and passes what stands beside it", async (_, changed, where) => {
    const [bad, good] = [files.exercise(changed), files.marks("marks.json")];
    const { files: reports } = await printed(1, "validate", bad, good);
    expect(reports).toMatchObject([
      { file: bad, ok: false, findings: [{ where, weight: "fault" }] },
      { file: good, ok: true, findings: [] },
    ]);
  });

  it.each([
    ["is not JSON", '{"format": '],
    ["is larger than 1 MiB", `"${"x".repeat(1024 * 1024)}"`],
    ["is no exercise", "[]"],
    ["is empty", ""],
    ["is not text", "\u0000\uFFFD\u0001"],
  ])("does not pass a file that %s", async (_, text) => {
    const path = files.write("broken.json", text);
    const { files: reports } = await printed(1, "validate", path);
    expect(reports[0]).toMatchObject({ file: path, ok: false, findings: [{ where: "", weight: "fault" }] });
  });

  it("does not pass a file that is nested without end, and points as deep as it read", async () => {
    const path = files.write("deep.json", "[".repeat(400_000) + "]".repeat(400_000));
    const { files: reports } = await printed(1, "validate", path);
    expect(reports).toMatchObject([{ ok: false, findings: [{ where: "/0".repeat(100), weight: "fault" }] }]);
  });

  it("says the line of what is wrong in a .jsonl, and passes blank lines", async () => {
    const good = JSON.stringify(MARKS);
    const path = files.write("class.jsonl", `${good}\r\n\n${JSON.stringify({ ...MARKS, marks: 3 })}\n${good}`);
    const { files: reports } = await printed(1, "validate", path);
    expect(reports).toMatchObject([{ ok: false, findings: [{ where: "/marks" }] }]);
    expect(reports[0].findings[0].message).toMatch(/^line 3: /);
  });

  it("says in words what it found", async () => {
    const { exitCode, out } = await runCommand(["validate", "--text", files.exercise(["/task/marks/0", "A.heel"])]);
    expect(exitCode).toBe(1);
    expect(out).toMatch(/does not pass\n {2}fault at \/task\/marks\/0: A\.heel names no point/);
    expect(out).not.toContain("{");
  });
});
