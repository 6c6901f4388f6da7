import { bench, describe } from "vitest";
import type { Draft } from "@/lib/draft/draft";
import { newDraft } from "@/lib/draft/new-draft";
import { draftNotes } from "@/lib/draft/sense/draft-notes";
import { usualSeats } from "@/lib/draft/sense/sightlines/seat";
import { sightlines } from "@/lib/draft/sense/sightlines/sightlines";
import { FOOT_M } from "@/lib/measure/length";
import type { PlanPoint } from "@/lib/stage/frame";
import { edited } from "../draft/sense/make-draft";

/** One toothed run of so many walls round the stage, with the eye so high, feet. Notes of 300 are to take under 50 ms. */
function toothedRun(walls: number, eyeFt: number): Draft {
  const corners = Array.from({ length: walls + 1 }, (_, i): PlanPoint => {
    const angle = Math.PI * (1 - i / walls);
    return [4.6 * Math.cos(angle) + (i % 2) * 0.05, 0.5 + 5.5 * Math.sin(angle)];
  });
  const empty = newDraft("ft-in");
  return edited(
    empty,
    { edit: "add-walls", corners, closed: false, height: 4, thickness: 0.02 },
    { edit: "set-viewer", viewer: { ...empty.exercise.viewer, eyeHeight: eyeFt * FOOT_M } },
  );
}

describe("notes on a plan of 300 walls", () => {
  const [high, low] = [toothedRun(300, 8), toothedRun(300, 3)];
  bench("with nothing to note", () => {
    draftNotes(high);
  });
  bench("with marks that are hard to grade, and an eye to be found for them", () => {
    draftNotes(low);
  });
});

describe("sight lines of a plan of 300 walls", () => {
  const draft = toothedRun(300, 8);
  const [seat] = usualSeats(draft.exercise.stage, draft.exercise.viewer);
  bench("from one seat", () => {
    if (seat) sightlines(draft, [seat]);
  });
});
