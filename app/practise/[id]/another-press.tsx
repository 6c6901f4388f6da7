"use client";

import type { SheetPlace } from "@/app/_parts/course/course-words";
import { Press } from "@/app/_parts/press";
import { freshSeed, variantId } from "@/lib/generator/variant-id";
import { usePracticeRoom } from "./practice-context";

/** Opens a generated exercise of the same unit and level. The seed is drawn on the press, so that the page stays pure. */
export function AnotherPress({ sheet }: { readonly sheet: SheetPlace }) {
  const { exercise } = usePracticeRoom();
  const open = () => {
    const [bits = 0] = window.crypto.getRandomValues(new Uint32Array(1));
    const seed = freshSeed(bits, "variant" in sheet ? sheet.variant : null);
    window.location.assign(`/practise/${variantId({ unit: exercise.unit, level: exercise.level, seed })}`);
  };
  return (
    <Press weight={"variant" in sheet ? "main" : "plain"} onClick={open}>
      Another like this
    </Press>
  );
}
