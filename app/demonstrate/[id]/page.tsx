import type { Metadata } from "next";
import { notFound } from "next/navigation";
import { BrokenSheet } from "@/app/_parts/course/broken-sheet";
import { PlainPage } from "@/app/_parts/plain-page";
import { Demonstrate } from "./demonstrate";
import { findDemonstrated } from "./find-demonstrated";

type Props = { readonly params: Promise<{ readonly id: string }> };

export async function generateMetadata({ params }: Props): Promise<Metadata> {
  const found = await findDemonstrated((await params).id);
  return { title: found.kind === "found" ? `Demonstrate: ${found.exercise.title}` : "Demonstrate" };
}

export default async function DemonstratePage({ params }: Props) {
  const found = await findDemonstrated((await params).id);
  if (found.kind === "unknown") notFound();
  if (found.kind === "broken") return <BrokenSheet entry={found.entry} />;
  return (
    <>
      <noscript>
        <PlainPage title="This page needs JavaScript">
          <p>
            A demonstration is stepped through in your browser, and JavaScript is turned off there. Turn it on for this
            address, then load the page again. The handout needs none: it is at{" "}
            <a className="plain-link" href={`/demonstrate/${found.exercise.id}/handout`}>
              this address
            </a>
            .
          </p>
        </PlainPage>
      </noscript>
      <Demonstrate exercise={found.exercise} />
    </>
  );
}
