import type { Exercise } from "../../../exercise/exercise";
import { capital } from "../../../plan/first-letter";
import type { Opening } from "../../../plan/plan";
import type { Thing } from "../../draft";
import { listNames, type Note, noteOf } from "../note";
import { eachOnce } from "../note-place";
import { sayThing } from "../say-thing";
import { type Door, doorStops, doorsOf, gatherRoom, type Room, type Stop, sweepsMeet } from "./door-stops";
import { freeDoor } from "./free-door";

/** A door that opens less than this lets nobody through, degrees: at 30 a leaf of 3 ft leaves half its width. */
const LETS_THROUGH_DEG = 30;

/** Doors that something keeps from opening to a right angle, and doors whose leaves swing through one another. */
export function doorNotes({ plan, stage, units }: Exercise): readonly Note[] {
  const room = gatherRoom(plan, stage);
  const doors = doorsOf(room);
  return [
    ...doors.flatMap((door): readonly Note[] => {
      const stops = doorStops(room, door);
      const first = stops[0];
      if (!first) return [];
      const free = freeDoor(room, door, doors, units);
      const things = eachOnce(stops.flatMap(({ thing }) => thing ?? []));
      const remedy = free?.say ?? `Move the door along its wall, or move ${listStops(room, stops)}.`;
      return [noteOf([doorThing(door), ...things], sayStop(room, door, stops, first), remedy, free?.edit)];
    }),
    ...doors.flatMap((door, i) =>
      doors
        .slice(0, i)
        .filter((other) => sweepsMeet(door, other))
        .map((other) => clashNote(room, door, other, doors, units)),
    ),
  ];
}

function clashNote(room: Room, door: Door, other: Door, doors: readonly Door[], units: Exercise["units"]): Note {
  const free = freeDoor(room, door, doors, units);
  const [one, two] = [other, door].map((each) => sayThing(room.plan, doorThing(each)));
  return noteOf(
    [doorThing(door), doorThing(other)],
    `The leaves of ${one} and ${two} swing through one another: only one of them can stand open.`,
    free?.say ?? "Hang one of them at its other jamb, or move it along its wall.",
    free?.edit,
  );
}

function doorThing({ wall, opening }: { readonly wall: Door["wall"]; readonly opening: Pick<Opening, "id"> }): Thing {
  return { kind: "opening", wall: wall.id, id: opening.id };
}

function sayStop(room: Room, door: Door, stops: readonly Stop[], { angle }: Stop): string {
  const name = capital(sayThing(room.plan, doorThing(door)));
  const degrees = Math.floor((angle * 180) / Math.PI);
  const meets = `its leaf meets ${listStops(room, stops)}`;
  return degrees < LETS_THROUGH_DEG
    ? `${name} cannot open: ${meets}${degrees > 0 ? ` at ${degrees}°` : ""}.`
    : `${name} opens only to ${degrees}°: ${meets}.`;
}

function listStops({ plan }: Room, stops: readonly Stop[]): string {
  return listNames([...new Set(stops.map(({ thing }) => (thing ? sayThing(plan, thing) : "the stage's back wall")))]);
}
