import { PressLink } from "@/app/_parts/press";

/** On an empty desk: a plan that was drawn elsewhere need not be drawn again. */
export function BringHere() {
  return (
    <p className="draft-bring-here">
      Is the plan drawn already, with another program?{" "}
      <PressLink weight="small" href="/draft/bring">
        Bring a DXF or SVG
      </PressLink>
    </p>
  );
}
