import Link from "next/link";
import type { ReactNode } from "react";
import { LookDisclosure } from "@/app/_parts/look/look-switch";
import "@/app/_photo/photo.css";

/** The table's edge over whatever the page is at. */
export function CheckFrame({
  title,
  children,
  board = false,
}: {
  readonly title: string;
  readonly children: ReactNode;
  /** Whether it is a drawing board, which fills the screen and does not scroll. */
  readonly board?: boolean;
}) {
  return (
    <main className={board ? "check check-board" : "check"}>
      <header className="check-edge">
        <Link href="/" className="plain-link lettering" prefetch={false}>
          Plasterline
        </Link>
        <span className="check-title lettering">{title}</span>
        <LookDisclosure />
      </header>
      {children}
    </main>
  );
}
