import type { Seat } from "@/lib/draft/sense/sightlines/seat";
import { LengthField } from "../fields/fields";

type Props = { readonly seat: Seat; readonly onSeat: (change: Partial<Pick<Seat, "at" | "eyeHeight">>) => null };

const IN_THE_HOUSE = "A seat is in the house: more than 0 before the plaster line.";

/** Where a seat is, and how high the eye of who sits in it. */
export function SeatFields({ seat, onSeat }: Props) {
  const [x, y] = seat.at;
  const side = x < 0 ? -1 : 1;
  return (
    <div className="draft-fields">
      <LengthField
        label="Beside the centre line"
        metres={Math.abs(x)}
        onLength={(across) => onSeat({ at: [side * across, y] })}
      />
      <LengthField
        label="Before the plaster line"
        metres={-y}
        onLength={(before) => (before > 0 ? onSeat({ at: [x, -before] }) : IN_THE_HOUSE)}
      />
      <LengthField
        label="Eye over the stage floor"
        note="Below the stage, with a minus."
        metres={seat.eyeHeight}
        onLength={(eyeHeight) => onSeat({ eyeHeight })}
      />
    </div>
  );
}
