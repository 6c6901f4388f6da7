import { runCommand } from "./run-command";

/** The command line: words in, one JSON document (or words) out, never a stack trace. */
async function main(): Promise<void> {
  const words = process.argv.slice(2);
  const inWords = words.includes("--text");
  process.stdout.on("error", () => {
    process.exitCode ??= 0; // the reader has gone; there is nobody left to tell
  });
  try {
    const { exitCode, out, errors } = await runCommand(words);
    if (out !== "") process.stdout.write(`${out}\n`);
    for (const error of errors)
      process.stderr.write(
        inWords
          ? `${[error.file, error.where].filter(Boolean).join(" at ")}${error.file || error.where ? ": " : ""}${error.message}. ${error.hint}.\n`
          : `${JSON.stringify({ error })}\n`,
      );
    process.exitCode = exitCode;
  } catch (error) {
    const message = error instanceof Error ? error.message : String(error);
    process.stderr.write(
      `${JSON.stringify({ error: { file: null, where: "", message: `something went wrong inside: ${message}`, hint: "please report it with the files" } })}\n`,
    );
    process.exitCode = 2;
  }
}

await main();
