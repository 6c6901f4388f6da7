import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { findDuplicateKey } from "@/lib/exercise/find-duplicate-key";
import { MAX_FILE_BYTES, readJson } from "@/lib/exercise/read-json";
import { seeded } from "../seeded";

function problem(text: string) {
  const reading = readJson(text);
  if (reading.ok) throw new Error("It was read.");
  return reading.problem;
}

describe("readJson", () => {
  it("reads JSON, with a byte order mark before it or not", () => {
    expect(readJson('{"a": [1, null]}')).toEqual({ ok: true, value: { a: [1, null] } });
    expect(readJson('\uFEFF{"a": 1}')).toEqual({ ok: true, value: { a: 1 } });
  });

  it.each([
    ["nothing", "", "it is empty"],
    ["blanks", " \n ", "it is empty"],
    ["a missing comma", '{\n  "a": 1\n  "b": 2\n}', "line 3, column 3"],
    ["a text without its end", '{"a": "b', "the file is not JSON"],
    ["a list without its end", "[1, 2", "the file is not JSON"],
    ["words", "a set of marks", "the file is not JSON"],
    ["a comment", '{} // "a"', "the file is not JSON"],
    ["NaN", '{"a": NaN}', "the file is not JSON"],
  ])("refuses %s and says where", (_, text, said) => {
    expect(problem(text)).toMatchObject({ where: "", message: expect.stringContaining(said) });
    expect(problem(text).hint).not.toBe("");
  });

  it("reads 1 MiB and refuses one byte more, counted in bytes", () => {
    const room = MAX_FILE_BYTES - 2;
    expect(MAX_FILE_BYTES).toBe(1024 * 1024);
    expect(readJson(`"${"x".repeat(room)}"`).ok).toBe(true);
    expect(problem(`"${"x".repeat(room + 1)}"`).message).toContain("1 MiB");
    expect(problem(`"${"é".repeat(room / 2 + 1)}"`).message).toContain("1 MiB");
  });

  it.each([
    ["__proto__", '{"plan": {"corners": {"__proto__": [0, 1]}}}', "/plan/corners/__proto__"],
    ["__proto__ in disguise", '{"plan": {"__pro\\u0074o__": 1}}', "/plan/__proto__"],
    ["constructor", '{"constructor": {}}', "/constructor"],
    ["prototype", '[{"prototype": {}}]', "/0/prototype"],
    ["toString", '{"a/b": {"toString": 1}}', "/a~1b/toString"],
    ["hasOwnProperty as an id", '{"walls": [{"id": "hasOwnProperty"}]}', "/walls/0/id"],
    ["__proto__ as a wall's end", '{"walls": [{"id": "W", "from": "__proto__"}]}', "/walls/0/from"],
    ["__proto__ as a marked point", '{"marks": [{"point": "__proto__"}]}', "/marks/0/point"],
  ])("refuses the name %s", (_, text, where) => {
    expect(problem(text)).toEqual({ where, message: "this name cannot be used", hint: "rename it" });
  });

  it.each([
    ["at the top", '{"a": 1, "a": 2}', "/a"],
    ["inside", '{"plan": {"corners": {"A": [0, 1], "B": [1, 1], "A": [2, 2]}}}', "/plan/corners/A"],
    ["in a list", '{"walls": [{"id": "W1"}, {"id": "W2", "id": "W3"}]}', "/walls/1/id"],
    ["written with an escape", '{"A": 1, "\\u0041": 2}', "/A"],
    ["with a quote in it", '{"a\\"b": 1, "c": {}, "a\\"b": 2}', '/a"b'],
  ])("refuses a name written twice %s", (_, text, where) => {
    expect(problem(text)).toMatchObject({ where, message: expect.stringContaining("written twice") });
  });

  it("lets one name stand in two objects, and as a text beside itself", () => {
    expect(readJson('{"a": {"a": "a"}, "b": [{"a": 1}, {"a": 1}, "a", "a:", "{\\"a\\":"]}').ok).toBe(true);
  });

  // Each of these overflows a reader that goes down as deep as the text does.
  it.each([
    ["lists", "[", "]"],
    ["objects", '{"a":', "}"],
    ["both", '[{"a":', "}]"],
  ])("refuses %s nested without end", (_, open, close) => {
    const depth = Math.floor((MAX_FILE_BYTES - 1) / (open.length + close.length));
    expect(problem(`${open.repeat(depth)}1${close.repeat(depth)}`).message).not.toBe("");
    expect(problem(open.repeat(depth)).message).toContain("not JSON");
  });

  it("reads a text as long as a file may be, escapes and all", () => {
    expect(readJson(`{"a": "${'\\"'.repeat(500_000)}"}`).ok).toBe(true);
    expect(readJson(`{"a": "${"\\u0041".repeat(150_000)}"}`).ok).toBe(true);
  });

  it("never throws", () => {
    const letters = fc.constantFrom(...'{}[]:,"\\ 01e-.tfn\u2028é');
    fc.assert(
      fc.property(fc.oneof(fc.string({ unit: letters }), fc.string({ unit: "binary" })), (text) => {
        const reading = readJson(text);
        if (!reading.ok) expect(reading.problem.message).not.toBe("");
      }),
      seeded,
    );
  });
});

describe("findDuplicateKey", () => {
  it("finds none in what JSON.stringify writes", () => {
    fc.assert(
      fc.property(fc.jsonValue(), fc.constantFrom(0, 2), (value, indent) => {
        expect(findDuplicateKey(JSON.stringify(value, null, indent))).toBeNull();
      }),
      seeded,
    );
  });
});
