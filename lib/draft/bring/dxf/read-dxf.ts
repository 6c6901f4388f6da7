import { type DxfBlock, parseString } from "dxf";
import { type BringReading, type Brought, type BroughtPoint, MOST_BYTES } from "../brought";
import { countNotUnderstood } from "../count-not-understood";
import { gatherLines } from "../gather-lines";
import { likelyUnits } from "../likely-units";
import { readingOf, StopReading } from "../stop-reading";
import { decodeLetters } from "./decode-letters";
import { BINARY_MARK, type DxfGroups } from "./dxf-groups";
import { dxfUnit } from "./dxf-units";
import { layOutBlocks } from "./lay-out-blocks";
import { readBinaryGroups } from "./read-binary-groups";
import { readTextGroups } from "./read-text-groups";
import { tidyDxf } from "./tidy-dxf";

/**
 * The lines of a DXF file by layer, in metres where its header tells the unit: letters or bytes, of any age. Its groups are put in
 * order first, so that the package that parses them meets nothing it would stumble over; what is no line is counted.
 */
export function readDxf(bytes: Uint8Array): BringReading {
  return readingOf(() => {
    if (bytes.length > MOST_BYTES)
      throw new StopReading(
        "the whole file",
        `it has ${(bytes.length / 1024 / 1024).toFixed(0)} megabytes, and at most 20 are read`,
        "save the plan alone, without furniture, hatching and details, and bring that",
      );
    const passedOver = countNotUnderstood();
    const tidy = tidyDxf(groupsOf(bytes), passedOver);
    const { header, blocks, entities } = parseString(tidy.text);
    const gathering = gatherLines();
    layOutBlocks(entities, {
      blocks: new Map(blocks.map((block: DxfBlock) => [block.name ?? "", block])),
      layerName: (numbered) => tidy.layers[Number(numbered?.slice(1))] ?? "0",
      gathering,
      passedOver,
    });
    const drawn = gathering.layers((layer) => tidy.hidden.has(layer));
    const unit = dxfUnit(header.insUnits);
    const metric = header.measurement === undefined ? null : Number(header.measurement) === 1;
    const brought: Brought = {
      file: "DXF",
      unit: unit ? { kind: "stage", name: unit.name } : { kind: "unknown", likely: likelyUnits(drawn, metric) },
      layers: unit ? inMetres(drawn, unit.metres) : drawn,
      notUnderstood: passedOver.list().map((each) => ({ ...each, at: each.at.map(scaled(unit?.metres ?? 1)) })),
    };
    return { ok: true, brought };
  });
}

function groupsOf(bytes: Uint8Array): DxfGroups {
  const start = new TextDecoder("windows-1252").decode(bytes.subarray(0, BINARY_MARK.length));
  if (start === BINARY_MARK) return readBinaryGroups(bytes, (letters) => decodeLetters(letters, bytes));
  if (/^AC10\d\d/.test(start))
    throw new StopReading(
      "the first line",
      "this is a DWG file, which only the program that made it reads for certain",
      "save the drawing there as DXF and bring that file",
    );
  return readTextGroups(decodeLetters(bytes));
}

function inMetres(layers: Brought["layers"], metres: number): Brought["layers"] {
  if (metres === 1) return layers;
  return layers.map((layer) => ({
    ...layer,
    lines: layer.lines.map((line) => ({
      ...line,
      points: line.points.map(scaled(metres)),
    })),
  }));
}

function scaled(by: number): (at: BroughtPoint) => BroughtPoint {
  return ([x, y]) => [x * by, y * by];
}
