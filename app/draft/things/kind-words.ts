import { capital } from "@/lib/plan/first-letter";
import {
  FURNITURE_KINDS,
  type FurnitureKind,
  MASKING_KINDS,
  type MaskingKind,
  OPENING_KINDS,
  type OpeningKind,
} from "@/lib/plan/plan";

/** The kinds of things as a list shows them. */
export const OPENING_WORDS = listed<OpeningKind>(OPENING_KINDS);
export const FURNITURE_WORDS = listed<FurnitureKind>(FURNITURE_KINDS);
export const MASKING_WORDS = listed<MaskingKind>(MASKING_KINDS);

function listed<Kind extends string>(kinds: readonly Kind[]): Readonly<Record<Kind, string>> {
  return Object.fromEntries(kinds.map((kind) => [kind, capital(kind)])) as Record<Kind, string>;
}
