import { readWrongEdge } from "./scale-edge";

export const halfScale = readWrongEdge(
  "half-scale",
  "Scale rule read at half",
  0.5,
  "Everything came out half its size: you read an edge of the scale rule that is twice too large for this plan. Read the edge of the sheet's own scale.",
);
