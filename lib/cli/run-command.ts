import { parseArgs } from "node:util";
import { nearestName } from "../exercise/nearest-name";
import { type Outcome, wrongCall } from "./outcome";
import { construct } from "./verb-construct";
import { DRAW_USAGE, draw } from "./verb-draw";
import { generate } from "./verb-generate";
import { grade } from "./verb-grade";
import { READ_USAGE, read } from "./verb-read";
import { truth } from "./verb-truth";
import { validate } from "./verb-validate";

type Verb = {
  readonly usage: string;
  readonly does: string;
  /** Names of the options that only some verbs take, each with a word after it: `--unit walls`. */
  readonly options?: readonly string[];
  readonly run: (files: readonly string[], text: boolean, options: Options) => Outcome | Promise<Outcome>;
};

type Options = Readonly<Record<string, string>>;

const VERBS: ReadonlyMap<string, Verb> = new Map<string, Verb>([
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
  [
    "draw",
    {
      usage: DRAW_USAGE,
      does: "a drawing in real millimetres: --paper, --key, --point, --line, --dpi",
      options: ["view", "out", "paper", "key", "point", "line", "dpi"],
      run: draw,
    },
  ],
  [
    "generate",
    {
      usage: "generate --unit U --level N --seed S",
      does: "a new exercise; the same seed gives the same one",
      options: ["unit", "level", "seed"],
      run: generate,
    },
  ],
  [
    "read",
    {
      usage: READ_USAGE,
      does: "the pencil marks on a photographed sheet, as a marks file: --out",
      options: ["out"],
      run: read,
    },
  ],
]);

/** The options of all verbs, as `parseArgs` wants them. */
const WORD_OPTIONS = Object.fromEntries(
  [...VERBS.values()].flatMap(({ options = [] }) => options.map((name) => [name, { type: "string" } as const])),
);

const USAGE = [
  "npm run --silent plasterline -- VERB ... [--text]",
  "",
  ...[...VERBS.values()].map(({ usage, does }) => `  ${usage.padEnd(38)}${does}`),
  "",
  "It prints JSON; with --text, words. Exit 0: done. 1: does not pass. 2: the input or the call was wrong.",
].join("\n");

/** One call of the command line, from its words to what it prints. */
export async function runCommand(words: readonly string[]): Promise<Outcome> {
  let call: { values: Readonly<Record<string, string | boolean | undefined>>; positionals: string[] };
  try {
    call = parseArgs({
      args: [...words],
      options: { ...WORD_OPTIONS, text: { type: "boolean" }, help: { type: "boolean" } },
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
  const options = Object.fromEntries(
    Object.entries(call.values).filter((entry): entry is [string, string] => typeof entry[1] === "string"),
  );
  const strange = Object.keys(options).find((name) => !known.options?.includes(name));
  if (strange !== undefined) return wrongCall(`${verb} takes no --${strange}`, known.usage);
  return known.run(files, call.values.text === true, options);
}

function firstSentence(message: string): string {
  return message.split(/[.\n]/)[0] ?? message;
}

function firstLine(text: string): string {
  return text.split("\n")[0] ?? text;
}
