import { isRecord } from "@/app/_parts/kept-work/read-attempt";
import { CHECK_KEY, put, type Shelf, take } from "@/app/_parts/kept-work/shelf";
import { EYE_FORMAT, type EyeWork, GROUP_LETTERS, LIES, RUNS } from "./eye-work";

/** It begins as the keys of photographed drawings do, and is forgotten with them. */
const EYE_KEY = `${CHECK_KEY}.eye`;

/** Keeps the picture and its marks; false when the storage refuses. */
export function keepEye(shelf: Shelf, work: EyeWork): boolean {
  return put(shelf, EYE_KEY, work);
}

export function forgetEye(shelf: Shelf): void {
  shelf.removeItem(EYE_KEY);
}

/** The picture and its marks; null for none, and for anything else that lies there. */
export function keptEye(shelf: Shelf): EyeWork | null {
  const value = take(shelf, EYE_KEY);
  if (!isRecord(value) || value.format !== EYE_FORMAT) return null;
  const { photo, widthMm, groups, uprights, floor, length } = value;
  const sound =
    isRecord(photo) &&
    typeof photo.address === "string" &&
    photo.address.startsWith("data:image/") &&
    isSize(photo.width) &&
    isSize(photo.height) &&
    typeof widthMm === "string" &&
    Array.isArray(groups) &&
    groups.length > 0 &&
    groups.length <= GROUP_LETTERS.length &&
    groups.every(isGroup) &&
    isLines(uprights) &&
    (floor === null || (isRecord(floor) && isSpots(floor.corners, 4) && typeof floor.proportion === "string")) &&
    (length === null ||
      (isRecord(length) &&
        isSpots(length.ends, 2) &&
        typeof length.long === "string" &&
        LIES.some((lies) => lies === length.lies)));
  return sound ? (value as EyeWork) : null;
}

function isGroup(value: unknown): boolean {
  return (
    isRecord(value) &&
    isLines(value.lines) &&
    RUNS.some((runs) => runs === value.runs) &&
    typeof value.degrees === "string"
  );
}

function isLines(value: unknown): boolean {
  return Array.isArray(value) && value.every((line) => isSpots(line, 2));
}

function isSpots(value: unknown, count: number): boolean {
  return Array.isArray(value) && value.length === count && value.every((spot) => spot === null || isSpot(spot));
}

function isSpot(value: unknown): boolean {
  return Array.isArray(value) && value.length === 2 && value.every((each) => Number.isFinite(each));
}

function isSize(value: unknown): boolean {
  return typeof value === "number" && Number.isFinite(value) && value > 0;
}
