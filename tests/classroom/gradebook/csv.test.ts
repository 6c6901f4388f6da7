import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { writeCsv } from "@/lib/classroom/gradebook/csv";
import { gradebookCsv } from "@/lib/classroom/gradebook/gradebook-csv";
import { makeGradebook } from "@/lib/classroom/gradebook/make-gradebook";
import { RESULT_COLUMNS, resultsCsv } from "@/lib/classroom/gradebook/results-csv";
import { seeded } from "../../seeded";

/** A reader of RFC 4180 section 2, written for the test from its grammar alone. */
function readCsv(text: string): string[][] {
  const rows: string[][] = [];
  let [row, field, at]: [string[], string, number] = [[], "", 0];
  while (at < text.length) {
    if (text[at] === '"') {
      for (at++; text[at] !== '"' || text[at + 1] === '"'; at++) {
        if (at >= text.length) throw new Error("A quote is not closed.");
        if (text[at] === '"') at++;
        field += text[at];
      }
      at++;
    } else while (at < text.length && text[at] !== "," && text[at] !== "\r") field += text[at++];
    row.push(field);
    field = "";
    if (text[at] === ",") at++;
    else if (text.startsWith("\r\n", at)) {
      rows.push(row);
      row = [];
      at += 2;
    } else throw new Error(`Neither a comma nor a line's end at ${at}.`);
  }
  return rows;
}

describe("a table as RFC 4180 has it, https://www.rfc-editor.org/rfc/rfc4180, section 2", () => {
  it.each([
    [
      "records end in CRLF, the last as well",
      [
        ["a", "b"],
        [1, null],
      ],
      "a,b\r\n1,\r\n",
    ],
    ["a comma", [["Aalders, Wim"]], '"Aalders, Wim"\r\n'],
    ["a quote is doubled", [['the "tide" office']], '"the ""tide"" office"\r\n'],
    ["a line end inside a field", [["one\r\ntwo\nthree"]], '"one\r\ntwo\nthree"\r\n'],
    ["blanks belong to the field", [[" a "]], " a \r\n"],
    ["letters beyond ASCII", [["Zoë"]], "Zoë\r\n"],
  ])("%s", (_, rows, text) => expect(writeCsv(rows)).toBe(text));

  // https://cwe.mitre.org/data/definitions/1236.html: the four characters and the apostrophe; the tab and the return by OWASP.
  it.each(["=1+1", "+1", "-1", "@SUM(A1)", "\t=1", "\r=1", " =1", "\u00a0=1", "＝1", "＠x"])(
    "makes no formula of %j",
    (name) => {
      expect(readCsv(writeCsv([[name]]))).toEqual([[`'${name}`]]);
    },
  );
  it.each(["Wim", "O'Neill", "Jean-Luc", "a=b", "'t Hart", ""])("leaves %j as it is", (name) => {
    expect(readCsv(writeCsv([[name, "x"]]))).toEqual([[name, "x"]]);
  });
  it("leaves numbers numbers, below 0 as well", () => expect(writeCsv([[-1.5, 2]])).toBe("-1.5,2\r\n"));
  it("is read back as it was written, but for apostrophes", () => {
    fc.assert(
      fc.property(
        fc.array(fc.array(fc.string({ unit: "binary" }), { minLength: 2, maxLength: 4 }), { minLength: 1 }),
        (rows) => {
          const back = readCsv(writeCsv(rows));
          expect(back.map((row) => row.length)).toEqual(rows.map((row) => row.length));
          for (const [i, row] of rows.entries())
            for (const [j, text] of row.entries()) expect([text, `'${text}`]).toContain(back[i]?.[j]);
          for (const field of back.flat()) expect(field).not.toMatch(/^\s*[=+\-@]/);
        },
      ),
      seeded,
    );
  });
});

const NOW = "2026-11-20T12:00:00.000Z";
const PLAIN = { madeAt: null, inTimeReason: null };
const book = makeGradebook(
  {
    work: [
      {
        id: "w",
        title: "Week one",
        dueAt: "2026-11-10T00:00:00.000Z",
        counts: "best",
        weight: 1,
        toAll: true,
        criteria: [{ name: "Line", points: 5 }],
        columns: [{ itemId: "i", title: "Tide office", exerciseId: "tide-office", weight: 1 }],
      },
    ],
    students: ["=Wim", "Noor", "Tess", "Bram"].map((name) => ({ memberId: name.slice(-3), name, number: null })),
    arrangements: [{ homeworkId: "w", memberId: "ess", dueAt: null, excused: true, assigned: false }],
    attempts: [
      { id: "1", itemId: "i", memberId: "Wim", score: 66.666, receivedAt: "2026-11-11T10:00:00.000Z", ...PLAIN },
      { id: "2", itemId: "i", memberId: "oor", score: 50, receivedAt: "2026-11-09T10:00:00.000Z", ...PLAIN },
      { id: "3", itemId: "i", memberId: "oor", score: 40, receivedAt: "2026-11-09T11:00:00.000Z", ...PLAIN },
    ],
    overrides: [
      { itemId: "i", memberId: "oor", score: 75, reason: 'Drew "left" for "right".', at: "2026-11-12T08:00:00.000Z" },
    ],
    points: [{ itemId: "i", memberId: "Wim", criterion: "Line", points: 4 }],
  },
  NOW,
);

describe("the gradebook as a file", () => {
  it("has one wide table", () => {
    expect(readCsv(gradebookCsv(book))).toEqual([
      [
        "Name",
        "Number",
        "Weighted mean",
        "Week one: Tide office",
        "Week one: Tide office, notes",
        "Week one: Tide office, Line (of 5)",
      ],
      ["'=Wim", "", "66.67", "66.67", "late", "4"],
      ["Bram", "", "0", "0", "missing", ""],
      ["Noor", "", "75", "75", '2 attempts; by hand, was 50: Drew "left" for "right".', ""],
      ["Tess", "", "", "", "excused", ""],
    ]);
  });
  it("has OneRoster's columns of results", () => {
    const [head, ...records] = readCsv(resultsCsv(book, "class", NOW));
    expect(head).toEqual(RESULT_COLUMNS);
    const part = (name: (typeof RESULT_COLUMNS)[number]) => records.map((each) => each[RESULT_COLUMNS.indexOf(name)]);
    expect(part("scoreStatus")).toEqual(["fully graded", "not submitted", "fully graded", "exempt"]);
    expect(part("score")).toEqual(["66.67", "0", "75", ""]);
    expect(part("scoreDate")).toEqual(["2026-11-11", "2026-11-20", "2026-11-12", "2026-11-20"]);
    expect(part("late")).toEqual(["true", "false", "false", "false"]);
    expect(part("missing")).toEqual(["false", "true", "false", "false"]);
    expect(new Set(part("sourcedId")).size).toBe(4);
  });
});
