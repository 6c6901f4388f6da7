import type { Metadata } from "next";
import { PlainPage } from "@/app/_parts/plain-page";
import { CodeForm } from "./code-form";

export const metadata: Metadata = { title: "Place it" };

/** Where someone comes who writes the code instead of scanning it. */
export default function LiveDoorPage() {
  return (
    <PlainPage title="Place it with everyone">
      <p>Write the six letters that are on the screen at the front. You need no account.</p>
      <CodeForm />
    </PlainPage>
  );
}
