import type { Exercise } from "../../exercise/exercise";
import { printScale } from "../../measure/scale";
import type { DisplayList } from "../display-list";
import { makeLettering, makeStroke } from "../make-stroke";
import { breakLines, LINE_STEP } from "../paper/lay-out-text";
import { letteredWidthMm } from "../paper/letter-widths";
import { scaleBar } from "./scale-bar";

/** How high the strip at the foot of a page is, and the least width that its words need, millimetres. */
export const STRIP_MM = 24;
export const LEAST_WIDTH_MM = 178;

const CAUTION = "A teaching sketch is not a construction drawing: local codes and licensed practice decide.";
const TITLE_MM = 4.6;
const NAME_MM = 2.5;
const SCALE_MM = 3.6;
const SMALL_MM = 1.7;
/** Smaller letters than these are no longer read. */
const LEAST_MM = 1.4;
/** Room kept at the right for the scale, the name and the date; at the left for the bar. */
const RIGHT_MM = 58;
const LEFT_MM = 62;
const PAD_MM = 3;
/** From the foot of the title down to the head of what is drawn, in title heights: the face's deepest letters hang 0.64. */
const HANG = 0.7;

/**
 * The strip at the foot of a drawing's page, in millimetres right and up from its lower left corner: the scale bar, the
 * units and the sheet (`paper`), the exercise's title and what is drawn, the scale in words, a line for a name and one for a
 * date, and the caution.
 */
export function titleStrip(
  exercise: Pick<Exercise, "title" | "units" | "scale" | "scaleRatio">,
  name: string,
  paper: string,
  widthMm: number,
): DisplayList {
  const { title, units, scale, scaleRatio } = exercise;
  const [left, right] = [LEFT_MM, widthMm - RIGHT_MM];
  const room = right - left - 2 * PAD_MM;
  const titleFoot = STRIP_MM - 3 - TITLE_MM;
  const plain = { anchor: "start", face: "plain" } as const;
  const lettered = fitted(title, TITLE_MM, room, "drafting");
  const named = fitted(name, NAME_MM, room, "plain");
  const caution = breakLines(CAUTION, { widthMm: room, heightMm: SMALL_MM });
  return [
    line("top", [0, STRIP_MM], [widthMm, STRIP_MM], "thick"),
    line("left", [left, 0], [left, STRIP_MM]),
    line("right", [right, 0], [right, STRIP_MM]),
    ...scaleBar(units, scaleRatio, [PAD_MM + 2, STRIP_MM / 2 + 1]),
    makeLettering("strip.units", [PAD_MM, 6.2], units === "m" ? "Metres" : "Feet and inches", {
      ...plain,
      heightMm: SMALL_MM,
    }),
    makeLettering("strip.paper", [PAD_MM, 3], `${paper}. Print at 100 %.`, { ...plain, heightMm: SMALL_MM }),
    makeLettering("strip.title", [left + PAD_MM, titleFoot], lettered.text, {
      anchor: "start",
      heightMm: lettered.heightMm,
    }),
    makeLettering("strip.name", [left + PAD_MM, titleFoot - TITLE_MM * HANG - NAME_MM], named.text, {
      ...plain,
      heightMm: named.heightMm,
    }),
    ...caution.map((words, i) =>
      makeLettering(
        `strip.caution.${i + 1}`,
        [left + PAD_MM, 3 + (caution.length - 1 - i) * SMALL_MM * LINE_STEP],
        words,
        {
          ...plain,
          heightMm: SMALL_MM,
        },
      ),
    ),
    makeLettering("strip.scale", [right + PAD_MM, STRIP_MM - 4 - SCALE_MM], `SCALE ${printScale(scale)}`, {
      anchor: "start",
      heightMm: SCALE_MM,
    }),
    ...["Drawn by", "Date"].flatMap((word, i) => {
      const [x, y] = [right + PAD_MM, 9.5 - i * 6.5];
      return [
        makeLettering(`strip.${word}`, [x, y], word, { ...plain, heightMm: SMALL_MM }),
        line(`${word}.line`, [x + 14, y - 0.6], [widthMm - PAD_MM, y - 0.6]),
      ];
    }),
  ];
}

function line(
  id: string,
  from: readonly [number, number],
  to: readonly [number, number],
  weight: "thin" | "thick" = "thin",
) {
  return makeStroke(`strip.${id}`, [from, to], { weight });
}

/** A text and a letter height at which it has room, no larger than wanted; a text that would be too small to read ends early. */
function fitted(
  text: string,
  wantedMm: number,
  roomMm: number,
  face: "drafting" | "plain",
): { readonly text: string; readonly heightMm: number } {
  const wide = letteredWidthMm(text, wantedMm, face);
  const heightMm = Math.min(wantedMm, Math.max((wantedMm * roomMm) / Math.max(wide, roomMm), LEAST_MM));
  const letters = [...text];
  const whole = letters.length;
  while (letters.length > 1 && letteredWidthMm(said(), heightMm, face) > roomMm) letters.pop();
  return { text: said(), heightMm };

  function said(): string {
    return letters.length === whole ? text : `${letters.join("").trimEnd()}…`;
  }
}
