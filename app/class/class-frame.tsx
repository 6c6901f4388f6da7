import Link from "next/link";
import type { ReactNode } from "react";
import { LookDisclosure } from "@/app/_parts/look/look-switch";
import { SignOut } from "./sign-out";
import "./class.css";

type Props = {
  readonly title: string;
  /** Who is signed in, if anyone. */
  readonly name?: string | undefined;
  readonly lead?: ReactNode;
  readonly children: ReactNode;
};

/** The sheet that every page of Class is drawn on. */
export function ClassFrame({ title, name, lead, children }: Props) {
  return (
    <>
      <noscript>
        <p className="class-noscript">Class needs JavaScript. Turn it on for this address, then open the page anew.</p>
      </noscript>
      <main className="class-page">
        <header className="class-edge">
          <nav aria-label="Plasterline">
            <Link href="/" className="plain-link lettering" prefetch={false}>
              Plasterline
            </Link>
            <Link href="/class" className="plain-link" prefetch={false}>
              Class
            </Link>
          </nav>
          <div className="class-who">
            {name && <span>{name}</span>}
            {name && <SignOut />}
            <LookDisclosure />
          </div>
        </header>
        <div className="class-sheet ruled">
          <div className="class-title">
            <h1 className="lettering">{title}</h1>
            {lead && <p>{lead}</p>}
          </div>
          {children}
        </div>
      </main>
    </>
  );
}
