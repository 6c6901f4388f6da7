import type { WhoseEye } from "@/lib/perspective/whose-eye/eye-answer";
import type { MarkedDrawing } from "@/lib/perspective/whose-eye/marked-drawing";
import type { EyeWork } from "./eye-work";
import { sayKnown, sayMeetings } from "./say-marks";

type Props = { readonly work: EyeWork; readonly drawing: MarkedDrawing; readonly eye: WhoseEye | null };

/** What the marks tell of the eye, and what they do not. */
export function AnswerPanel({ work, drawing, eye }: Props) {
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be reached by keys
    <section className="eye-answer" aria-label="What it tells" tabIndex={0}>
      <h2 className="eye-answer-title lettering">What it tells</h2>
      {!eye && (
        <p>
          Mark two lines that run the same way on the set, away from the viewer: where they meet lies on the horizon, at
          the height of the eye that drew them.
        </p>
      )}
      {eye?.kind === "refused" && <p className="check-note">{eye.say}</p>}
      {eye && (
        <>
          <Sentences says={sayKnown(eye)} label="What is known" />
          {eye.kind === "told" && eye.untold.length > 0 && (
            <>
              <h3 className="eye-answer-part">What it does not tell</h3>
              <Sentences says={eye.untold} label="What is not known" />
            </>
          )}
          <Meetings says={sayMeetings(work, drawing, eye)} />
          <p className="check-quiet">
            “Give or take” is one standard deviation, if each place is marked as exactly as {drawing.sigmaMm.toFixed(1)}{" "}
            mm on the drawing.
          </p>
        </>
      )}
    </section>
  );
}

function Meetings({ says }: { readonly says: readonly string[] }) {
  return says.length === 0 ? null : (
    <>
      <h3 className="eye-answer-part">Where lines go</h3>
      <Sentences says={says} label="Where lines go" />
    </>
  );
}

function Sentences({ says, label }: { readonly says: readonly string[]; readonly label: string }) {
  return says.length === 0 ? null : (
    <ul aria-label={label} className="eye-says">
      {says.map((say) => (
        <li key={say}>{say}</li>
      ))}
    </ul>
  );
}
