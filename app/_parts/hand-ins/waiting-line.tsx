"use client";

import Link from "next/link";
import { useEffect, useState } from "react";
import { useStore } from "zustand";
import { Press } from "../press";
import { createPost } from "./post";
import type { Waiting } from "./waiting";

/** Sends what waits, and says in one line how it stands; Class has the whole of it. */
export function WaitingLine() {
  const [post] = useState(createPost);
  const { waiting, receipts, sending, said } = useStore(post);
  useEffect(() => post.getState().open(), [post]);
  const open = waiting.filter(({ refused }) => refused === null);
  const refused = waiting.length - open.length;
  const taken = Object.keys(receipts).length;
  const words = [
    taken > 0
      ? `Handed in just now: ${taken === 1 ? "1 exercise of your homework" : `${taken} exercises of your homework`}.`
      : "",
    open.length > 0 ? `Not handed in yet: ${sayTitles(open)}. It will be sent when the network is back.` : "",
    said === null ? "" : `The server said: ${said}`,
    refused > 0
      ? `The server would not take ${refused === 1 ? "1 exercise" : `${refused} exercises`} of your homework.`
      : "",
  ].filter((part) => part !== "");
  if (words.length === 0) return null;
  return (
    <div className="cover-note" role="status">
      {words.join(" ")}{" "}
      {open.length > 0 && (
        <Press weight="small" onClick={() => void post.getState().send()} aria-disabled={sending}>
          {sending ? "Sending…" : "Send now"}
        </Press>
      )}
      {(refused > 0 || said !== null) && (
        <>
          {" "}
          <Link href="/class" className="plain-link" prefetch={false}>
            See it in Class
          </Link>
        </>
      )}
    </div>
  );
}

function sayTitles(waiting: readonly Waiting[]): string {
  const titles = [...new Set(waiting.map(({ title }) => title))];
  return titles.length <= 2 ? titles.join(" and ") : `${titles.length} exercises of your homework`;
}
