import { SAME_POINT_M } from "../geometry/segments-cross";
import { distance } from "../geometry/vector";
import type { Plan } from "../plan/plan";
import { type Finding, fault } from "./finding";

/** Masking with two different ends; a trim for borders and for nothing else. */
export function checkMasking({ masking }: Plan): readonly Finding[] {
  return masking.flatMap(({ kind, line, trim }, i) => {
    const where = `/plan/masking/${i}`;
    return [
      ...(distance(line[0], line[1]) < SAME_POINT_M
        ? [fault(`${where}/line`, "its two ends are one place", "give both ends of the cloth")]
        : []),
      ...(kind === "border" && !(trim !== null && trim > 0)
        ? [fault(`${where}/trim`, "a border needs a trim", "say how high its lower edge hangs")]
        : []),
      ...(kind !== "border" && trim !== null
        ? [
            fault(
              `${where}/trim`,
              `a ${kind} reaches the floor and has no trim`,
              "take the trim out, or make it a border",
            ),
          ]
        : []),
    ];
  });
}
