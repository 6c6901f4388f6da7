import { rollDice } from "@/lib/generator/dice";

const FINE = 2 ** 30;

/** Slips of a steady hand, right and up, of one standard deviation each way in the unit given: Box and Muller's, from a seed. */
export function handSlips(seed: number, sigma: number): () => readonly [right: number, up: number] {
  const dice = rollDice(seed, "hand");
  const draw = () => (dice.whole(0, FINE - 1) + 0.5) / FINE;
  return () => {
    const size = Math.sqrt(-2 * Math.log(draw())) * sigma;
    const turn = 2 * Math.PI * draw();
    return [size * Math.cos(turn), size * Math.sin(turn)];
  };
}
