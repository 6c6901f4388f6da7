/** A DXF file in letters from its groups, `[code, value]`, section by section. */
export type Group = readonly [code: number, value: string | number];

export function dxfText(sections: Readonly<Record<string, readonly Group[]>>): string {
  const groups: Group[] = [];
  for (const [name, inside] of Object.entries(sections))
    groups.push([0, "SECTION"], [2, name], ...inside, [0, "ENDSEC"]);
  return [...groups, [0, "EOF"] as const].map(([code, value]) => `${String(code).padStart(3)}\n${value}`).join("\n");
}

export function dxfBytes(sections: Readonly<Record<string, readonly Group[]>>): Uint8Array {
  return new TextEncoder().encode(dxfText(sections));
}

export function line(layer: string, a: readonly [number, number], b: readonly [number, number]): Group[] {
  return [
    [0, "LINE"],
    [8, layer],
    [10, a[0]],
    [20, a[1]],
    [11, b[0]],
    [21, b[1]],
  ];
}
