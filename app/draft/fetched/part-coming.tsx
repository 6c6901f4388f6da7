"use client";

import { Press } from "@/app/_parts/press";
import "./part-coming.css";

type Props = {
  readonly what: string;
  readonly failed: boolean;
  readonly onAgain: () => void;
};

/** Where a part of the desk will stand, while what it takes is fetched; or why it is not there, and how to have it. */
export function PartComing({ what, failed, onAgain }: Props) {
  return (
    <div className="part-coming">
      {/* Always there, so that what is said in it later is heard. */}
      <div role="status">{failed ? <Failed what={what} /> : <p className="part-wait">{what} in a moment…</p>}</div>
      {failed && (
        <div className="draft-presses">
          <Press
            weight="small"
            onClick={(event) => {
              // This press goes when the part comes: the keys go on at what the part stands in.
              const around = event.currentTarget.closest<HTMLElement>("[tabindex], details");
              (around?.querySelector<HTMLElement>(":scope > summary") ?? around)?.focus({ preventScroll: true });
              onAgain();
            }}
          >
            Try again
          </Press>
        </div>
      )}
    </div>
  );
}

function Failed({ what }: { readonly what: string }) {
  return (
    <p className="draft-wrong">
      {what}: what this takes could not be fetched. The network may be away; if it is not, reload the page. Your plan
      stays as it is.
    </p>
  );
}
