import { createHash, createHmac, randomBytes, timingSafeEqual } from "node:crypto";

const TOKEN_BYTES = 16;

/** A new token for someone who takes part without an account, signed so that nobody makes up more people than came. */
export function makeGuestToken(secret: string): string {
  const name = randomBytes(TOKEN_BYTES).toString("base64url");
  return `${name}.${sign(name, secret)}`;
}

/** The person that a guest's token stands for; null when this server did not make it. The store never keeps the token itself. */
export function guestOf(token: string | undefined, secret: string): string | null {
  const [name = "", signature = ""] = (token ?? "").split(".");
  const [given, right] = [Buffer.from(signature), Buffer.from(sign(name, secret))];
  if (given.length !== right.length || !timingSafeEqual(given, right)) return null;
  return `guest-${createHash("sha256").update(name).digest("base64url").slice(0, 22)}`;
}

function sign(name: string, secret: string): string {
  return createHmac("sha256", secret).update(`live guest\0${name}`).digest("base64url");
}
