import { POINTING_DEVICES } from "@/lib/exercise/marks";
import { ATTEMPT_FORMAT, type Attempt, type Place } from "./attempt";

/**
 * An attempt out of the browser's storage or a copy of it; null for anything that is not one. Hand-written, because the
 * practise page carries no schema library.
 */
export function readAttempt(value: unknown): Attempt | null {
  if (!isRecord(value) || value.format !== ATTEMPT_FORMAT) return null;
  const { exercise, version, marks, correcting, pending, pendingWith, earlier, lines, figure, hints = {} } = value;
  const sound =
    typeof exercise === "string" &&
    typeof version === "number" &&
    typeof correcting === "boolean" &&
    typeof figure === "boolean" &&
    isDevice(pendingWith) &&
    (pending === null || isPlace(pending)) &&
    Array.isArray(earlier) &&
    earlier.every((place) => place === null || isPlace(place)) &&
    Array.isArray(marks) &&
    marks.every(isMark) &&
    Array.isArray(lines) &&
    lines.every(isLine) &&
    isRecord(hints) &&
    Object.values(hints).every((taken) => Number.isInteger(taken)) &&
    (!correcting || marks.length > 0);
  // Work kept before hints were counted has none.
  return sound ? ({ ...value, hints } as Attempt) : null;
}

export function isRecord(value: unknown): value is Record<string, unknown> {
  return typeof value === "object" && value !== null && !Array.isArray(value);
}

function isPlace(value: unknown): value is Place {
  return Array.isArray(value) && value.length === 2 && value.every((each) => Number.isFinite(each));
}

function isDevice(value: unknown): boolean {
  return POINTING_DEVICES.some((device) => device === value);
}

function isMark(value: unknown): boolean {
  return isRecord(value) && typeof value.point === "string" && isPlace(value.at) && isDevice(value.with);
}

function isLine(value: unknown): boolean {
  return (
    isRecord(value) &&
    typeof value.id === "number" &&
    (value.plane === "picture" || value.plane === "plan") &&
    isPlace(value.from) &&
    isPlace(value.to) &&
    Array.isArray(value.through) &&
    value.through.length === 2 &&
    value.through.every((each) => typeof each === "string")
  );
}
