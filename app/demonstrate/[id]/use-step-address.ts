"use client";

import { useEffect } from "react";
import { useRoom } from "./demonstration-context";

const STEP = /^#step=(\d{1,6})$/;

/** The step on the sheet is in the page's address: `#step=12`. A reload or a link opens there. */
export function useStepAddress() {
  const { store } = useRoom();
  useEffect(() => {
    const take = () => {
      const number = STEP.exec(window.location.hash)?.[1];
      if (number !== undefined) store.getState().go(Number(number) - 1);
    };
    take();
    window.addEventListener("hashchange", take);
    const stop = store.subscribe((now, before) => {
      if (now.at !== before.at) window.history.replaceState(window.history.state, "", `#step=${now.at + 1}`);
    });
    return () => {
      window.removeEventListener("hashchange", take);
      stop();
    };
  }, [store]);
}
