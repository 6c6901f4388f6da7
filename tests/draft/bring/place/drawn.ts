import type { Brought, BroughtLine, BroughtPoint } from "@/lib/draft/bring/brought";

type Pair = readonly [number, number];

export function straight(...points: Pair[]): BroughtLine {
  return { points, curved: false };
}

/** A leaf of a door drawn open: from shut to open about its hinges, angles in degrees, with the leaf itself. */
export function leaf(hinge: Pair, width: number, shutDeg: number, openDeg: number): BroughtLine[] {
  const at = (deg: number): BroughtPoint => [
    hinge[0] + width * Math.cos((deg * Math.PI) / 180),
    hinge[1] + width * Math.sin((deg * Math.PI) / 180),
  ];
  const swing = Array.from({ length: 19 }, (_, i) => at(shutDeg + ((openDeg - shutDeg) * i) / 18));
  return [{ points: swing, curved: true }, straight(hinge, at(openDeg))];
}

export function brought(layers: Readonly<Record<string, readonly BroughtLine[]>>): Brought {
  return {
    file: "DXF",
    unit: { kind: "stage", name: "metres" },
    layers: Object.entries(layers).map(([name, lines]) => ({ name, hidden: false, lines })),
    notUnderstood: [],
  };
}
