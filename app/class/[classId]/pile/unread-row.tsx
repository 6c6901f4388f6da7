import { Press } from "@/app/_parts/press";
import type { PilePage } from "./page-state";

type Props = {
  readonly page: PilePage;
  /** Null where there is nothing to read again. */
  readonly again: (() => void) | null;
  readonly takeOut: () => void;
};

/** A page that could not be read: why, and what to do. */
export function UnreadRow({ page, again, takeOut }: Props) {
  const { from, state } = page;
  if (state.at !== "unread") return null;
  return (
    <li className="pile-unread-row">
      {state.photo === null ? (
        <span className="pile-no-photo" />
      ) : (
        // biome-ignore lint/performance/noImgElement: a picture that is nowhere but in this browser
        <img src={state.photo} alt={`The photograph ${from}`} className="pile-small-photo" />
      )}
      <div>
        <p className="pile-from">{from}</p>
        <p>{state.say}</p>
        <p className="class-quiet">{state.remedy}</p>
      </div>
      <div className="pile-presses">
        {again && (
          <Press weight="small" onClick={again} aria-label={`Read ${from} again`}>
            Read it again
          </Press>
        )}
        <Press weight="small" onClick={takeOut} aria-label={`Take ${from} out`}>
          Take it out
        </Press>
      </div>
    </li>
  );
}
