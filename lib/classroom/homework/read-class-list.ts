import { cleanName, LONGEST_NAME, sameName } from "../accounts/person-name";
import { findSeparator, readCsv } from "./read-csv";

/** One line of a class list that names somebody. */
export type ListedStudent = {
  /** From 1. */
  readonly line: number;
  readonly name: string;
  readonly number: string | null;
  /** Why it cannot be taken: told, and never guessed at. */
  readonly trouble: "none" | "twice-in-list" | "in-class" | "too-long";
};

/** A number as registers have it, a digit somewhere: 7, 2026-014, B12. */
const NUMBER = /\d/;
const LONGEST_NUMBER = 40;

/** Words at the head of a column, as lists have them. */
const HEADS = {
  name: ["name", "full name", "student", "student name"],
  first: ["first name", "given name", "first", "firstname", "givenname"],
  last: ["last name", "family name", "surname", "last", "lastname", "familyname"],
  number: ["number", "no", "no.", "nr", "nr.", "id", "student number", "student id", "identifier"],
} as const;

type Columns = { readonly name: readonly number[]; readonly number: number };

/** The students of a list pasted from anywhere or out of a CSV file, beside those the class has already. */
export function readClassList(text: string, inClass: readonly string[]): readonly ListedStudent[] {
  const records = readCsv(text, findSeparator(text)).map((record) => record.map(cleanName));
  const head = records.findIndex((record) => record.some((cell) => cell !== ""));
  const columns = columnsOf(records[head] ?? []);
  const seen: string[] = [];
  return records.flatMap((record, i): ListedStudent[] => {
    if (columns && i <= head) return [];
    const { name, number } = columns ? byColumns(record, columns) : byGuess(record);
    if (name === "") return [];
    const trouble =
      [...name].length > LONGEST_NAME || (number ?? "").length > LONGEST_NUMBER
        ? "too-long"
        : inClass.some((each) => sameName(each, name))
          ? "in-class"
          : seen.some((each) => sameName(each, name))
            ? "twice-in-list"
            : "none";
    seen.push(name);
    return [{ line: i + 1, name, number, trouble }];
  });
}

/** Where the head of a list says that names and numbers stand; undefined for a first line that is no head. */
function columnsOf(first: readonly string[]): Columns | undefined {
  const at = (words: readonly string[]) => first.findIndex((cell) => words.includes(cell.toLowerCase()));
  const whole = at(HEADS.name);
  const parts = [at(HEADS.first), at(HEADS.last)].filter((column) => column >= 0);
  const name = whole >= 0 ? [whole] : parts;
  return name.length === 0 ? undefined : { name, number: at(HEADS.number) };
}

type NameAndNumber = { readonly name: string; readonly number: string | null };

function byColumns(record: readonly string[], { name, number }: Columns): NameAndNumber {
  return {
    name: cleanName(name.map((column) => record[column] ?? "").join(" ")),
    number: record[number] || null,
  };
}

/** Without a head: the first cell with a digit is the number, and all the others are the name. */
function byGuess(record: readonly string[]): NameAndNumber {
  const at = record.length < 2 ? -1 : record.findIndex((cell) => NUMBER.test(cell));
  return { name: cleanName(record.filter((_, i) => i !== at).join(" ")), number: record[at] || null };
}
