import { capital } from "../plan/first-letter";
import type { Dice } from "./dice";

type Scene = { readonly play: string; readonly scene: string; readonly happens: string };

const ROOMS: readonly Scene[] = [
  {
    play: "The Ferry Bell",
    scene: "the ferryman's kitchen",
    happens: "Nobody has slept, and the bell has rung twice.",
  },
  { play: "The Ferry Bell", scene: "the customs hall", happens: "Every trunk is opened but the right one." },
  { play: "The Ferry Bell", scene: "the toll room", happens: "The takings are counted three times, and never agree." },
  { play: "Salt and Tallow", scene: "the candle shop", happens: "Two sisters run one shop and do not speak." },
  { play: "Salt and Tallow", scene: "the wash house", happens: "The copper is lit before the letter is read." },
  { play: "Salt and Tallow", scene: "the back parlour", happens: "The aunt arrives a day before she is expected." },
  { play: "Nine Lamps", scene: "the lamp room", happens: "The seventh lamp will not burn." },
  { play: "Nine Lamps", scene: "the keeper's lodging", happens: "A stranger asks for the log of the year before." },
  { play: "The Tide Office", scene: "the tide office", happens: "The tables are a page short." },
  {
    play: "The Tide Office",
    scene: "the pilots' mess",
    happens: "All the chairs are taken when the captain comes in.",
  },
  { play: "The Upper Room", scene: "the upper room", happens: "The whole company must fit into it by the end." },
  { play: "The Upper Room", scene: "the carding loft", happens: "The floor shakes whenever the mill runs." },
];

const FLOORS: readonly Scene[] = [
  { play: "The Ferry Bell", scene: "the landing stage", happens: "The river is wherever the actors look." },
  { play: "The Ferry Bell", scene: "the quay at night", happens: "It is played on a bare floor, with lanterns." },
  { play: "Salt and Tallow", scene: "the salt pans", happens: "Rakes and baskets are set down in the dark." },
  { play: "Salt and Tallow", scene: "the market square", happens: "The stalls come on in a moment and go as fast." },
  { play: "Nine Lamps", scene: "the open gallery", happens: "A lamp is carried to each mark in turn." },
  { play: "The Tide Office", scene: "the sea wall", happens: "The watchers stand apart and do not turn round." },
  {
    play: "The Upper Room",
    scene: "the mill yard",
    happens: "The carts have gone, and the marks of their wheels are left.",
  },
  { play: "The Upper Room", scene: "the bare loft", happens: "Nothing has been carried up yet." },
];

const ENDINGS = [
  "The plan has just come from the office of Hobbin Mill; the meeting is at four.",
  "Hobbin Mill wants a thumbnail before the model is begun.",
  "The director of Hobbin Mill asks what it will look like from the stalls.",
  "Hobbin Mill rehearses it on this floor from Monday.",
] as const;

/** A title and a scenario of our own making. */
export function chooseWords(
  dice: Dice,
  place: "floor" | "room",
): { readonly title: string; readonly scenario: string } {
  const { play, scene, happens } = dice.pick(place === "room" ? ROOMS : FLOORS);
  return { title: capital(scene), scenario: `“${play}”, ${scene}. ${happens} ${dice.pick(ENDINGS)}` };
}
