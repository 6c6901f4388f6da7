"use client";

import { useEffect, useState } from "react";
import type { DraftReading } from "@/lib/draft/read-draft";

/** A plan read from the text of its file; null until there is one and it is read. */
export function useReadDraft(text: string | null): DraftReading | null {
  const [reading, setReading] = useState<DraftReading | null>(null);
  useEffect(() => {
    let here = true;
    const read = async () => {
      if (text === null) return;
      const { readDraft } = await import("@/lib/draft/read-draft");
      if (here) setReading(readDraft(text));
    };
    read();
    return () => {
      here = false;
    };
  }, [text]);
  return reading;
}
