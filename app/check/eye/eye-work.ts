import type { MarkedDrawing } from "@/lib/perspective/whose-eye/marked-drawing";
import type { ShownPhoto } from "../check-store";

export const EYE_FORMAT = "plasterline.eye/1";

/** A place of the picture, in widths of it: right of its upper left corner, and up from there, so that all of it is below 0. */
export type Spot = readonly [number, number];

/** A line by its two ends; null for an end that is not set yet. */
export type MarkedLine = readonly [Spot | null, Spot | null];

export const RUNS = ["unknown", "square", "along", "other"] as const;
/** How a group of parallels runs on the stage, to the plaster line. */
export type Runs = (typeof RUNS)[number];

export type Group = {
  readonly lines: readonly MarkedLine[];
  readonly runs: Runs;
  /** Typed, for `other`. */
  readonly degrees: string;
};

export type Floor = {
  readonly corners: readonly [Spot | null, Spot | null, Spot | null, Spot | null];
  readonly proportion: string;
};

export const LIES = ["upright", "floor", "plaster line"] as const;
export type Length = { readonly ends: MarkedLine; readonly long: string; readonly lies: (typeof LIES)[number] };

/** A picture and what is marked on it, as it is kept. What was typed is kept as it was typed. */
export type EyeWork = {
  readonly format: typeof EYE_FORMAT;
  readonly photo: Pick<ShownPhoto, "address" | "width" | "height">;
  readonly widthMm: string;
  readonly groups: readonly Group[];
  readonly uprights: readonly MarkedLine[];
  readonly floor: Floor | null;
  readonly length: Length | null;
};

/** The groups' letters; U, F and L are taken. */
export const GROUP_LETTERS = ["A", "B", "C", "D"] as const;

/** What the width of a picture is taken for until somebody knows better, millimetres. */
const WIDTH_MM = "250";

const UNSET_LINE: MarkedLine = [null, null];
const NEW_GROUP: Group = { lines: [], runs: "unknown", degrees: "" };

export function newWork(photo: EyeWork["photo"], widthMm: string = WIDTH_MM): EyeWork {
  const { address, width, height } = photo;
  return {
    format: EYE_FORMAT,
    photo: { address, width, height },
    widthMm,
    groups: [NEW_GROUP],
    uprights: [],
    floor: null,
    length: null,
  };
}

/** One thing marked: `A2` is the second line of the first group, `U1` an upright, `F` the floor rectangle, `L` the length. */
export type MarkId = string;
/** One handle: the mark and which of its places, as `A2.0`. */
export type Grip = string;

export type Mark = { readonly id: MarkId; readonly spots: readonly (Spot | null)[] };

/** All that is marked, in the order of its handles. */
export function marksOf({ groups, uprights, floor, length }: EyeWork): readonly Mark[] {
  return [
    ...groups.flatMap(({ lines }, g) => lines.map((spots, i) => ({ id: `${GROUP_LETTERS[g]}${i + 1}`, spots }))),
    ...uprights.map((spots, i) => ({ id: `U${i + 1}`, spots })),
    ...(floor ? [{ id: "F", spots: floor.corners }] : []),
    ...(length ? [{ id: "L", spots: length.ends }] : []),
  ];
}

export function gripsOf(work: EyeWork): readonly (readonly [Grip, Spot | null])[] {
  return marksOf(work).flatMap(({ id, spots }) => spots.map((spot, i) => [`${id}.${i}`, spot] as const));
}

export function spotOf(work: EyeWork, grip: Grip | null): Spot | null {
  return gripsOf(work).find(([each]) => each === grip)?.[1] ?? null;
}

export function markOfGrip(grip: Grip): MarkId {
  return grip.slice(0, grip.indexOf("."));
}

/** The handle after this one: of the same mark if that has one that is not set, else in order round all of them. */
export function gripAfter(work: EyeWork, grip: Grip): Grip {
  const grips = gripsOf(work);
  const id = markOfGrip(grip);
  const unset = grips.find(([each, spot]) => spot === null && markOfGrip(each) === id && each !== grip);
  const at = grips.findIndex(([each]) => each === grip);
  return unset?.[0] ?? grips[(at + 1) % grips.length]?.[0] ?? grip;
}

/** The same work with one handle elsewhere. */
export function moveGrip(work: EyeWork, grip: Grip, spot: Spot | null): EyeWork {
  const id = markOfGrip(grip);
  const end = Number(grip.slice(id.length + 1));
  const put = <T extends readonly (Spot | null)[]>(spots: T): T =>
    spots.map((was, i) => (i === end ? spot : was)) as unknown as T;
  return changeMark(work, id, {
    line: (line) => [put(line)],
    floor: (floor) => ({ ...floor, corners: put(floor.corners) }),
  });
}

export function removeMark(work: EyeWork, id: MarkId): EyeWork {
  return changeMark(work, id, { line: () => [], floor: () => null });
}

function changeMark(
  work: EyeWork,
  id: MarkId,
  change: {
    readonly line: (line: MarkedLine) => readonly MarkedLine[];
    readonly floor: (floor: Floor) => Floor | null;
  },
): EyeWork {
  const { groups, uprights, floor, length } = work;
  if (id === "F") return { ...work, floor: floor && change.floor(floor) };
  if (id === "L") {
    const [ends] = length ? change.line(length.ends) : [];
    return { ...work, length: length && ends ? { ...length, ends } : null };
  }
  const at = Number(id.slice(1)) - 1;
  const changed = (lines: readonly MarkedLine[]) => lines.flatMap((line, i) => (i === at ? change.line(line) : [line]));
  if (id.startsWith("U")) return { ...work, uprights: changed(uprights) };
  return {
    ...work,
    groups: groups.map((group, g) =>
      id.startsWith(GROUP_LETTERS[g] ?? "-") ? { ...group, lines: changed(group.lines) } : group,
    ),
  };
}

/** What can be added: a line to a group by its letter, an upright, the rectangle, the length. */
export type Addable = (typeof GROUP_LETTERS)[number] | "U" | "F" | "L";

/** The work with one more mark, and the handle to set first. One that was begun and has places to set is gone on with instead. */
export function addMark(work: EyeWork, what: Addable): { readonly work: EyeWork; readonly grip: Grip } {
  const begun = gripsOf(work).find(([grip, spot]) => spot === null && grip.startsWith(what));
  if (begun) return { work, grip: begun[0] };
  if (what === "F")
    return {
      work: { ...work, floor: work.floor ?? { corners: [null, null, null, null], proportion: "" } },
      grip: "F.0",
    };
  if (what === "L")
    return { work: { ...work, length: work.length ?? { ends: UNSET_LINE, long: "", lies: "upright" } }, grip: "L.0" };
  if (what === "U")
    return { work: { ...work, uprights: [...work.uprights, UNSET_LINE] }, grip: `U${work.uprights.length + 1}.0` };
  const g = GROUP_LETTERS.indexOf(what);
  const lines = work.groups[g]?.lines ?? [];
  return {
    work: changeGroup(work, g, { lines: [...lines, UNSET_LINE] }),
    grip: `${what}${lines.length + 1}.0`,
  };
}

export function changeGroup(work: EyeWork, index: number, change: Partial<Group>): EyeWork {
  return { ...work, groups: work.groups.map((group, i) => (i === index ? { ...group, ...change } : group)) };
}

export function addGroup(work: EyeWork): EyeWork {
  return work.groups.length < GROUP_LETTERS.length ? { ...work, groups: [...work.groups, NEW_GROUP] } : work;
}

/** How many marks a drawing has that say something. */
export function countMarks({ parallels, uprights, rectangle, length }: MarkedDrawing): number {
  const lines = parallels.reduce((sum, group) => sum + group.lines.length, 0);
  return lines + uprights.length + (rectangle ? 1 : 0) + (length ? 1 : 0);
}

/** How many places are set. */
export function countSpots(work: EyeWork): number {
  return gripsOf(work).filter(([, spot]) => spot !== null).length;
}
