import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join as joinPath } from "node:path";
import { makeClass } from "@/lib/classroom/accounts/classes";
import { acceptInvitation, invite } from "@/lib/classroom/accounts/invitation";
import { wordsOfTeacher } from "@/lib/classroom/accounts/teachers";
import { versionsOfPlan } from "@/lib/classroom/library/read-library";
import { sharePlan } from "@/lib/classroom/library/share-plan";
import { openVote } from "@/lib/classroom/live/open-vote";
import { openStore } from "@/lib/classroom/store/open-store";
import type { Store } from "@/lib/classroom/store/store";
import { cookieHeaders, join, openRoom, ROUTER, type Room } from "../classroom/accounts/room";
import { exerciseOf, FILES, putDrawnClass } from "../classroom/gradebook/drawn-class";
import { keep } from "../classroom/library/two-teachers";
import { type ClassServer, serveClass } from "./class-server";

/** Who asks: the student whose work it is, another of the class, one of another class; both teachers. */
export const ROLES = [
  "nobody",
  "own student",
  "classmate",
  "student elsewhere",
  "teacher elsewhere",
  "teacher",
] as const;
export type Role = (typeof ROLES)[number];

const COLLEAGUE = { name: "Bo Lind", email: "bo@tidemill.example", password: "eight slow herons" };

export type World = {
  readonly server: ClassServer;
  /** What a browser of each would send. */
  readonly cookies: Readonly<Record<Role, string>>;
  readonly classId: string;
  /** The own student's and the classmate's places. */
  readonly memberId: string;
  readonly classmateId: string;
  /** The other teacher's class, and the place of the student in it. */
  readonly elsewhereId: string;
  readonly elsewhereMemberId: string;
  readonly voteId: string;
  readonly voteCode: string;
  readonly wordId: string;
  /** A plan of the teacher's library, shared, in its second edition. */
  readonly planId: string;
  readonly versionId: string;
  readonly shareWord: string;
  readonly close: () => Promise<void>;
};

/** Two teachers with a class each; in the first one homework with a drawing handed in, a vote, and an invitation. */
export async function openWorld(): Promise<World> {
  const folder = mkdtempSync(joinPath(tmpdir(), "plasterline-world-"));
  const opening = await openStore({ folder });
  if (!opening.ok) throw new Error(opening.refusal.sentence);
  const { store } = opening;
  const room = await openRoom(store);
  const made = await fill(store, room);
  await store.close();
  const server = await serveClass({}, folder);
  const close = async () => {
    await server.close();
    rmSync(folder, { recursive: true, force: true });
  };
  return { server, ...made, close };
}

async function fill(store: Store, room: Room) {
  const { auth, classId, teacherId } = room;
  const own = await join(room, "Wim");
  const mate = await join(room, "Tess");
  await putDrawnClass(store, classId, [
    { id: "w1", memberId: own.memberId, item: "floor", receivedAt: "2026-11-09T12:00:00.000Z", offMm: [2, 1] },
  ]);
  const exercise = exerciseOf(FILES.floor);
  const vote = await openVote(store, { classId, exercise, point: exercise.task.marks[0] ?? "" });
  const first = await inviteOne(store, teacherId);
  const bo = await acceptInvitation(store, auth, { ...COLLEAGUE, word: first, address: ROUTER });
  const third = { name: "Cem", email: "cem@tidemill.example", password: "two plain planks", address: ROUTER };
  const cem = await acceptInvitation(store, auth, { ...third, word: await inviteOne(store, teacherId) });
  await inviteOne(store, teacherId);
  if (!vote.ok || !bo.ok || !cem.ok) throw new Error("A new store takes all this.");
  const evening = await makeClass(store, bo.userId, "Evening class");
  if (!evening.ok) throw new Error(evening.sentence);
  const elsewhere = await join({ ...room, code: evening.code }, "Zoe");
  const ida = await auth.signIn("ida@tidemill.example", "seven tidy gulls");
  const word = (await wordsOfTeacher(store, teacherId)).find(({ state }) => state === "open");
  const cookie = (lines: readonly string[] = []) => cookieHeaders(lines).get("cookie") ?? "";
  return {
    cookies: {
      nobody: "",
      "own student": cookie(own.cookies),
      classmate: cookie(mate.cookies),
      "student elsewhere": cookie(elsewhere.cookies),
      "teacher elsewhere": cookie(bo.cookies),
      teacher: cookie(ida?.cookies),
    },
    classId,
    memberId: own.memberId,
    classmateId: mate.memberId,
    elsewhereId: evening.classId,
    elsewhereMemberId: elsewhere.memberId,
    voteId: vote.voteId,
    voteCode: vote.code,
    wordId: word?.id ?? "",
    ...(await putPlan(store, teacherId)),
  };
}

async function putPlan(store: Store, teacherId: string) {
  const { planId } = await keep(store, teacherId, "First");
  await keep(store, teacherId, "Second", { planId, base: 1 });
  const [version] = await versionsOfPlan(store, planId);
  const shared = await sharePlan(store, planId, true);
  return { planId, versionId: version?.id ?? "", shareWord: (shared.ok && shared.value) || "" };
}

async function inviteOne(store: Store, teacherId: string): Promise<string> {
  const made = await invite(store, teacherId, "");
  if (!made.ok) throw new Error(made.sentence);
  return made.word;
}
