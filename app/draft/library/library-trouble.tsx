"use client";

import Link from "next/link";
import { Press } from "@/app/_parts/press";
import type { Trouble } from "./use-library";

/** Why a plan was not kept in the library, and what to do. In this browser it is kept all the same. */
export function LibraryTrouble({ trouble, onLetGo }: { readonly trouble: Trouble; readonly onLetGo: () => void }) {
  return (
    <div role="alert" className="library-trouble">
      {trouble.kind === "unreached" && (
        <p>The class server could not be reached. Your plan is still kept in this browser; try again later.</p>
      )}
      {trouble.kind === "unkept" && (
        <p>
          This browser keeps nothing, so it could not know the plan again in your library. Save the file instead, under
          Make it an exercise.
        </p>
      )}
      {trouble.kind === "refused" && trouble.reason === "forbidden" && (
        <p>
          You are signed in as a teacher no more. Your plan is still kept in this browser.{" "}
          <Link href="/class" className="plain-link" prefetch={false}>
            Sign in
          </Link>
          , then keep it.
        </p>
      )}
      {trouble.kind === "refused" && trouble.reason === "gone" && (
        <>
          <p>{trouble.sentence}</p>
          <Press weight="small" onClick={onLetGo}>
            Make it a new one
          </Press>
        </>
      )}
      {trouble.kind === "refused" && !["forbidden", "gone"].includes(trouble.reason) && (
        <p>{trouble.sentence || "The server did not say why it was not kept."} Here it is kept all the same.</p>
      )}
    </div>
  );
}
