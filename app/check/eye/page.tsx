import type { Metadata } from "next";
import { NeedsJavaScript } from "../needs-javascript";
import { WhoseEyePage } from "./whose-eye-page";

export const metadata: Metadata = { title: "Whose eye drew this?" };

/** For any drawing: its horizon, its vanishing points and its eye, from a few lines marked on it. */
export default function EyePage() {
  return (
    <>
      <NeedsJavaScript />
      <WhoseEyePage />
    </>
  );
}
