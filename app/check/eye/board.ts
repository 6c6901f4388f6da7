import type { Bounds } from "@/app/_sheet/view";
import type { WhoseEye } from "@/lib/perspective/whose-eye/eye-answer";
import type { DrawingPlace } from "@/lib/perspective/whose-eye/marked-drawing";
import type { EyeWork } from "./eye-work";

/** So many widths of the picture are shown beside it, and heights over and under it, where lines meet out there. */
const ROOM = 1;

/** The picture on the board: right and up from its upper left corner, millimetres. */
export function boundsOf({ width, height }: EyeWork["photo"], widthMm: number): Bounds {
  return { left: 0, right: widthMm, top: 0, bottom: (-widthMm * height) / width };
}

/** The picture with as much round it as shows where its lines meet, if that is not too far off. */
export function boundsWithMeetings(picture: Bounds, eye: WhoseEye | null): Bounds {
  const { left, right, top, bottom } = picture;
  const [wide, high] = [(right - left) * ROOM, (top - bottom) * ROOM];
  const horizon = eye?.kind === "told" ? (eye.figures.horizon?.value ?? null) : null;
  const places: readonly DrawingPlace[] = [
    ...(eye?.meetings ?? []).flatMap((meeting) => (meeting.kind === "point" ? [meeting.at] : [])),
    ...(eye?.kind === "told" && horizon !== null
      ? [...eye.sidesVanishAt, eye.figures.cvp?.value ?? null].flatMap((X): DrawingPlace[] =>
          X === null ? [] : [[X, horizon]],
        )
      : []),
  ].filter(([X, Z]) => X >= left - wide && X <= right + wide && Z >= bottom - high && Z <= top + high);
  const edge = (right - left) * EDGE;
  const across = places.map(([X]) => X);
  const up = places.map(([, Z]) => Z);
  return {
    left: Math.min(left, ...across.map((X) => X - edge)),
    right: Math.max(right, ...across.map((X) => X + edge)),
    bottom: Math.min(bottom, ...up.map((Z) => Z - edge)),
    top: Math.max(top, ...up.map((Z) => Z + edge)),
  };
}

/** Room left beyond a place where lines meet, a share of the picture's width. */
const EDGE = 0.06;
