import { newDrawing } from "@/app/_photo/checked-drawing";
import type { WorkerDesk } from "@/app/_photo/worker-desk";
import { thawExercise } from "@/lib/classroom/live/freeze-exercise";
import { matchPage } from "@/lib/classroom/pile/match-page";
import type { FoundSheet, SentSheet } from "@/lib/classroom/pile/sheet-works";
import { layOutPracticeSheet } from "@/lib/drawing/practice-sheet/lay-out-practice-sheet";
import type { SheetCode } from "@/lib/sheet/sheet-code";
import { type PageState, type ReadPage, rankOf } from "./page-state";
import type { PileStore } from "./pile-store";

/** Asks the server which homework a code's exercise was set in. */
export type Finder = (code: SheetCode) => Promise<FoundSheet>;

type Desk = { readonly worker: WorkerDesk; readonly find: Finder; readonly store: PileStore };

/** Reads one page: its sheet, its exercise and homework, the lines for the name, the pencil. Whatever fails, it says so. */
export async function readPage({ worker, find, store }: Desk, id: string, file: Blob): Promise<PageState> {
  const step = (words: string) => store.getState().show(id, { at: "reading", words });
  step("Opening the photograph");
  const answer = await worker.readPhoto(file, true, step);
  const photo = answer.shown?.picture ?? null;
  if (answer.kind !== "sheet")
    return answer.kind === "opened"
      ? unread("No sheet was looked for in it.", "Read it once more.", photo)
      : unread(answer.say, answer.remedy, photo);
  const { code, residualMm } = answer;
  step("Finding its homework");
  const found = await find(code);
  if (found.kind !== "set") return notSet(found, code, photo);
  const { exercise, works } = found;
  step("Reading the pencil");
  const read = await worker.readDrawing({ ask: "drawing", exercise, code }, step);
  if (read.kind === "refused") return unread(read.say, read.remedy, photo);
  const name = await worker.showName(exercise, code);
  if (name.kind === "refused") return unread(name.say, name.remedy, photo);
  const sheet = layOutPracticeSheet(exercise, { paper: read.paper, copy: code.copy });
  if (!sheet) throw new Error("The sheet that was read has no layout.");
  const { students, numbered } = store.getState();
  const state: ReadPage = {
    at: "read",
    exercise,
    works,
    copy: code.copy,
    ...matchPage(works, code.copy, students),
    name: URL.createObjectURL(name.picture),
    drawing: newDrawing(exercise, sheet, read, URL.createObjectURL(read.picture), residualMm),
    late: false,
    rank: 0,
    sending: false,
    complaint: null,
    sentAs: null,
    taken: null,
  };
  return { ...state, rank: rankOf({ id, from: "", state }, numbered) };
}

function notSet(found: Exclude<FoundSheet, { readonly kind: "set" }>, code: SheetCode, photo: Blob | null): PageState {
  if (found.kind === "not-set")
    return unread(
      `Its exercise, “${code.exercise}”, is in no homework of this class.`,
      "Set it as homework, then read the page again.",
      photo,
    );
  const set = found.versions.length === 1 ? `version ${found.versions[0]}` : `versions ${found.versions.join(" and ")}`;
  return unread(
    `The sheet was printed from version ${code.version} of “${found.title}”, and the homework has ${set}: another exercise.`,
    "Set the exercise anew, then read the page again.",
    photo,
  );
}

export function unread(say: string, remedy: string, photo: Blob | null = null): PageState {
  return { at: "unread", say, remedy, photo: photo && URL.createObjectURL(photo) };
}

/** A finder that asks for each exercise once, and again where the network failed or it was set in nothing. */
export function createFinder(classId: string): Finder {
  const known = new Map<string, Promise<FoundSheet>>();
  return ({ exercise, version }) => {
    const key = `${exercise} ${version}`;
    const asked = known.get(key) ?? ask({ classId, exercise, version });
    known.set(key, asked);
    asked.then(
      ({ kind }) => kind !== "set" && known.delete(key),
      () => known.delete(key),
    );
    return asked;
  };
}

async function ask(body: { readonly classId: string; readonly exercise: string; readonly version: number }) {
  const answer = await fetch("/api/class/pile-sheet", {
    method: "POST",
    headers: { "Content-Type": "application/json" },
    body: JSON.stringify(body),
  });
  const reply = (await answer.json()) as
    | { readonly ok: true; readonly found: SentSheet }
    | { readonly ok: false; readonly sentence: string };
  if (!reply.ok) throw new Error(reply.sentence);
  const { found } = reply;
  return found.kind === "set" ? { ...found, exercise: thawExercise(found.exercise) } : found;
}
