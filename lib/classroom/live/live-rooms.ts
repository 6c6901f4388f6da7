import type { Store } from "../store/store";
import { coalesce } from "./coalesce";
import type { Hub } from "./hub";
import { liveState, versionOf } from "./live-state";

/** Counts go out at most five times a second. */
const PAUSE_MS = 200;

/** What is sent to one who looks: lines of an event stream, as https://html.spec.whatwg.org/multipage/server-sent-events.html has them. */
export type Looker = {
  readonly send: (lines: string) => void;
  /** Whether to be told of every mark that comes in; else only when the vote moves. */
  readonly counts: boolean;
  /** The server stops: a stream that stays open would keep it from it. */
  readonly end: () => void;
};

export type LiveRooms = {
  /**
   * Sends the whole state of a vote at once, unless it is the one last seen, and each new one as it comes: those with more
   * marks than before only to who `counts`. Returns how to leave, or null where too many look already, and when the server
   * stops.
   */
  readonly enter: (voteId: string, lastSeen: string | null, looker: Looker) => (() => void) | null;
  /** A guess was kept: those who look are told, soon and together. */
  readonly placed: (voteId: string) => void;
  /** The vote has moved on: those who look are told now. */
  readonly moved: (voteId: string) => Promise<void>;
  readonly close: () => Promise<void>;
};

type Room = {
  readonly looking: Set<Looker>;
  readonly latest: () => { readonly version: string; readonly event: string } | null;
  readonly leave: () => void;
};

/** Sent while nothing happens: no proxy takes the silence for the end, and a phone that hears none for long comes in anew. */
const HEARTBEAT_MS = 15_000;
const HEARTBEAT = "event: beat\ndata:\n\n";

/** Pages that look at one vote by one process; each keeps a connection. */
const MOST_LOOKING = 4000;

/** The votes that somebody looks at by this process, and who does. The state is read once for all who look. */
export function makeLiveRooms(store: Store, hub: Hub): LiveRooms {
  const rooms = new Map<string, Room>();
  const tellers = new Map<string, ReturnType<typeof coalesce>>();
  let closed = false;

  const roomOf = (voteId: string): Room => {
    const known = rooms.get(voteId);
    if (known) return known;
    const room = openRoom(store, hub, voteId);
    rooms.set(voteId, room);
    return room;
  };
  const tellerOf = (voteId: string) => {
    const known = tellers.get(voteId);
    if (known) return known;
    const made = coalesce(() => hub.tell(voteId).catch(() => {}), PAUSE_MS);
    // Votes end; a teller is only a timer, and the next guess makes another.
    if (tellers.size > 100) tellers.clear();
    tellers.set(voteId, made);
    return made;
  };
  return {
    enter: (voteId, lastSeen, looker) => {
      if (closed) return null;
      const room = roomOf(voteId);
      if (room.looking.size >= MOST_LOOKING) return null;
      room.looking.add(looker);
      const latest = room.latest();
      if (latest && latest.version !== lastSeen) looker.send(latest.event);
      return () => {
        room.looking.delete(looker);
        if (room.looking.size > 0 || rooms.get(voteId) !== room) return;
        rooms.delete(voteId);
        room.leave();
      };
    },
    placed: (voteId) => tellerOf(voteId).call(),
    moved: (voteId) => hub.tell(voteId),
    close: async () => {
      closed = true;
      for (const room of [...rooms.values()]) {
        for (const { end } of [...room.looking]) end();
        room.leave();
      }
      rooms.clear();
      for (const teller of tellers.values()) teller.stop();
      await hub.close();
    },
  };
}

function openRoom(store: Store, hub: Hub, voteId: string): Room {
  const looking = new Set<Looker>();
  let latest: { version: string; stage: string; event: string } | null = null;
  const look = coalesce(async () => {
    const state = await liveState(store, voteId).catch(() => null);
    // A store that cannot be reached just now says nothing; the heartbeat looks again.
    if (!state) return;
    const version = versionOf(state);
    if (latest?.version === version) return;
    const stage = versionOf({ ...state, placed: 0 });
    const moved = latest?.stage !== stage;
    latest = { version, stage, event: `id: ${version}\ndata: ${JSON.stringify(state)}\n\n` };
    for (const { send, counts } of [...looking]) if (moved || counts) send(latest.event);
  }, PAUSE_MS);
  const stopHearing = hub.hear(voteId, look.call);
  const heart = setInterval(() => {
    for (const { send } of [...looking]) send(HEARTBEAT);
    look.call();
  }, HEARTBEAT_MS);
  heart.unref();
  look.call();
  return {
    looking,
    latest: () => latest,
    leave: () => {
      clearInterval(heart);
      look.stop();
      stopHearing();
    },
  };
}
