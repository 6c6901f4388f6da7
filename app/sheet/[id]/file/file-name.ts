import type { Order } from "../order";

/** What a file is saved as: `tide-office-letter.pdf`, `walls-2-set-of-30-a4.pdf`. Letters that a file system may refuse are left out. */
export function fileName(id: string, { view, format, paper, copies, seed, point }: Order): string {
  const plain = id.normalize("NFKD").replace(/[^\w-]/g, "") || "sheet";
  const what =
    view === "sheet" ? [] : [view, ...(view === "construction" && point ? [point.replace(/[^\w.-]/g, "")] : [])];
  const many = copies === 1 ? [] : [seed === null ? `${copies}-copies` : `class-set-of-${copies}`];
  return `${[plain, ...what, ...many, paper].join("-")}.${format}`;
}
