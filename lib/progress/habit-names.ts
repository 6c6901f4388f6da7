/** Short plain names of the habits, for lists and charts; the habit's own words explain it at a mark. */
const NAMES: Readonly<Record<string, string>> = {
  "plan-depth": "Depth in plan proportion",
  "too-shallow": "Depths too shallow",
  "too-deep": "Depths too deep",
  "from-back-wall": "Depth measured from the back wall",
  "full-width": "Plan offset kept at depth",
  "wrong-side": "The wrong side of the centre line",
  "from-the-jamb": "Offset measured from the opening's edge",
  "half-scale": "Scale rule read at half",
  "double-scale": "Scale rule read at double",
  "square-wall": "Raking wall sent to the CVP",
  "plan-angle": "Raking wall at its plan angle",
  "borrowed-vanishing-point": "Another wall's vanishing point",
  "flat-floor": "Raked floor drawn level",
  "even-steps": "Treads evenly spaced",
  "behind-instead": "Before the plaster line drawn upstage of it",
  "parallel-top": "Top parallel to the foot",
  "full-height": "True height kept at depth",
  "level-top": "Raking wall's top drawn level",
  "top-to-centre": "Raking wall's top sent to the CVP",
  "even-split": "Wall divided as in the plan",
};

/** A habit's short name; one unknown here goes by its id in words. */
export function habitName(id: string): string {
  if (Object.hasOwn(NAMES, id)) return NAMES[id] as string;
  const words = id.replaceAll("-", " ");
  return words.charAt(0).toUpperCase() + words.slice(1);
}
