/** A DXF file in letters from its groups, `[code, value]`, section by section. */
export type Group = readonly [code: number, value: string | number];

export function dxfText(sections: Readonly<Record<string, readonly Group[]>>): string {
  // Joined rather than spread: a call takes only some ten thousand arguments.
  const groups = Object.entries(sections).flatMap(([name, inside]) =>
    [
      [
        [0, "SECTION"],
        [2, name],
      ] as Group[],
      inside,
      [[0, "ENDSEC"]] as Group[],
    ].flat(),
  );
  return groups
    .concat([[0, "EOF"]])
    .map(([code, value]) => `${String(code).padStart(3)}\n${value}`)
    .join("\n");
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
