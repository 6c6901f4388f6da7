import type { Caught } from "./snap";

/** What a place was caught by, for the line under the plan: "on the centre line, square to W2"; "" where it is free. */
export function sayCaught(to: readonly Caught[]): string {
  return to.map(sayOne).join(", ");
}

function sayOne(caught: Caught): string {
  switch (caught.by) {
    case "corner":
      return `on corner ${caught.id}`;
    case "mirror image":
      return `opposite corner ${caught.of}`;
    case "centre line":
      return "on the centre line";
    case "plaster line":
      return "on the plaster line";
    case "wall":
      return `on wall ${caught.id}`;
    case "prolongation":
      return `in line with ${caught.id}`;
    case "square":
      return `square to ${caught.id}`;
    case "parallel":
      return `parallel to ${caught.id}`;
    case "across":
      return "parallel to the plaster line";
    case "upstage":
      return "parallel to the centre line";
    case "equal length":
      return `as long as ${caught.id}`;
    case "grid":
      return "on the grid";
  }
}
