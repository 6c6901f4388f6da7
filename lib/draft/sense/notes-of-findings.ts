import type { Exercise } from "../../exercise/exercise";
import type { ProjectedPoint } from "../../exercise/exercise-points";
import type { Finding } from "../../exercise/finding";
import { capital } from "../../plan/first-letter";
import type { Draft, Thing } from "../draft";
import { mendFinding } from "./mend-finding";
import { listNames, type Note } from "./note";
import { eachOnce, placeOfPointer } from "./note-place";

type Points = ReadonlyMap<string, ProjectedPoint>;

/** How check-sense ends what it says of a thing outside the frame, and of a corner without walls. */
const OUTSIDE = " falls outside the frame of the picture";
const NO_WALL = "no wall uses corner ";

/**
 * What the sense checks found, as notes on things. What they say of many things in the same words becomes one note; of a bare
 * stage it is said once that nothing stands on it.
 */
export function notesOfFindings(draft: Draft, findings: readonly Finding[], points: Points): readonly Note[] {
  const { exercise } = draft;
  if (points.size === 0) return [...nothingThere(), ...each(findings.filter(({ where }) => !ofBareStage(where)))];
  const outside = findings.filter(({ where, message }) => where.startsWith("/plan/") && message.endsWith(OUTSIDE));
  const alone = findings.filter(({ message }) => message.startsWith(NO_WALL));
  const rest = findings.filter((finding) => !outside.includes(finding) && !alone.includes(finding));
  return [
    ...each(rest),
    ...together(exercise, points, outside, {
      one: "falls outside the frame of the picture",
      many: "fall outside the frame of the picture",
      remedy: "Fine for returns and masking; nobody can be asked to place it there.",
    }),
    ...together(exercise, points, alone, {
      one: "stands alone: no wall uses it",
      many: "stand alone: no wall uses them",
      remedy: "Fine for plain points on the floor. Take away what is left over.",
    }),
  ];

  function each(some: readonly Finding[]): readonly Note[] {
    return some.map((finding) => {
      const { where, things } = placeOfPointer(finding.where, exercise, points);
      const edit = mendFinding(draft, finding);
      return {
        weight: finding.weight,
        where,
        things: eachOnce([...things, ...otherWall(exercise, finding)]),
        say: sentence(finding.message, points),
        remedy: sentence(finding.hint, points),
        ...(edit ? { edit } : {}),
      };
    });
  }
}

function nothingThere(): readonly Note[] {
  const say = "Nothing stands on this stage yet.";
  return [{ weight: "fault", where: "stage", things: [], say, remedy: "Draw a wall, or put something on the floor." }];
}

function ofBareStage(where: string): boolean {
  return where === "/plan" || where.startsWith("/task/");
}

type Words = { readonly one: string; readonly many: string; readonly remedy: string };

/** Findings that say the same of one thing each, as one note; none of none. */
function together(
  exercise: Exercise,
  points: Points,
  findings: readonly Finding[],
  { one, many, remedy }: Words,
): readonly Note[] {
  const things = eachOnce(findings.flatMap(({ where }) => placeOfPointer(where, exercise, points).things));
  const [first] = things;
  if (!first) return [];
  const say = `${listNames(things.map(({ id }) => id))} ${things.length === 1 ? one : many}.`;
  return [{ weight: "note", where: first, things, say, remedy }];
}

/** The wall that a wall is said to cross. */
function otherWall({ plan }: Exercise, { where, message }: Finding): readonly Thing[] {
  if (!message.includes("crosses wall")) return [];
  const wall = plan.walls[Number(where.split("/")[3])];
  const other = plan.walls.find(({ id }) => message === `wall "${wall?.id}" crosses wall "${id}"`);
  return other ? [{ kind: "wall", id: other.id }] : [];
}

/** A remark of the sense checks, which has no capital and no full stop, as a sentence. A name that begins it stays as it is. */
function sentence(words: string, points: Points): string {
  const begun = points.has(words.split(" ")[0] ?? "") ? words : capital(words);
  return /[.?!]$/.test(begun) ? begun : `${begun}.`;
}
