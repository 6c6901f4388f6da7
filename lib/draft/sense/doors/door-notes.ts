import type { Exercise } from "../../../exercise/exercise";
import { capital } from "../../../plan/first-letter";
import type { Opening, Plan } from "../../../plan/plan";
import type { Thing } from "../../draft";
import { listNames, type Note, noteOf } from "../note";
import { eachOnce } from "../note-place";
import { sayThing } from "../say-thing";
import { bodiesNear, type Door, doorsOf, gatherRoom, leafStops, type Stop, sweepsMeet } from "./door-stops";
import { freeDoor } from "./free-door";

/** A door that opens less than this lets nobody through, degrees: at 30 a leaf of 3 ft leaves half its width. */
const LETS_THROUGH_DEG = 30;

/** Doors that something keeps from opening to a right angle, and doors whose leaves swing through one another. */
export function doorNotes({ plan, stage, units }: Exercise): readonly Note[] {
  if (!plan.walls.some(({ openings }) => openings.some(({ kind }) => kind === "door"))) return [];
  const room = gatherRoom(plan, stage);
  const doors = doorsOf(room);
  return doors.flatMap((door, i): readonly Note[] => {
    const bodies = bodiesNear(room, door);
    const stops = leafStops(door.leaves, bodies, stage);
    const clashes = doors.slice(0, i).filter((other) => sweepsMeet(door, other));
    if (stops.length + clashes.length === 0) return [];
    const free = freeDoor(room, door, bodies, doors, units);
    const self = doorThing(door);
    return [
      ...stops.slice(0, 1).map((first) => {
        const things = eachOnce(stops.flatMap(({ thing }) => thing ?? []));
        const remedy = free?.say ?? `Move the door along its wall, or move ${listStops(plan, stops)}.`;
        return noteOf([self, ...things], sayStop(plan, door, stops, first), remedy, free?.edit);
      }),
      ...clashes.map((other) => {
        const [one, two] = [other, door].map((each) => sayThing(plan, doorThing(each)));
        const say = `The leaves of ${one} and ${two} swing through one another: only one of them can stand open.`;
        const remedy = free?.say ?? "Hang one of them at its other jamb, or move it along its wall.";
        return noteOf([self, doorThing(other)], say, remedy, free?.edit);
      }),
    ];
  });
}

function doorThing({ wall, opening }: { readonly wall: Door["wall"]; readonly opening: Pick<Opening, "id"> }): Thing {
  return { kind: "opening", wall: wall.id, id: opening.id };
}

function sayStop(plan: Plan, door: Door, stops: readonly Stop[], { angle }: Stop): string {
  const name = capital(sayThing(plan, doorThing(door)));
  const degrees = Math.floor((angle * 180) / Math.PI);
  const meets = `its leaf meets ${listStops(plan, stops)}`;
  return degrees < LETS_THROUGH_DEG
    ? `${name} cannot open: ${meets}${degrees > 0 ? ` at ${degrees}°` : ""}.`
    : `${name} opens only to ${degrees}°: ${meets}.`;
}

function listStops(plan: Plan, stops: readonly Stop[]): string {
  return listNames([...new Set(stops.map(({ thing }) => (thing ? sayThing(plan, thing) : "the stage's back wall")))]);
}
