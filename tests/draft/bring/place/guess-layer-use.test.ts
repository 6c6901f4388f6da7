import { expect, it } from "vitest";
import { guessLayerUse } from "@/lib/draft/bring/place/guess-layer-use";
import { brought, straight } from "./drawn";

it.each([
  ["Walls", "walls"],
  ["A-WALL", "walls"],
  ["01_SET WALLS", "walls"],
  ["Wände neu", "walls"],
  ["Murs", "walls"],
  ["Openings", "openings"],
  ["A-DOOR", "openings"],
  ["Türen", "openings"],
  ["Fenêtres", "openings"],
  ["A-WALL-HATCH", "ignore"],
  ["Door tags", "ignore"],
  ["0", "ignore"],
  ["Furniture", "ignore"],
  ["Murmurs", "ignore"],
])("a layer called %s is for %s", (name, use) => {
  expect(guessLayerUse(brought({ [name]: [straight([0, 0], [1, 0])] }))).toEqual({ [name]: use });
});

it("ignores a hidden layer", () => {
  const { layers } = brought({ Walls: [straight([0, 0], [1, 0])] });
  expect(guessLayerUse({ layers: layers.map((layer) => ({ ...layer, hidden: true })) })).toEqual({ Walls: "ignore" });
});
