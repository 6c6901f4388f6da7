"use client";

import { Card } from "./card";
import { useRoom } from "./demonstration-context";

/** Keys in words. Paging is what a presenter's remote sends (common practice, no source); the letters are our own. */
const KEYS: readonly (readonly [keys: string, does: string])[] = [
  ["Page Down, Space, Right, Down", "On"],
  ["Page Up, Left, Up", "Back"],
  ["Home, End", "First step, last step"],
  ["C", "Corners: jump to one"],
  ["B or .", "Blank the screen, light it again"],
  ["T", "You try: take guesses; again: show the true point"],
  ["Arrows, Enter", "While guesses are taken: aim, set down (Shift coarse, Alt fine)"],
  ["I, Backspace", "Initials for the next guess; take the last guess back"],
  ["P", "Pencil: red, blue, away"],
  ["U, X", "Rub out the last line, all lines of this step"],
  ["R", "Ring round the pointer"],
  ["+, -, 0", "Larger, smaller, whole"],
  ["L", "Plan beside the picture or under it"],
  ["D", "House lights down, or paper"],
  ["F or F5", "Full screen"],
  ["N", "Notes window"],
  ["M", "Keep the presses in sight, or not"],
  ["Escape", "Put away what is open"],
];

export function KeysCard({
  letters,
  onLetters,
}: {
  readonly letters: boolean;
  readonly onLetters: (letters: boolean) => void;
}) {
  const { store } = useRoom();
  return (
    <Card title="Keys" onAway={() => store.getState().setCard(null)}>
      <dl className="keys-list">
        {KEYS.map(([keys, does]) => (
          <div key={keys}>
            <dt>{keys}</dt>
            <dd>{does}</dd>
          </div>
        ))}
      </dl>
      <label className="keys-letters">
        <input type="checkbox" checked={letters} onChange={(event) => onLetters(event.target.checked)} /> Letters are
        keys
      </label>
    </Card>
  );
}
