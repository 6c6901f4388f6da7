import type { NamedPoint } from "./named-point";

const ENDS: Readonly<Record<string, string>> = { start: "start", end: "end" };

/** A named point in words, for a sentence: "the foot of B", "the head of W4's door at its start". */
export function sayPoint(point: Pick<NamedPoint, "name" | "group" | "role" | "element">): string {
  const parts = point.name.split(".");
  const [first = "", second = "", third = ""] = parts;
  switch (point.group) {
    case "corner":
      return third ? `the top of ${first} on ${third}` : `the ${point.role} of ${first}`;
    case "opening":
      return `the ${point.role} of ${first}'s ${second} at its ${ENDS[third] ?? third}`;
    case "platform":
    case "furniture":
    case "masking":
      return `the ${point.role} of ${first}'s ${point.group === "masking" ? "edge" : "corner"} ${second}`;
    case "stair":
      return `the ${third} of ${first}'s nosing ${second}`;
    case "column":
      return point.role === "foot" ? `the centre of ${first}'s foot` : `the centre of ${first}'s top`;
  }
}

/** The short letter a point goes by on the sheet: "B", "W4 door". */
export function shortName(point: Pick<NamedPoint, "name" | "group">): string {
  const [first = "", second = ""] = point.name.split(".");
  return point.group === "opening" ? `${first} ${second}` : first;
}
