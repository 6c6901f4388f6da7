import { printErrors, wrongCall } from "./outcome";
import { runCommand } from "./run-command";

/** The command line: words in, one JSON document (or words) out, never a stack trace. */
async function main(): Promise<void> {
  const words = process.argv.slice(2);
  const inWords = words.includes("--text");
  process.stdout.on("error", () => {
    process.exitCode ??= 0; // the reader has gone; there is nobody left to tell
  });
  const { exitCode, out, errors } = await runCommand(words).catch((error: unknown) =>
    wrongCall(
      `something went wrong inside: ${error instanceof Error ? error.message : String(error)}`,
      "please report it with the files",
    ),
  );
  if (out !== "") process.stdout.write(`${out}\n`);
  process.stderr.write(printErrors(errors, inWords));
  process.exitCode = exitCode;
}

await main();
