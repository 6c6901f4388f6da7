"use client";

import { useSyncExternalStore } from "react";

const never = () => () => {};

/** A moment in the reader's own time and way of writing, which only their browser knows. */
export function When({ at }: { readonly at: string }) {
  const words = useSyncExternalStore(
    never,
    () =>
      new Date(at).toLocaleString([], {
        weekday: "short",
        day: "numeric",
        month: "short",
        hour: "2-digit",
        minute: "2-digit",
      }),
    () => `${at.slice(0, 16).replace("T", " ")} UTC`,
  );
  return <time dateTime={at}>{words}</time>;
}
