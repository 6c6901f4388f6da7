import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { loadExercises } from "@/lib/exercise/load-exercises";
import { writeTideOffice } from "../fixtures/tide-office";

const COURSE = fileURLToPath(new URL("../../exercises", import.meta.url));

describe("the exercises of the course", () => {
  it("can all be used, each under its own id and in its unit's folder", async () => {
    const entries = await loadExercises(COURSE);
    expect(entries.filter(({ ok }) => !ok)).toEqual([]);
    const exercises = entries.flatMap((entry) => (entry.ok ? [entry] : []));
    expect(exercises.length).toBeGreaterThan(2);
    expect(new Set(exercises.map(({ exercise }) => exercise.id)).size).toBe(exercises.length);
    for (const { file, exercise } of exercises) expect(file).toMatch(new RegExp(`^${exercise.unit}/`));
  });
});

describe("loadExercises", () => {
  let folder = "";
  beforeAll(() => {
    folder = mkdtempSync(join(tmpdir(), "course-"));
    mkdirSync(join(folder, "walls"));
    const write = (name: string, text: string) => writeFileSync(join(folder, "walls", name), text);
    write("good.json", JSON.stringify(writeTideOffice()));
    write("broken.json", "{");
    write("crossed.json", JSON.stringify(writeTideOffice(["/task/marks", []])));
    write("noted.json", JSON.stringify(writeTideOffice(["/plan/corners/Q", [0, 5]])));
    write("read-me.txt", "no exercise");
  });
  afterAll(() => {
    rmSync(folder, { recursive: true, force: true });
  });

  it("lists every exercise by its path, a broken one with what is wrong with it", async () => {
    const entries = await loadExercises(folder);
    expect(entries.map(({ file, ok }) => [file, ok])).toEqual([
      ["walls/broken.json", false],
      ["walls/crossed.json", false],
      ["walls/good.json", true],
      ["walls/noted.json", true],
    ]);
    expect(entries[0]).toMatchObject({ problems: [{ where: "" }] });
    expect(entries[1]).toMatchObject({ problems: [{ where: "/task/marks", weight: "fault" }] });
  });
});
