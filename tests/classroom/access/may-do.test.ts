import { describe, expect, it } from "vitest";
import { type Action, MAY, mayDo, STANDINGS, type Standing, standingOf } from "@/lib/classroom/access/may-do";
import { type Person, SCHOOL, type Subject } from "@/lib/classroom/access/person";

const student = (...places: readonly (readonly [string, string])[]): Person => ({
  kind: "student",
  userId: "s",
  name: "Wim",
  places: places.map(([memberId, classId]) => ({ memberId, classId })),
});
const work: Subject = { classId: "c1", teacherId: "t1", memberId: "m1", released: true };

const PEOPLE: Readonly<Record<Standing, readonly [Person, Subject]>> = {
  nobody: [{ kind: "nobody" }, work],
  "student-elsewhere": [student(["m9", "c9"]), work],
  classmate: [student(["m2", "c1"]), work],
  "self-waiting": [student(["m1", "c1"]), { ...work, released: false }],
  self: [student(["m1", "c1"]), work],
  "teacher-elsewhere": [{ kind: "teacher", userId: "t2", name: "Bo" }, work],
  "own-teacher": [{ kind: "teacher", userId: "t1", name: "Ida" }, work],
};

/** Who may, written out once more by hand: y for yes, in the order of the columns. */
const COLUMNS: readonly Standing[] = [
  "nobody",
  "student-elsewhere",
  "classmate",
  "self-waiting",
  "self",
  "teacher-elsewhere",
  "own-teacher",
];
const GRID: Readonly<Record<Action, string>> = {
  "make-class": "-----yy",
  "make-plan": "-----yy",
  "see-plan": "------y",
  "change-plan": "------y",
  "erase-plan": "------y",
  "share-plan": "------y",
  "see-shared-plan": "-----yy",
  "see-teachers": "-----yy",
  "invite-teacher": "-----yy",
  "make-way-back": "-----yy",
  "withdraw-word": "------y",
  "change-password": "------y",
  "see-class": "--yyy-y",
  "change-class": "------y",
  "erase-class": "------y",
  "export-class": "------y",
  "see-members": "------y",
  "change-members": "------y",
  "export-member": "------y",
  "erase-member": "------y",
  "renew-passphrase": "------y",
  "set-homework": "------y",
  "see-homework": "--yyy-y",
  "do-homework": "---yy--",
  "hand-in-for": "------y",
  "see-own-marks": "---yy-y",
  "see-result": "----y-y",
  "see-truth": "----y-y",
  "see-remarks": "----y-y",
  "make-remark": "------y",
  "override-score": "------y",
  "score-criterion": "------y",
  excuse: "------y",
  regrade: "------y",
  "see-gradebook": "------y",
  "see-teach-again": "------y",
  "run-vote": "------y",
  "see-vote": "--yyy-y",
  guess: "--yyy--",
};

describe("who may do what", () => {
  const cases = (Object.keys(MAY) as Action[]).flatMap((action) =>
    COLUMNS.map((standing, i) => [standing, action, GRID[action][i] === "y"] as const),
  );

  it("has every standing and every action in the grid", () => {
    expect([...COLUMNS].sort()).toEqual([...STANDINGS].sort());
    expect(cases).toHaveLength(Object.keys(GRID).length * STANDINGS.length);
    for (const row of Object.values(GRID)) expect(row).toHaveLength(STANDINGS.length);
  });

  it.each(cases)("%s, %s: %s", (standing, action, may) => {
    const [person, subject] = PEOPLE[standing];
    expect(standingOf(person, subject)).toBe(standing);
    expect(mayDo(person, action, subject)).toBe(may);
  });

  it("gives a student nothing by a place of the same number in another class", () => {
    expect(standingOf(student(["m1", "c9"]), work)).toBe("student-elsewhere");
  });

  it("takes nobody for the owner of what is nobody's in particular", () => {
    expect(standingOf({ kind: "teacher", userId: "t1", name: "Ida" }, SCHOOL)).toBe("teacher-elsewhere");
    expect(standingOf(student(["m1", "c1"]), SCHOOL)).toBe("student-elsewhere");
    expect(standingOf({ kind: "nobody" }, SCHOOL)).toBe("nobody");
  });

  it("takes a student for a classmate where it is about nobody in particular, and results for kept back unless said", () => {
    expect(standingOf(student(["m1", "c1"]), { classId: "c1", teacherId: "t1" })).toBe("classmate");
    expect(standingOf(student(["m1", "c1"]), { classId: "c1", teacherId: "t1", memberId: "m1" })).toBe("self-waiting");
    expect(standingOf(student(["m2", "c1"]), { classId: "c1", teacherId: "t1", memberId: null })).toBe("classmate");
  });
});
