"use client";

import { useEffect, useState } from "react";
import type { Part } from "./part";
import { PartComing } from "./part-coming";

type Props<Given> = { readonly part: Part<Given>; readonly given: Given };

/** A part that is fetched when it is first shown. Until it comes its place is held, and says so when it does not. */
export function Fetched<Given extends object>({ part, given }: Props<Given>) {
  const [, setCome] = useState(part.here() !== null);
  const [failed, setFailed] = useState(false);
  const [tries, setTries] = useState(0);
  const Here = part.here();
  // biome-ignore lint/correctness/useExhaustiveDependencies: another try is what this waits for
  useEffect(() => {
    let waits = true;
    setFailed(false);
    part.fetch().then(
      () => waits && setCome(true),
      () => waits && setFailed(true),
    );
    return () => {
      waits = false;
    };
  }, [part, tries]);
  if (Here) return <Here {...given} />;
  if (part.what === null) return null;
  return <PartComing what={part.what} failed={failed} onAgain={() => setTries(tries + 1)} />;
}
