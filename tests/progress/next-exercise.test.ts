import { describe, expect, it } from "vitest";
import { type CourseItem, nextExercise } from "@/lib/progress/next-exercise";
import type { AttemptRecord } from "@/lib/progress/record";
import { aRecord, day, marksFor } from "./records";

const CATALOGUE: readonly CourseItem[] = [
  { id: "frame", title: "Reading the frame", skills: ["true-size", "ray-to-cvp"] },
  { id: "points", title: "Points on the floor", skills: ["depth-by-eye", "ray-to-cvp"] },
  { id: "wall", title: "A raking wall", skills: ["depth-by-eye", "raking-wall", "height"] },
  { id: "box", title: "A box", skills: ["furniture", "height"] },
];

function drawn(exercise: string, n: number, marks: Readonly<Record<string, string>>): AttemptRecord {
  return aRecord(
    exercise,
    day(n),
    Object.entries(marks).flatMap(([skill, signs]) => marksFor(skill, signs)),
  );
}

/** Everything mastered on the first day, each exercise once, in order. */
const ALL = [
  drawn("frame", 0, { "true-size": "+++", "ray-to-cvp": "+++" }),
  drawn("points", 0.1, { "depth-by-eye": "+++" }),
  drawn("wall", 0.2, { "raking-wall": "+++", height: "+++" }),
  drawn("box", 0.3, { furniture: "+++" }),
];

describe("nextExercise", () => {
  const cases: readonly (readonly [string, readonly AttemptRecord[], number, object])[] = [
    [
      "a new student begins at the beginning",
      [],
      0,
      { exercise: "frame", kind: "first", skill: null, reason: "Begin at the beginning: Reading the frame." },
    ],
    [
      "the shakiest skill, elsewhere than in the exercise just drawn",
      [drawn("frame", 0, { "true-size": "+++", "ray-to-cvp": "d" })],
      0,
      {
        exercise: "points",
        kind: "shaky",
        skill: "ray-to-cvp",
        reason: "Rays to the CVP are shaky: your last mark was too far downstage.",
      },
    ],
    [
      "an exercise with more than one new skill only when there is no other: first the one drawn before",
      [
        drawn("frame", 0, { "true-size": "+++" }),
        drawn("points", 0.1, { "depth-by-eye": "+++uu", "ray-to-cvp": "+++" }),
        drawn("frame", 0.2, { "ray-to-cvp": "+" }),
      ],
      0.5,
      {
        exercise: "points",
        kind: "shaky",
        skill: "depth-by-eye",
        reason: "Depth by eye is shaky: two of your last five marks were too far upstage.",
      },
    ],
    [
      "what is begun is mastered: the next in the course",
      [drawn("frame", 0, { "true-size": "+++", "ray-to-cvp": "+++" })],
      0,
      {
        exercise: "points",
        kind: "next",
        skill: null,
        reason:
          "What you have begun is mastered. Next in the course: Points on the floor, which brings in depth by eye.",
      },
    ],
    [
      "an old record without marks: the next in the course, with nothing said of mastery",
      [aRecord("frame", day(0))],
      0,
      {
        exercise: "points",
        kind: "next",
        reason: "Next in the course: Points on the floor, which brings in depth by eye and rays to the CVP.",
      },
    ],
    [
      "a mastered skill that is due comes before a shaky one, in the exercise less often drawn",
      [drawn("frame", 0, { "ray-to-cvp": "+++" }), drawn("wall", 0.2, { height: "+++", "raking-wall": "d" })],
      9.2,
      {
        exercise: "points",
        kind: "keep",
        skill: "ray-to-cvp",
        reason: "Rays to the CVP were mastered nine days ago; one to keep them.",
      },
    ],
    [
      "not two returns in a row while something is shaky",
      [
        ...ALL.slice(0, 2),
        drawn("wall", 0.2, { height: "+++", "raking-wall": "d" }),
        drawn("frame", 9, { "true-size": "+", "ray-to-cvp": "+" }),
      ],
      9.2,
      { exercise: "wall", kind: "shaky", skill: "raking-wall" },
    ],
    [
      "two returns in a row when there is nothing else",
      [...ALL, drawn("frame", 9, { "true-size": "+", "ray-to-cvp": "+" })],
      9.2,
      {
        exercise: "points",
        kind: "keep",
        skill: "depth-by-eye",
        reason: "Depth by eye was mastered nine days ago; one to keep it.",
      },
    ],
    [
      "a kept skill says when it was practised",
      [
        drawn("frame", 0, { "true-size": "+++" }),
        drawn("frame", 1, { "true-size": "+" }),
        drawn("box", 1.5, { height: "+" }),
      ],
      5,
      {
        exercise: "frame",
        kind: "keep",
        reason: "True size on the plaster line was last practised four days ago; one to keep it.",
      },
    ],
    [
      "everything drawn, mastered and not due: the one drawn longest ago",
      ALL,
      0.5,
      {
        exercise: "frame",
        kind: "again",
        reason: "You have drawn every exercise, and nothing is due. This one you drew longest ago: today.",
      },
    ],
    [
      "a shaky skill that no exercise here trains is passed over",
      [drawn("elsewhere", 0, { masking: "d" })],
      0,
      { exercise: "frame", kind: "next" },
    ],
  ];
  it.each(cases)("%s", (_name, records, now, expected) => {
    expect(nextExercise(records, CATALOGUE, new Date(day(now)))).toMatchObject(expected);
  });

  it("has nothing to say of an empty catalogue", () => {
    expect(nextExercise([], [], new Date(day(0)))).toBeNull();
    expect(nextExercise(ALL, [], new Date(day(9)))).toBeNull();
  });
});
