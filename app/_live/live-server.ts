import { type Opened, openClassroom } from "@/app/_server/classroom";
import type { Subject } from "@/lib/classroom/access/person";
import { cookieSecret } from "@/lib/classroom/accounts/settings";
import { type GuessBatches, makeGuessBatches } from "@/lib/classroom/live/guess-batches";
import { makeLocalHub } from "@/lib/classroom/live/hub";
import { type LiveRooms, makeLiveRooms } from "@/lib/classroom/live/live-rooms";
import { makePace, type Pace } from "@/lib/classroom/live/pace";
import { makePostgresHub } from "@/lib/classroom/live/postgres-hub";
import { makeVoteSubjects } from "@/lib/classroom/live/vote-subjects";
import type { Store } from "@/lib/classroom/store/store";

export type Live = {
  readonly rooms: LiveRooms;
  readonly guesses: GuessBatches;
  readonly pace: Pace;
  /** Whose class a vote belongs to, as it was a few seconds ago at most. */
  readonly subjectOf: (voteId: string) => Promise<Subject | undefined>;
  /** What guests' tokens are signed with. */
  readonly secret: string;
};

type Kept = { readonly store: Store; readonly live: Promise<Live> };

/** Each route is built by itself and would keep rooms of its own: the process keeps one set for all. */
const process_ = globalThis as typeof globalThis & { plasterlineLive?: Kept | undefined };

/** Who looks at votes by this process, and how they are told; for the store that is open now. */
export function openLive(store: Store): Promise<Live> {
  const kept = process_.plasterlineLive;
  if (kept?.store === store) return kept.live;
  const live = open(store);
  process_.plasterlineLive = { store, live };
  live.catch(() => {
    process_.plasterlineLive = undefined;
  });
  return live;
}

async function open(store: Store): Promise<Live> {
  const secret = await cookieSecret(store);
  const hub = store.engine === "postgres" ? await makePostgresHub(store) : makeLocalHub();
  const rooms = makeLiveRooms(store, hub);
  // A server that is told to stop waits for whoever is still connected, and a phone stays connected.
  for (const signal of ["SIGINT", "SIGTERM"] as const) process.once(signal, () => void rooms.close().catch(() => {}));
  const guesses = makeGuessBatches(store, rooms.placed);
  return { rooms, guesses, pace: makePace(), subjectOf: makeVoteSubjects(store), secret };
}

/** The classroom with its live part, for routes that are not forms. */
export async function openLiveClassroom(): Promise<
  | { readonly ok: true; readonly classroom: Extract<Opened, { ok: true }>["classroom"]; readonly live: Live }
  | Extract<Opened, { ok: false }>
> {
  const opened = await openClassroom();
  if (!opened.ok) return opened;
  return { ok: true, classroom: opened.classroom, live: await openLive(opened.classroom.store) };
}
