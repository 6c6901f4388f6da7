import type { Metadata } from "next";
import { BringPage } from "./bring-page";

export const metadata: Metadata = { title: "Bring a plan" };

/** A drawing made elsewhere comes in as a plan. */
export default function Page() {
  return <BringPage />;
}
