"use client";

import type { Thing } from "@/lib/draft/draft";
import { useExercise } from "../desk/draft-context";
import { CornerForm } from "./forms/corner-form";
import { ColumnForm, MaskingForm } from "./forms/hanging-forms";
import { OpeningForm } from "./forms/opening-form";
import { FurnitureForm, PlatformForm, StairForm } from "./forms/standing-forms";
import { WallForm } from "./forms/wall-form";

/** Every member of the one thing that is chosen, to be changed. */
export function ThingForm({ thing }: { readonly thing: Thing }) {
  const { plan } = useExercise();
  const named = <Item extends { readonly id: string }>(items: readonly Item[]) =>
    items.find(({ id }) => id === thing.id);
  switch (thing.kind) {
    case "corner": {
      const at = plan.corners.get(thing.id);
      return at ? <CornerForm id={thing.id} at={at} /> : null;
    }
    case "wall": {
      const wall = named(plan.walls);
      return wall ? <WallForm wall={wall} /> : null;
    }
    case "opening": {
      const wall = plan.walls.find(({ id }) => id === thing.wall);
      const opening = wall?.openings.find(({ id }) => id === thing.id);
      return wall && opening ? <OpeningForm wall={wall} opening={opening} /> : null;
    }
    case "platform": {
      const platform = named(plan.platforms);
      return platform ? <PlatformForm platform={platform} /> : null;
    }
    case "stair": {
      const stair = named(plan.stairs);
      return stair ? <StairForm stair={stair} /> : null;
    }
    case "furniture": {
      const item = named(plan.furniture);
      return item ? <FurnitureForm item={item} /> : null;
    }
    case "column": {
      const column = named(plan.columns);
      return column ? <ColumnForm column={column} /> : null;
    }
    case "masking": {
      const cloth = named(plan.masking);
      return cloth ? <MaskingForm cloth={cloth} /> : null;
    }
  }
}
