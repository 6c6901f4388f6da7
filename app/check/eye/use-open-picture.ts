"use client";

import { useCallback } from "react";
import type { FourPoints } from "@/app/_photo/worker/messages";
import { asAddress, showPhoto } from "../show-photo";
import { useEyeRoom } from "./eye-context";

/** Takes a picture through the worker: opened, and straightened where that is asked for. */
export function useOpenPicture() {
  const { store, worker } = useEyeRoom();
  const fail = useCallback(
    (error: unknown) =>
      store.getState().show({
        at: "refused",
        say: "The picture could not be read here.",
        remedy: navigator.onLine
          ? `Load the page again and try once more. (${error instanceof Error ? error.message : String(error)})`
          : "The network is away: what reads pictures is fetched the first time. Try again when it is back.",
      }),
    [store],
  );
  const step = useCallback((words: string) => store.getState().show({ at: "working", words }), [store]);

  const openPicture = useCallback(
    async (file: Blob) => {
      step("Opening the picture");
      try {
        const answer = await worker.readPhoto(file, false, step);
        if (answer.kind === "refused") return store.getState().show({ at: "refused", ...pick(answer) });
        store.getState().take(await showPhoto(answer.shown));
      } catch (error) {
        fail(error);
      }
    },
    [worker, store, step, fail],
  );

  const straighten = useCallback(
    async (address: string, corners: FourPoints, size: readonly [width: number, height: number]) => {
      step("Straightening it by your corners");
      try {
        // The worker may have another photograph on hand, or none since the page was loaded again.
        const opened = await worker.readPhoto(pictureIn(address), false, step);
        if (opened.kind === "refused") return store.getState().show({ at: "refused", ...pick(opened) });
        const answer = await worker.straighten(corners, size);
        if (answer.kind === "refused") return store.getState().show({ at: "refused", ...pick(answer) });
        const { picture, width, height, widthMm } = answer;
        store.getState().take({ address: await asAddress(picture), width, height }, widthMm.toFixed(1));
      } catch (error) {
        fail(error);
      }
    },
    [worker, store, step, fail],
  );
  return { openPicture, straighten };
}

function pick({ say, remedy }: { readonly say: string; readonly remedy: string }) {
  return { say, remedy };
}

/** The picture that an address holds, as a file. */
function pictureIn(address: string): Blob {
  const [head = "", body = ""] = address.split(",");
  const bytes = Uint8Array.from(atob(body), (letter) => letter.charCodeAt(0));
  return new Blob([bytes], { type: head.slice("data:".length, head.indexOf(";")) });
}
