"use client";

import { useDesk } from "../desk/draft-context";
import { Fetched } from "../fetched/fetched";
import { namePart } from "../fetched/part";

const SIGHT_LINES = namePart(null, async () => (await import("./sight-lines")).SightLines);

/** Over the plan that is drawn on: what the chosen seat sees and does not, while nothing moves. */
export function SightOverPlan() {
  const sight = useDesk((desk) => (desk.drawer === "notes" && !desk.trying ? desk.sight : null));
  return sight && <Fetched part={SIGHT_LINES} given={{ sight }} />;
}
