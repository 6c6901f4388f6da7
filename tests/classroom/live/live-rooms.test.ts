import { describe, expect, it, vi } from "vitest";
import { type Hub, makeLocalHub } from "@/lib/classroom/live/hub";
import { makeLiveRooms } from "@/lib/classroom/live/live-rooms";
import { moveVote } from "@/lib/classroom/live/move-vote";
import { openVote } from "@/lib/classroom/live/open-vote";
import { makePostgresHub } from "@/lib/classroom/live/postgres-hub";
import type { Store } from "@/lib/classroom/store/store";
import { hasPostgres, onBothEngines, opened, storesOf } from "../engines";
import { putSmallClass } from "../store/small-class";
import { liveExercise } from "./live-exercise";
import { putGuess } from "./put-guess";

const exercise = liveExercise();
const SOON = { timeout: 8000, interval: 20 };

async function openOne(store: Store) {
  await putSmallClass(store);
  const vote = await openVote(store, { classId: "class", exercise, point: "B.foot" });
  if (!vote.ok) throw new Error(vote.sentence);
  return vote.voteId;
}

/** Someone who looks: the states they were sent, with their ids. */
function looker(counts = true) {
  const ids: string[] = [];
  const states: { readonly round: number; readonly state: string; readonly placed: number }[] = [];
  const send = (lines: string) => {
    const id = /^id: (.*)$/m.exec(lines)?.[1];
    const data = /^data: (.*)$/m.exec(lines)?.[1];
    if (id) ids.push(id);
    if (data) states.push(JSON.parse(data));
  };
  let ended = false;
  const end = () => {
    ended = true;
  };
  return { ids, states, counts, send, end, last: () => states.at(-1), ended: () => ended };
}

onBothEngines("looking at a vote", ({ engine, newStore }) => {
  const hubOf = (store: Store): Promise<Hub> =>
    engine === "postgres" ? makePostgresHub(store) : Promise.resolve(makeLocalHub());

  it("sends the whole state on coming in, counts together, and moves", async () => {
    const store = await newStore();
    const voteId = await openOne(store);
    const rooms = makeLiveRooms(store, await hubOf(store));
    const one = looker();
    const leave = rooms.enter(voteId, null, one);
    await vi.waitFor(() => expect(one.last()).toMatchObject({ round: 1, state: "open", placed: 0 }), SOON);
    const begun = performance.now();
    for (let i = 0; i < 40; i++) {
      await putGuess(store, { voteId, round: 1, person: `guest-${i}`, at: [i, 1] });
      rooms.placed(voteId);
    }
    await vi.waitFor(() => expect(one.last()?.placed).toBe(40), SOON);
    const seconds = (performance.now() - begun) / 1000;
    // At most five a second, and the one that was under way.
    expect(one.states.length).toBeLessThanOrEqual(Math.ceil(seconds * 5) + 2);

    await moveVote(store, { voteId, round: 1, move: "show" });
    await rooms.moved(voteId);
    await vi.waitFor(() => expect(one.last()).toMatchObject({ state: "revealed", placed: 40 }), SOON);

    // Who comes back has lost nothing, and is not sent again what they have.
    const [behind, upToDate] = [looker(), looker()];
    rooms.enter(voteId, "1.open.3.", behind);
    rooms.enter(voteId, one.ids.at(-1) ?? null, upToDate);
    expect(behind.last()).toMatchObject({ state: "revealed", placed: 40 });
    expect(upToDate.states).toEqual([]);
    leave?.();
    const had = one.states.length;
    await moveVote(store, { voteId, round: 1, move: "again" });
    await rooms.moved(voteId);
    await vi.waitFor(() => expect(upToDate.last()).toMatchObject({ round: 2, state: "open", placed: 0 }), SOON);
    expect(one.states.length).toBe(had);
    await rooms.close();
    expect([one.ended(), upToDate.ended()]).toEqual([false, true]);
    expect(rooms.enter(voteId, null, looker())).toBeNull();
  });

  it("tells a phone when the vote moves and not of every mark", async () => {
    const store = await newStore();
    const voteId = await openOne(store);
    const rooms = makeLiveRooms(store, await hubOf(store));
    const [front, phone] = [looker(), looker(false)];
    for (const each of [front, phone]) rooms.enter(voteId, null, each);
    for (const each of [front, phone]) await vi.waitFor(() => expect(each.last()?.placed).toBe(0), SOON);
    for (let i = 1; i <= 3; i++) {
      await putGuess(store, { voteId, round: 1, person: `guest-${i}`, at: [i, 1] });
      rooms.placed(voteId);
      await vi.waitFor(() => expect(front.last()?.placed).toBe(i), SOON);
    }
    expect(phone.states).toHaveLength(1);
    // Who comes in late is told all there is.
    const late = looker(false);
    rooms.enter(voteId, phone.ids[0] ?? null, late);
    expect(late.last()).toMatchObject({ state: "open", placed: 3 });
    for (const [move, round, state] of [
      ["show", 1, "revealed"],
      ["again", 2, "open"],
      ["tell", 2, "closed"],
    ] as const) {
      await moveVote(store, { voteId, round: move === "again" ? 1 : round, move });
      await rooms.moved(voteId);
      for (const each of [front, phone, late])
        await vi.waitFor(() => expect(each.last()).toMatchObject({ round, state }), SOON);
    }
    expect(phone.states.map(({ state }) => state)).toEqual(["open", "revealed", "open", "closed"]);
    await rooms.close();
  });

  it("has no guess and no true point in what it sends before that is shown", async () => {
    const store = await newStore();
    const voteId = await openOne(store);
    const rooms = makeLiveRooms(store, await hubOf(store));
    const sent: string[] = [];
    rooms.enter(voteId, null, { counts: true, send: (lines) => sent.push(lines), end: () => {} });
    await putGuess(store, { voteId, round: 1, person: "wim", at: [1.2345, 6.789] });
    rooms.placed(voteId);
    await moveVote(store, { voteId, round: 1, move: "show" });
    await rooms.moved(voteId);
    await vi.waitFor(() => expect(sent.join("")).toContain("revealed"), SOON);
    expect(sent.join("")).not.toMatch(/1\.2345|6\.789|wim/);
    expect(
      sent
        .join("")
        .match(/"truth":[^,]*/g)
        ?.every((part) => part === '"truth":null'),
    ).toBe(true);
    expect(Math.max(...sent.map((lines) => lines.length))).toBeLessThan(200);
    await rooms.close();
  });
});

describe.skipIf(!hasPostgres)("several server processes, PostgreSQL", () => {
  const { newPlace, newStore } = storesOf("postgres");

  it("share a vote", async () => {
    const place = await newPlace();
    const [here, there] = [await opened(place), await opened(place)];
    const voteId = await openOne(here);
    const [ours, theirs] = [
      makeLiveRooms(here, await makePostgresHub(here)),
      makeLiveRooms(there, await makePostgresHub(there)),
    ];
    const [one, other] = [looker(), looker()];
    ours.enter(voteId, null, one);
    theirs.enter(voteId, null, other);
    await putGuess(here, { voteId, round: 1, person: "a", at: [1, 1] });
    ours.placed(voteId);
    await putGuess(there, { voteId, round: 1, person: "b", at: [1, 1] });
    theirs.placed(voteId);
    for (const each of [one, other]) await vi.waitFor(() => expect(each.last()?.placed).toBe(2), SOON);
    await moveVote(there, { voteId, round: 1, move: "tell" });
    await theirs.moved(voteId);
    for (const each of [one, other]) await vi.waitFor(() => expect(each.last()?.state).toBe("closed"), SOON);
    for (const rooms of [ours, theirs]) await rooms.close();
    for (const store of [here, there]) await store.close();
  });

  it("listens anew when the connection broke, and looks at what it missed", async () => {
    const store = await newStore();
    const voteId = await openOne(store);
    const hub = await makePostgresHub(store);
    const rooms = makeLiveRooms(store, hub);
    const one = looker();
    rooms.enter(voteId, null, one);
    await vi.waitFor(() => expect(one.last()?.state).toBe("open"), SOON);
    const { rows } = await import("kysely").then(({ sql }) =>
      sql`select pg_terminate_backend(pid) from pg_stat_activity
        where application_name = 'plasterline live' and datname = current_database()`.execute(store.db),
    );
    expect(rows).toHaveLength(1);
    // Nobody is told of this one: only looking again finds it.
    await moveVote(store, { voteId, round: 1, move: "show" });
    await vi.waitFor(() => expect(one.last()?.state).toBe("revealed"), SOON);
    await rooms.close();
  });
});
