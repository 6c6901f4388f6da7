"use client";

import { useCallback, useState } from "react";
import { useStore } from "zustand";
import { createStore } from "zustand/vanilla";
import type { Bounds } from "@/app/_sheet/view";
import { type BoardSize, type Grip, type Grips, startGrips } from "./corner-marks";
import { useHandles } from "./use-handles";

/** So many moves can be taken back. */
const MOST_STEPS = 100;

type State<G extends Grip> = { readonly grips: Grips; readonly selected: G; readonly earlier: readonly Grips[] };

/** The handles at the corners of something on a photograph: where they stand, which is on hand, and how they are moved. */
export function useGrips<G extends Grip>(shown: readonly [G, ...G[]], size: BoardSize, bounds: Bounds) {
  const [store] = useState(() =>
    createStore<State<G>>(() => ({ grips: startGrips(size), selected: shown[0], earlier: [] })),
  );
  const { grips, selected } = useStore(store);
  const select = (grip: G) => store.setState({ selected: grip });
  const handles = useHandles({
    plane: "picture",
    bounds,
    places: () => new Map(shown.map((grip) => [grip, store.getState().grips[grip]])),
    selected: () => store.getState().selected,
    select: (grip) => select(grip as G),
    begin: () => store.setState(({ grips: was, earlier }) => ({ earlier: [...earlier, was].slice(-MOST_STEPS) })),
    move: (at) => store.setState(({ grips: was, selected: grip }) => ({ grips: { ...was, [grip]: at } })),
    rest: () => {},
    undo: () =>
      store.setState(({ grips: was, earlier }) => ({ grips: earlier.at(-1) ?? was, earlier: earlier.slice(0, -1) })),
    settle: () => select(shown[(shown.indexOf(store.getState().selected) + 1) % shown.length] ?? shown[0]),
  });
  const onHand = useCallback(() => store.getState().grips[store.getState().selected], [store]);
  return { grips, selected, select, handles, onHand, watch: store.subscribe };
}
