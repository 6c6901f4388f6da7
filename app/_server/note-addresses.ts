import { subscribe } from "node:diagnostics_channel";
import type { IncomingMessage } from "node:http";

/** Where a request's own connection comes from, as the server saw it. */
export const REMOTE_HEADER = "x-plasterline-remote";

/**
 * Has the server write down with every request where it came from, over whatever the request says itself. The pages see only
 * a request's headers, and those anyone can write.
 */
export function noteAddresses(): void {
  // https://nodejs.org/docs/latest-v20.x/api/diagnostics_channel.html#http: before the server looks at the request.
  subscribe("http.server.request.start", (message) => {
    const { request } = message as { readonly request: IncomingMessage };
    request.headers[REMOTE_HEADER] = request.socket.remoteAddress ?? "";
  });
}
