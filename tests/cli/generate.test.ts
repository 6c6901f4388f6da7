import { describe, expect, it } from "vitest";
import { runCommand } from "@/lib/cli/run-command";
import { readExercise } from "@/lib/exercise/read-exercise";

const GOOD = ["generate", "--unit", "walls", "--level", "2", "--seed", "4711"];

describe("generate", () => {
  it("prints one exercise that can be read, and nothing else", async () => {
    const { exitCode, out, errors } = await runCommand(GOOD);
    expect([exitCode, errors]).toEqual([0, []]);
    const reading = readExercise(out);
    expect(reading.ok && [reading.exercise.id, reading.exercise.unit, reading.exercise.level]).toEqual([
      "walls-2-4711",
      "walls",
      2,
    ]);
  });

  it("prints the same bytes for the same seed, and others for another", async () => {
    const [once, again] = [await runCommand(GOOD), await runCommand(GOOD)];
    const other = await runCommand([...GOOD.slice(0, -1), "4712"]);
    expect(again.out).toBe(once.out);
    expect(other.out).not.toBe(once.out);
  });

  it("takes its options in any order and either way of writing", async () => {
    const { out } = await runCommand(["--seed=4711", "generate", "--level=2", "--unit=walls"]);
    expect(out).toBe((await runCommand(GOOD)).out);
  });

  it("says it in words with --text", async () => {
    const { exitCode, out } = await runCommand([...GOOD, "--text"]);
    expect(exitCode).toBe(0);
    expect(out).toMatch(/\(walls-2-4711\)\n.*Hobbin Mill.*\n/);
    expect(out.split("\n").at(-1)).toMatch(/^Asked: [A-Z]\.foot, /);
  });

  it.each([
    {
      what: "no options",
      words: ["generate"],
      message: /needs --unit, --level, --seed/,
      hint: /--unit U --level N --seed S/,
    },
    { what: "no seed", words: GOOD.slice(0, 5), message: /needs --seed/, hint: /generate --unit/ },
    { what: "an unknown unit", words: [...GOOD, "--unit", "wals"], message: /no unit "wals"/, hint: /"walls"/ },
    { what: "level 0", words: [...GOOD, "--level", "0"], message: /no level "0"/, hint: /1 to 5/ },
    { what: "level 6", words: [...GOOD, "--level", "6"], message: /no level "6"/, hint: /1 to 5/ },
    { what: "level 2.5", words: [...GOOD, "--level", "2.5"], message: /no level "2.5"/, hint: /1 to 5/ },
    { what: "an empty level", words: [...GOOD, "--level", ""], message: /no level ""/, hint: /1 to 5/ },
    { what: "a seed below 0", words: [...GOOD, "--seed=-1"], message: /"-1" is not a seed/, hint: /whole number/ },
    {
      what: "a seed that is a word",
      words: [...GOOD, "--seed", "tide"],
      message: /"tide" is not a seed/,
      hint: /4711/,
    },
    { what: "half a seed", words: [...GOOD, "--seed", "1.5"], message: /"1.5" is not a seed/, hint: /whole/ },
    { what: "no seed at all", words: [...GOOD, "--seed", ""], message: /"" is not a seed/, hint: /whole/ },
    {
      what: "a seed too large",
      words: [...GOOD, "--seed", "9007199254740993"],
      message: /not a seed/,
      hint: /9007199254740991/,
    },
    {
      what: "a file besides",
      words: [...GOOD, "more.json"],
      message: /"more.json" is one word too many/,
      hint: /generate/,
    },
    { what: "an option of nobody's", words: [...GOOD, "--colour", "red"], message: /--colour/, hint: /see/ },
  ])("refuses $what", async ({ words, message, hint }) => {
    const { exitCode, out, errors } = await runCommand(words);
    expect([exitCode, out, errors.length]).toEqual([2, "", 1]);
    expect(errors[0]?.message).toMatch(message);
    expect(errors[0]?.hint).toMatch(hint);
    expect(errors[0]?.file).toBeNull();
  });

  it("takes the largest seed", async () => {
    const { exitCode, out } = await runCommand([...GOOD, "--seed", "9007199254740991"]);
    expect(exitCode).toBe(0);
    expect(readExercise(out).ok).toBe(true);
  });

  it("keeps its options to itself", async () => {
    const { exitCode, errors } = await runCommand(["truth", "set.json", "--seed", "1"]);
    expect([exitCode, errors[0]?.message]).toEqual([2, "truth takes no --seed"]);
  });
});
