import { type ChildProcess, spawn } from "node:child_process";
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { findFreePort } from "@/lib/cli/try-port.mjs";
import { waitForAnswer } from "@/lib/cli/wait-for-answer.mjs";

/** A server of its own for a course that is not the project's. */
export type OtherCourse = { readonly address: string; readonly close: () => Promise<void> };

/** Serves the built pages with these files, by path below the course's folder, in place of the project's exercises. */
export async function serveCourse(files: Readonly<Record<string, string>>): Promise<OtherCourse> {
  const folder = mkdtempSync(join(tmpdir(), "plasterline-course-"));
  for (const [file, text] of Object.entries(files)) {
    mkdirSync(join(folder, file, ".."), { recursive: true });
    writeFileSync(join(folder, file), text);
  }
  const port = await findFreePort();
  const server: ChildProcess = spawn(
    process.execPath,
    [join("node_modules", "next", "dist", "bin", "next"), "start", "-H", "127.0.0.1", "-p", String(port)],
    { stdio: "ignore", env: { ...process.env, NEXT_TELEMETRY_DISABLED: "1", PLASTERLINE_EXERCISES: folder } },
  );
  const address = `http://127.0.0.1:${port}`;
  await waitForAnswer(address, () => server.exitCode === null);
  const close = async () => {
    const gone = new Promise((resolve) => server.once("close", resolve));
    server.kill();
    await gone;
    rmSync(folder, { recursive: true, force: true });
  };
  return { address, close };
}

/** An exercise file with what a test needs to be different. */
export function exerciseText(id: string, change: Readonly<Record<string, unknown>> = {}): string {
  return JSON.stringify({
    format: "plasterline.exercise/1",
    id,
    version: 1,
    title: `Trial ${id}`,
    unit: "floor",
    level: 1,
    units: "ft-in",
    scale: "1/4in=1ft",
    stage: { opening: { width: 32, height: 20 }, depth: 26, apron: 3 },
    viewer: { distance: 36, eyeHeight: 8 },
    plan: { corners: { Q: [6, 10] } },
    task: { kind: "plan-to-picture", marks: ["Q.foot"] },
    ...change,
  });
}

/** A plan of many short walls in rows, all inside the frame. */
export function manyWalls(count: number): Readonly<Record<string, unknown>> {
  const corners: Record<string, [number, number]> = { Q: [0, 12] };
  const walls: Record<string, unknown>[] = [];
  for (let i = 0; i < count; i++) {
    const [x, y] = [-13 + (i % 20) * 1.3, 2 + Math.floor(i / 20) * 2.2];
    corners[`A${i}`] = [x, y];
    corners[`B${i}`] = [x + 0.9, y + 0.8];
    walls.push({ id: `W${i}`, from: `A${i}`, to: `B${i}`, height: 6 });
  }
  const given = walls.flatMap((_, i) => [`A${i}.foot`, `A${i}.top`, `B${i}.foot`, `B${i}.top`]);
  return { plan: { corners, walls }, task: { kind: "plan-to-picture", given, marks: ["Q.foot"] } };
}
