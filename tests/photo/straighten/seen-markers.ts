import type { PageFit } from "@/lib/photo/page-fit";
import type { PhotoPoint } from "@/lib/photo/pixels";
import type { SeenMarker } from "@/lib/photo/straighten/find-markers";
import { photoFromSheet } from "@/lib/photo/straighten/map-page";
import { boxCorners } from "@/lib/photo/straighten/seen-box";
import { markerPlaces } from "@/lib/sheet/marker-places";
import type { Paper } from "@/lib/sheet/paper-size";

/** Markers as a fit has them, each corner moved by what `shake` gives, pixels. */
export function seenMarkers(
  fit: PageFit,
  paper: Paper,
  ids: readonly number[],
  shake: () => number = () => 0,
): readonly SeenMarker[] {
  return markerPlaces(paper)
    .filter(({ id }) => ids.includes(id))
    .map(({ id, box }) => {
      const corners = boxCorners(box).map((place): PhotoPoint => {
        const at = photoFromSheet(fit, place);
        if (!at) throw new Error("A marker is behind the camera.");
        return [at[0] + shake(), at[1] + shake()];
      });
      return { id, corners: corners as unknown as SeenMarker["corners"], edgePx: 1.5, black: 20, white: 230 };
    });
}

/** A marker moved as a whole, pixels. */
export function moveMarker(marker: SeenMarker, right: number, down: number): SeenMarker {
  const corners = marker.corners.map(([x, y]): PhotoPoint => [x + right, y + down]);
  return { ...marker, corners: corners as unknown as SeenMarker["corners"] };
}
