"use client";

import { useEffect, useState } from "react";
import { useStore } from "zustand";
import { Press } from "../press";
import { saveFile } from "../save-file";
import { createPost, type PostStore } from "./post";
import type { Waiting } from "./waiting";

/** Sends what still waits in this browser, and tells of it while it does; nothing where nothing waits. */
export function SendWaiting({ onTaken }: { readonly onTaken?: () => void }) {
  const [post] = useState(createPost);
  const count = useStore(post, ({ receipts }) => Object.keys(receipts).length);
  const waiting = useStore(post, (state) => state.waiting);
  useEffect(() => post.getState().open(), [post]);
  useEffect(() => {
    if (count > 0) onTaken?.();
  }, [count, onTaken]);
  return waiting.length === 0 ? null : <WaitingList post={post} waiting={waiting} named />;
}

type Props = {
  readonly post: PostStore;
  readonly waiting: readonly Waiting[];
  /** Whether to say which exercise each is of. */
  readonly named?: boolean;
};

/** What waits to be sent, and what the server would not take. */
export function WaitingList({ post, waiting, named = false }: Props) {
  const said = useStore(post, (state) => state.said);
  const sending = useStore(post, (state) => state.sending);
  const unkept = useStore(post, (state) => state.unkept);
  return (
    <div role="status">
      <ul className="hand-ins">
        {waiting.map((each) => (
          <li key={each.id}>
            {named && <strong>{each.title}: </strong>}
            {each.refused === null ? (
              <>
                {unkept.some(({ id }) => id === each.id)
                  ? "Not handed in yet, and this browser keeps nothing: leave this page open; it will be sent when the network is back."
                  : "Kept here; will be sent when the network is back."}
                {said !== null && ` The server said: ${said}`}{" "}
                <Press weight="small" onClick={() => void post.getState().send()} aria-disabled={sending}>
                  {sending ? "Sending…" : "Send now"}
                </Press>
              </>
            ) : (
              <>
                Not handed in. {each.refused}{" "}
                <Press weight="small" onClick={() => saveMarks(each)}>
                  Save these marks
                </Press>{" "}
                <Press weight="small" onClick={() => post.getState().putAway(each.id)}>
                  Put them away
                </Press>
              </>
            )}
          </li>
        ))}
      </ul>
    </div>
  );
}

function saveMarks({ marks }: Waiting): void {
  saveFile(`${marks.exercise}.marks.json`, `${JSON.stringify(marks, null, 2)}\n`);
}
