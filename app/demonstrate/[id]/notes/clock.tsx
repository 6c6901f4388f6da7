"use client";

import { useEffect, useState } from "react";

const SECOND_MS = 1000;

/** The time since the demonstration began, and the time of day. */
export function Clock({ startedAt }: { readonly startedAt: number | null }) {
  const [now, setNow] = useState<number | null>(null);
  useEffect(() => {
    const tick = () => setNow(Date.now());
    tick();
    const clock = window.setInterval(tick, SECOND_MS);
    return () => window.clearInterval(clock);
  }, []);
  if (now === null) return <p className="notes-clock">--:--</p>;
  return (
    <p className="notes-clock">
      <span data-clock="">{startedAt === null ? "--:--" : sayElapsed(now - startedAt)}</span>
      <span className="notes-time">{new Date(now).toLocaleTimeString([], { hour: "2-digit", minute: "2-digit" })}</span>
    </p>
  );
}

/** "4:07", "1:04:07". A clock that was set back shows no time. */
export function sayElapsed(ms: number): string {
  const seconds = Math.max(0, Math.floor(ms / SECOND_MS));
  const two = (value: number) => String(value).padStart(2, "0");
  const [hours, minutes] = [Math.floor(seconds / 3600), Math.floor(seconds / 60) % 60];
  return hours > 0 ? `${hours}:${two(minutes)}:${two(seconds % 60)}` : `${minutes}:${two(seconds % 60)}`;
}
