"use client";

import { useEffect, useState } from "react";
import { findShelf } from "@/app/_parts/kept-work/shelf";
import type { Work } from "../kept/kept-plans";
import { planOnTable } from "./put-on-plan";

/** The plan that lies on the desk, with all that can be undone; null where there is none. */
export function useTablePlan(): Work | null {
  const [work, setWork] = useState<Work | null>(null);
  useEffect(() => {
    let here = true;
    const find = async () => {
      const { readDraft } = await import("@/lib/draft/read-draft");
      const found = planOnTable(findShelf(), (text) => {
        const reading = readDraft(text);
        return reading.ok ? reading.draft : null;
      });
      if (here) setWork(found);
    };
    find();
    return () => {
      here = false;
    };
  }, []);
  return work;
}
