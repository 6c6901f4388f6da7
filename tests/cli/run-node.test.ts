import { spawn } from "node:child_process";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { describe, expect, it } from "vitest";
import { PROJECT_ROOT } from "@/lib/cli/project-root.mjs";
import { runNode } from "@/lib/cli/run-node.mjs";

const keep = { cwd: tmpdir(), output: "keep" } as const;

describe("runNode", () => {
  it("returns what the program printed and how it ended", async () => {
    const program = 'console.log(process.argv[1]); console.error("then"); process.exitCode = 3;';
    expect(await runNode(["-e", program, "a word; and $more"], keep)).toEqual({
      code: 3,
      output: "a word; and $more\nthen\n",
      stopped: false,
    });
  });

  it("keeps the framework from reporting on its users", async () => {
    const { output } = await runNode(["-p", "process.env.NEXT_TELEMETRY_DISABLED + process.env.OWN"], {
      ...keep,
      env: { OWN: "!" },
    });
    expect(output).toBe("1!\n");
  });

  it("fails, with the reason, where it cannot even start", async () => {
    const { code, output } = await runNode(["-e", ""], { ...keep, cwd: join(tmpdir(), "no", "such", "folder") });
    expect(code).toBe(1);
    expect(output).toMatch(/ENOENT/);
  });

  it("takes the program along when it is stopped", async () => {
    const runner = pathToFileURL(join(PROJECT_ROOT, "lib", "cli", "run-node.mjs")).href;
    const child = "console.log(process.pid); setInterval(() => {}, 1000)";
    const parent = `
      const { runNode } = await import(${JSON.stringify(runner)});
      const { stopped } = await runNode(["-e", ${JSON.stringify(child)}], { cwd: "." });
      console.log(stopped ? "stopped" : "ended");
    `;
    const running = spawn(process.execPath, ["--input-type=module", "-e", parent], {
      stdio: ["ignore", "pipe", "inherit"],
    });
    let said = "";
    const pid = await new Promise<number>((resolve) => {
      running.stdout.on("data", (chunk) => {
        said += chunk;
        if (said.endsWith("\n")) resolve(Number.parseInt(said, 10));
      });
    });
    expect(() => process.kill(pid, 0)).not.toThrow();
    running.kill("SIGTERM");
    await new Promise((resolve) => running.once("close", resolve));
    expect(said).toBe(`${pid}\nstopped\n`);
    expect(() => process.kill(pid, 0)).toThrow(/ESRCH/);
  });
});
