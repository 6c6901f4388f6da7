"use client";

import { type ComponentType, useEffect, useState } from "react";
import { findShelf, keysOf } from "../kept-work/shelf";
import { WAITING_KEY } from "./waiting-key";

/** Sends homework that still waits in this browser, and tells of it. What does so is fetched only where something waits. */
export function SendIfWaiting() {
  const [Line, setLine] = useState<ComponentType | null>(null);
  useEffect(() => {
    const look = () => {
      const shelf = findShelf();
      if (!shelf || keysOf(shelf, WAITING_KEY).length === 0) return;
      // Without the network it cannot come; the next time the page is looked at it is tried again.
      import("./waiting-line").then(({ WaitingLine }) => setLine(() => WaitingLine)).catch(() => {});
    };
    look();
    window.addEventListener("online", look);
    return () => window.removeEventListener("online", look);
  }, []);
  return Line && <Line />;
}
