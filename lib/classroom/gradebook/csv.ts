export type CsvValue = string | number | null;

const NEEDS_QUOTES = /["\r\n,]/;
/**
 * A text that a spreadsheet would take for a formula: one that begins with any of = + - @, a tab or a return, also in their
 * wide forms and behind blanks that a spreadsheet drops (CWE-1236; https://cwe.mitre.org/data/definitions/1236.html).
 */
const FORMULA = /^[\s\u00a0\ufeff]*[=+\-@\uff1d\uff0b\uff0d\uff20]|^[\t\r\n\0]/;

/**
 * A table as RFC 4180 has it: records end in CRLF, the last as well, and a field with a comma, a quote or a line end stands
 * in quotes with its quotes doubled. Numbers have a decimal point. A text that a spreadsheet would take for a formula is
 * given an apostrophe in front, which spreadsheets read as "this is text"; a program that reads the file sees the apostrophe,
 * and numbers, which are never texts, stay as they are. There is no byte order mark.
 */
export function writeCsv(rows: readonly (readonly CsvValue[])[]): string {
  return rows.map((row) => `${row.map(writeField).join(",")}\r\n`).join("");
}

function writeField(value: CsvValue): string {
  if (value === null) return "";
  if (typeof value === "number") {
    if (!Number.isFinite(value)) throw new Error("A table holds finite numbers; leave a field empty instead.");
    return String(value);
  }
  const text = FORMULA.test(value) ? `'${value}` : value;
  return NEEDS_QUOTES.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
}
