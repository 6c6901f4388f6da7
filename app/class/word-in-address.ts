"use client";

import { useEffect, useState } from "react";
import { readWordLink } from "@/lib/classroom/accounts/word-link";

/** The one-time word of a link that was followed, empty without one; nothing until the browser has looked. */
export function useWordInAddress(): string | undefined {
  const [word, setWord] = useState<string | undefined>();
  useEffect(() => {
    setWord(readWordLink(window.location.hash));
    // The word is not left standing in the address, where anyone behind the chair can read it.
    window.history.replaceState(null, "", window.location.pathname);
  }, []);
  return word;
}
