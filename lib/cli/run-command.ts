import { parseArgs } from "node:util";
import { nearestName } from "../exercise/nearest-name";
import { type Outcome, wrongCall } from "./outcome";
import { construct } from "./verb-construct";
import { grade } from "./verb-grade";
import { truth } from "./verb-truth";
import { validate } from "./verb-validate";

type Verb = {
  readonly usage: string;
  readonly does: string;
  readonly run: (files: readonly string[], text: boolean) => Outcome | Promise<Outcome>;
};

const VERBS: ReadonlyMap<string, Verb> = new Map([
  [
    "validate",
    { usage: "validate FILE...", does: "checks the form and the sense of exercise and marks files", run: validate },
  ],
  ["truth", { usage: "truth EXERCISE", does: "prints where every named point falls in the picture", run: truth }],
  [
    "grade",
    {
      usage: "grade EXERCISE MARKS...",
      does: "grades sets of marks (files, or a .jsonl with one set a line)",
      run: grade,
    },
  ],
  [
    "construct",
    { usage: "construct EXERCISE POINT", does: "the ruler construction of a point, step by step", run: construct },
  ],
]);

const USAGE = [
  "npm run --silent plasterline -- VERB ... [--text]",
  "",
  ...[...VERBS.values()].map(({ usage, does }) => `  ${usage.padEnd(26)}${does}`),
  "",
  "It prints JSON; with --text, words. Exit 0: done. 1: does not pass. 2: the input or the call was wrong.",
].join("\n");

/** One call of the command line, from its words to what it prints. */
export async function runCommand(words: readonly string[]): Promise<Outcome> {
  let call: { values: { text?: boolean; help?: boolean }; positionals: string[] };
  try {
    call = parseArgs({
      args: [...words],
      options: { text: { type: "boolean" }, help: { type: "boolean" } },
      allowPositionals: true,
    });
  } catch (error) {
    return wrongCall(
      error instanceof Error ? firstSentence(error.message) : "the call cannot be read",
      `see: ${firstLine(USAGE)}`,
    );
  }
  const [verb, ...files] = call.positionals;
  if (call.values.help || verb === "help") return { exitCode: 0, out: USAGE, errors: [] };
  if (verb === undefined) return wrongCall("say what to do", `one of ${[...VERBS.keys()].join(", ")}`);
  const known = VERBS.get(verb);
  if (!known)
    return wrongCall(
      `there is no verb "${verb}"`,
      `did you mean "${nearestName(verb, VERBS.keys())}"? The verbs are ${[...VERBS.keys()].join(", ")}`,
    );
  return known.run(files, call.values.text === true);
}

function firstSentence(message: string): string {
  return message.split(/[.\n]/)[0] ?? message;
}

function firstLine(text: string): string {
  return text.split("\n")[0] ?? text;
}
