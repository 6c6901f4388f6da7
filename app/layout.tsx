import type { Metadata, Viewport } from "next";
import { cookies } from "next/headers";
import { connection } from "next/server";
import type { ReactNode } from "react";
import { LOOK_COOKIE, readLook } from "./_parts/look/look";
import "@fontsource/architects-daughter/latin-400.css";
import "@fontsource/national-park/latin-400.css";
import "@fontsource/national-park/latin-600.css";
import "./globals.css";

export const metadata: Metadata = {
  title: { default: "Plasterline", template: "%s - Plasterline" },
  description: "Draw a stage set in one-point perspective from its ground plan, one corner at a time.",
};

export const viewport: Viewport = { width: "device-width", initialScale: 1 };

/** The look is read from a cookie, so that the first paint already has it and no script runs before it. */
export default async function Layout({ children }: { readonly children: ReactNode }) {
  // A page drawn before anyone asked for it would carry no nonce, and the browser would run none of its scripts.
  await connection();
  const look = readLook((await cookies()).get(LOOK_COOKIE)?.value);
  return (
    <html lang="en" data-light={look.light} data-size={look.size}>
      <body>{children}</body>
    </html>
  );
}
