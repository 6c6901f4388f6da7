import { createHmac, randomBytes, timingSafeEqual } from "node:crypto";

const COOKIE = "plasterline.known";
const NONCE_BYTES = 16;

type Signing = { readonly secret: string; readonly secure: boolean };

/**
 * The line for `Set-Cookie` by which a browser that has signed in to an account is known again, also after signing out. It
 * opens nothing: a known browser has tries of its own, which nobody else can use up. It says nothing about whose it is.
 */
export function knownCookie(account: string, { secret, secure }: Signing, maxAgeS: number): string {
  const nonce = randomBytes(NONCE_BYTES).toString("base64url");
  const value = `${nonce}.${sign(nonce, account, secret)}`;
  return `${cookieName(secure)}=${value}; Max-Age=${maxAgeS}; Path=/; HttpOnly;${secure ? " Secure;" : ""} SameSite=Lax`;
}

/** What counts a known browser's tries for an account; nothing when it was never signed in to this one. */
export function knownBrowser(headers: Headers, account: string, { secret, secure }: Signing): string | undefined {
  const parts = (headers.get("cookie") ?? "").split(";").map((part) => part.trim());
  const value = parts.find((part) => part.startsWith(`${cookieName(secure)}=`))?.slice(cookieName(secure).length + 1);
  const [nonce = "", signature = ""] = value?.split(".") ?? [];
  const [said, right] = [Buffer.from(signature), Buffer.from(sign(nonce, account, secret))];
  return said.length === right.length && timingSafeEqual(said, right) ? nonce : undefined;
}

function cookieName(secure: boolean): string {
  return secure ? `__Secure-${COOKIE}` : COOKIE;
}

function sign(nonce: string, account: string, secret: string): string {
  return createHmac("sha256", secret).update(`known browser\0${nonce}\0${account}`).digest("base64url");
}
