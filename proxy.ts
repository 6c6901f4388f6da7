import { type NextRequest, NextResponse } from "next/server";

/** The builder's own page while developing reads code from texts, and puts styles in as it goes. */
const DEVELOPING = process.env.NODE_ENV === "development";

/**
 * Sends every page with rules for the browser: only scripts that this answer names may run, and nothing comes from or goes
 * to another server. Drawings carry their sizes in style attributes, so those are allowed; style sheets are not written in.
 * There is no rule to fetch by https: a room's own network has none.
 */
export function proxy(request: NextRequest): NextResponse {
  const nonce = Buffer.from(crypto.getRandomValues(new Uint8Array(16))).toString("base64");
  const rules = [
    "default-src 'self'",
    `script-src 'self' 'nonce-${nonce}' 'strict-dynamic'${DEVELOPING ? " 'unsafe-eval'" : ""}`,
    // Read only by browsers that do not know the two below.
    "style-src 'self' 'unsafe-inline'",
    `style-src-elem 'self' ${DEVELOPING ? "'unsafe-inline'" : `'nonce-${nonce}'`}`,
    "style-src-attr 'unsafe-inline'",
    "img-src 'self' blob: data:",
    "font-src 'self'",
    "connect-src 'self'",
    "worker-src 'self' blob:",
    "media-src 'self' blob:",
    "object-src 'none'",
    "base-uri 'none'",
    "form-action 'self'",
    "frame-ancestors 'none'",
  ].join("; ");
  // The pages' builder finds the nonce in the request and puts it on its own scripts.
  const headers = new Headers(request.headers);
  headers.set("Content-Security-Policy", rules);
  const answer = NextResponse.next({ request: { headers } });
  answer.headers.set("Content-Security-Policy", rules);
  return answer;
}

export const config = { matcher: ["/((?!_next/static|_next/image|schema/|icon.svg).*)"] };
