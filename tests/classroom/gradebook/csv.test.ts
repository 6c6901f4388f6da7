import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { writeCsv } from "@/lib/classroom/gradebook/csv";
import { gradebookCsv } from "@/lib/classroom/gradebook/gradebook-csv";
import { lineItemsCsv } from "@/lib/classroom/gradebook/line-items-csv";
import { makeGradebook } from "@/lib/classroom/gradebook/make-gradebook";
import { RESULT_COLUMNS, resultsCsv } from "@/lib/classroom/gradebook/results-csv";
import { manifestCsv, resultsZip } from "@/lib/classroom/gradebook/results-zip";
import { storeZip } from "@/lib/classroom/gradebook/store-zip";
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
        setAt: "2026-11-01T09:00:00.000Z",
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

/** Columns of the rows as `@conform-ed/contracts` (oneroster/v1_2) has them, modelled from the published binding. */
const RESULTS_PUBLISHED =
  "sourcedId,status,dateLastModified,lineItemSourcedId,studentSourcedId,scoreStatus,score,scoreDate,comment,textScore,classSourcedId,inProgress,incomplete,late,missing".split(
    ",",
  );
const LINE_ITEMS_PUBLISHED =
  "sourcedId,status,dateLastModified,title,description,assignDate,dueDate,classSourcedId,categorySourcedId,academicSessionSourcedId,resultValueMin,resultValueMax,schoolSourcedId".split(
    ",",
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
    expect(head).toEqual(RESULTS_PUBLISHED);
    const part = (name: (typeof RESULT_COLUMNS)[number]) => records.map((each) => each[RESULT_COLUMNS.indexOf(name)]);
    expect(part("scoreStatus")).toEqual(["fully graded", "not submitted", "fully graded", "exempt"]);
    expect(part("score")).toEqual(["66.67", "0", "75", ""]);
    expect(part("scoreDate")).toEqual(["2026-11-11", "2026-11-20", "2026-11-12", "2026-11-20"]);
    expect(part("late")).toEqual(["true", "false", "false", "false"]);
    expect(part("missing")).toEqual(["false", "true", "false", "false"]);
    expect(new Set(part("sourcedId")).size).toBe(4);
  });
  it("says beside late work that it was counted as in time, and why", () => {
    const excused = makeGradebook(
      {
        work: book.work,
        students: [{ memberId: "Wim", name: "Wim", number: null }],
        arrangements: [],
        attempts: [
          {
            id: "1",
            itemId: "i",
            memberId: "Wim",
            score: 80,
            receivedAt: "2026-11-11T10:00:00.000Z",
            madeAt: "2026-11-09T10:00:00.000Z",
            inTimeReason: "The network was down, twice.",
          },
        ],
        overrides: [],
        points: [],
      },
      NOW,
    );
    const note = "counted as in time: The network was down, twice.";
    expect(readCsv(gradebookCsv(excused))[1]).toEqual(["Wim", "", "80", "80", note, ""]);
    const [, record = []] = readCsv(resultsCsv(excused, "class", NOW));
    expect(record[RESULT_COLUMNS.indexOf("late")]).toBe("false");
    expect(record[RESULT_COLUMNS.indexOf("comment")]).toBe(note);
  });
  it("has OneRoster's columns of what was set, which the results point to", () => {
    const [head, ...records] = readCsv(lineItemsCsv(book, "class"));
    expect(head).toEqual(LINE_ITEMS_PUBLISHED);
    expect(records).toEqual([
      ["i", "", "", "Week one: Tide office", "", "2026-11-01", "2026-11-10", "class", "", "", "0", "100", ""],
    ]);
    const results = readCsv(resultsCsv(book, "class", NOW)).slice(1);
    for (const result of results) expect(result[RESULT_COLUMNS.indexOf("lineItemSourcedId")]).toBe(records[0]?.[0]);
  });
  it("says in its manifest which files there are", () => {
    const [head, ...rows] = readCsv(manifestCsv());
    expect(head).toEqual(["propertyName", "value"]);
    const said = new Map(rows.map(([name = "", value = ""]) => [name, value]));
    expect(said.get("oneroster.version")).toBe("1.2");
    expect([...said].filter(([, value]) => value === "bulk").map(([name]) => name)).toEqual([
      "file.lineItems",
      "file.results",
    ]);
    expect([...said].filter(([, value]) => value === "absent")).toHaveLength(19);
  });
});

describe("an archive", () => {
  it("is to the byte what another program writes", () => {
    // Python 3.11.7's zipfile, ZIP_STORED, of the same two files, dated 1980-01-01, with create_system and external_attr 0.
    const written =
      "504b030414000008000000002100f2b4d9ef0a0000000a00000009000000c3a9c3a96e2e637376612c620d0a312c320d0a" +
      "504b0304140000080000000021000000000000000000000000000a0000007477c3a9c3a92e637376" +
      "504b0102140014000008000000002100f2b4d9ef0a0000000a000000090000000000000000000000000000000000c3a9c3a96e2e637376" +
      "504b01021400140000080000000021000000000000000000000000000a00000000000000000000000000310000007477c3a9c3a92e637376" +
      "504b050600000000020002006f000000590000000000";
    const archive = storeZip([
      { name: "één.csv", text: "a,b\r\n1,2\r\n" },
      { name: "twéé.csv", text: "" },
    ]);
    expect(Buffer.from(archive).toString("hex")).toBe(written);
  });
  it("holds the manifest, what was set and the results, whole", () => {
    const archive = Buffer.from(resultsZip(book, "class", NOW)).toString("utf8");
    for (const text of [manifestCsv(), lineItemsCsv(book, "class"), resultsCsv(book, "class", NOW)])
      expect(archive).toContain(text);
    for (const name of ["manifest.csv", "lineItems.csv", "results.csv"]) expect(archive.split(name)).toHaveLength(3);
  });
});
