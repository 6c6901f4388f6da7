import { parseLength } from "@/lib/measure/length";

export type ReadMm = { readonly ok: true; readonly mm: number } | { readonly ok: false; readonly say: string };

const PLAIN = /^\d+(?:[.,]\d+)?$/;
const LARGEST_MM = 1e5;

/** A size on paper as a reader writes it: a bare number is millimetres, anything else carries its unit, as 9 1/2" or 24 cm. */
export function readMm(written: string): ReadMm {
  const text = written.trim();
  if (text === "") return { ok: false, say: 'Write a size here, as 250 mm or 10".' };
  const parsed = PLAIN.test(text) ? null : parseLength(text, "m");
  if (parsed && !parsed.ok) return { ok: false, say: `${parsed.reason}. A number alone is taken for millimetres.` };
  const mm = parsed ? parsed.metres * 1000 : Number(text.replace(",", "."));
  if (!(mm > 0)) return { ok: false, say: "A size is above 0." };
  return mm <= LARGEST_MM ? { ok: true, mm } : { ok: false, say: "No paper is as large as that." };
}
