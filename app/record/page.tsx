import type { Metadata } from "next";
import Link from "next/link";
import { readCourse } from "@/app/_parts/course/course";
import { LookDisclosure } from "@/app/_parts/look/look-switch";
import { PlainPage } from "@/app/_parts/plain-page";
import { RecordSheet } from "./record-sheet";
import "./record.css";

export const metadata: Metadata = { title: "Your record" };

/** What the student knows, and how their errors went, out of what this browser has kept. */
export default async function RecordPage() {
  const { exercises } = await readCourse();
  return (
    <>
      <noscript>
        <PlainPage title="This page needs JavaScript">
          <p>Your record is kept in your browser and drawn there. Turn JavaScript on for this address to see it.</p>
        </PlainPage>
      </noscript>
      <main className="record">
        <header className="record-edge">
          <Link href="/" className="plain-link lettering" prefetch={false}>
            Plasterline
          </Link>
          <LookDisclosure />
        </header>
        <RecordSheet catalogue={exercises.map(({ id, title }) => ({ id, title }))} />
      </main>
    </>
  );
}
