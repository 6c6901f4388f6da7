"use client";

import { useEffect, useState } from "react";
import { findShelf } from "@/app/_parts/kept-work/shelf";
import { unpackText } from "@/lib/draft/exercise-desk/pack-text";
import { readOwnAddress } from "./own-address";
import { setAside, takeUp } from "./set-aside";

export type OwnText =
  | { readonly kind: "looking" }
  /** `id` is what it is set aside under; null where this browser keeps nothing. */
  | { readonly kind: "found"; readonly text: string; readonly id: string | null }
  | { readonly kind: "gone"; readonly why: "no address" | "not kept" | "cut" };

/** The text of the exercise that this page's address names: only the browser knows it. */
export function useOwnText(): OwnText {
  const [own, setOwn] = useState<OwnText>({ kind: "looking" });
  useEffect(() => {
    let here = true;
    const look = async () => {
      const found = await find();
      if (here) setOwn(found);
    };
    look();
    const onHash = () => {
      if (window.location.hash.startsWith("#link=")) look();
    };
    window.addEventListener("hashchange", onHash);
    return () => {
      here = false;
      window.removeEventListener("hashchange", onHash);
    };
  }, []);
  return own;
}

async function find(): Promise<OwnText> {
  const address = readOwnAddress(window.location);
  if (!address) return { kind: "gone", why: "no address" };
  const shelf = findShelf();
  if (address.kind === "kept") {
    const text = takeUp(shelf, address.id);
    return text === null ? { kind: "gone", why: "not kept" } : { kind: "found", text, id: address.id };
  }
  const unpacked = await unpackText(address.packed);
  if (!unpacked.ok) return { kind: "gone", why: "cut" };
  return { kind: "found", text: unpacked.text, id: setAside(shelf, unpacked.text) };
}
