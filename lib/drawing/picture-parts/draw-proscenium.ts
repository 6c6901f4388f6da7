import type { Stage } from "../../stage/stage";
import type { DisplayItem, DrawingPoint } from "../display-list";
import { makeStroke } from "../make-stroke";

/** The frame's width as a share of the opening's, and the least and most it may be, metres. */
const FRAME_SHARE = 0.045;
const FRAME_LEAST_M = 0.3;
const FRAME_MOST_M = 0.7;
/** Its mouldings, as shares of its width from the opening out. */
const MOULDINGS = [0.2, 0.78] as const;
/** The plinth a jamb stands on, and the cornice over the frame, as shares of the frame's width. */
const PLINTH = { height: 0.9, past: 0.16 } as const;
const CORNICE = { height: 0.3, past: 0.3 } as const;

/** The width of the architectural frame drawn around the opening, metres. */
function frameWidth(stage: Pick<Stage, "opening">): number {
  return Math.min(FRAME_MOST_M, Math.max(FRAME_LEAST_M, stage.opening.width * FRAME_SHARE));
}

/**
 * The proscenium: the opening at true size (extra thick, exact), and round it a frame of plain mouldings on two plinths under
 * a cornice, which is only drawn to look at. Picture metres.
 */
export function drawProscenium(stage: Pick<Stage, "opening">): readonly DisplayItem[] {
  const { width, height } = stage.opening;
  const half = width / 2;
  const frame = frameWidth(stage);
  const portal = (out: number): DrawingPoint[] => [
    [-half - out, 0],
    [-half - out, height + out],
    [half + out, height + out],
    [half + out, 0],
  ];
  const cornice = height + frame;
  const end = half + frame * (1 + CORNICE.past);
  return [
    makeStroke("picture.proscenium.frame", portal(frame), { weight: "thick", hand: true }),
    ...MOULDINGS.map((share, i) =>
      makeStroke(`picture.proscenium.moulding.${i + 1}`, portal(frame * share), { hand: true }),
    ),
    box("picture.proscenium.cornice", [-end, cornice], [end, cornice + frame * CORNICE.height]),
    ...drawPlinth("left", -1, half, frame),
    ...drawPlinth("right", 1, half, frame),
    makeStroke("picture.proscenium.opening", portal(0), { closed: true, weight: "extra-thick" }),
  ];
}

function drawPlinth(name: string, side: number, half: number, frame: number): DisplayItem[] {
  const height = frame * PLINTH.height;
  const [inner, outer] = [side * half, side * (half + frame * (1 + PLINTH.past))];
  const id = `picture.proscenium.plinth.${name}`;
  return [
    box(id, [inner, 0], [outer, height]),
    makeStroke(
      `${id}.edge`,
      [
        [inner, height * 0.82],
        [outer, height * 0.82],
      ],
      { hand: true },
    ),
  ];
}

function box(id: string, [x0, y0]: DrawingPoint, [x1, y1]: DrawingPoint): DisplayItem {
  return makeStroke(
    id,
    [
      [x0, y0],
      [x1, y0],
      [x1, y1],
      [x0, y1],
    ],
    { closed: true, weight: "thick", fill: "paper", hand: true },
  );
}
