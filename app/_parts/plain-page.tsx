import type { ReactNode } from "react";
import { PressLink } from "./press";

/** A page that says plainly what is wrong and what to do: one sheet of paper on the table. */
export function PlainPage({
  title,
  children,
  actions,
}: {
  readonly title: string;
  readonly children: ReactNode;
  readonly actions?: ReactNode;
}) {
  return (
    <main className="grid min-h-dvh place-items-center p-6">
      <div className="ruled w-full max-w-xl bg-paper p-8 sm:p-12">
        <h1 className="lettering mb-5 text-2xl leading-tight">{title}</h1>
        <div className="flex flex-col gap-4">{children}</div>
        <div className="mt-8 flex flex-wrap gap-4">
          {actions ?? <PressLink href="/">To the list of exercises</PressLink>}
        </div>
      </div>
    </main>
  );
}
