import { readWrongEdge } from "./scale-edge";

export const doubleScale = readWrongEdge(
  "double-scale",
  "Scale rule read at double",
  2,
  "Everything came out double its size: you read an edge of the scale rule that is half as large as this plan's. Read the edge of the sheet's own scale.",
);
