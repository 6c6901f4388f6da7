const NUMBERS = [
  "no",
  "one",
  "two",
  "three",
  "four",
  "five",
  "six",
  "seven",
  "eight",
  "nine",
  "ten",
  "eleven",
  "twelve",
];

/** A small number in words, larger ones in figures: "three walls", "one door". */
export function inWords(count: number, one: string, many = `${one}s`): string {
  return `${NUMBERS[count] ?? count} ${count === 1 ? one : many}`;
}

/** "a, b and c". */
export function listed(items: readonly string[]): string {
  return items.length < 2 ? (items[0] ?? "") : `${items.slice(0, -1).join(", ")} and ${items.at(-1)}`;
}
