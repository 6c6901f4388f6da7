/** Tells everyone who looks at a vote, in whichever server process, that something about it has changed. */
export type Hub = {
  /** Says that a vote has changed. What has, the store knows. */
  readonly tell: (voteId: string) => Promise<void>;
  /** Calls back when a vote has changed, and after any time in which a change may have been missed. Returns how to stop. */
  readonly hear: (voteId: string, changed: () => void) => () => void;
  readonly close: () => Promise<void>;
};

/** Those who listen, by vote. */
export type Ears = {
  readonly add: (voteId: string, changed: () => void) => () => void;
  readonly call: (voteId: string) => void;
  readonly callAll: () => void;
};

export function makeEars(): Ears {
  const listening = new Map<string, Set<() => void>>();
  return {
    add: (voteId, changed) => {
      const all = listening.get(voteId) ?? new Set();
      listening.set(voteId, all.add(changed));
      return () => {
        all.delete(changed);
        if (all.size === 0 && listening.get(voteId) === all) listening.delete(voteId);
      };
    },
    call: (voteId) => {
      for (const changed of listening.get(voteId) ?? []) changed();
    },
    callAll: () => {
      for (const all of listening.values()) for (const changed of all) changed();
    },
  };
}

/** The hub of a server that is alone with its store. */
export function makeLocalHub(): Hub {
  const ears = makeEars();
  return { tell: async (voteId) => ears.call(voteId), hear: ears.add, close: async () => {} };
}
