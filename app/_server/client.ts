import { BlockList } from "node:net";
import { type Client, clientOf, isThisComputer, readProxies } from "@/lib/classroom/accounts/client-address";
import { REMOTE_HEADER } from "./note-addresses";

/** Who asks, by the connection and by the proxies that `PLASTERLINE_PROXY` names. */
export function readClient(headers: Headers): Client {
  return clientOf(headers.get(REMOTE_HEADER) ?? "", headers, trustedProxies());
}

/** Whether whoever asks sits at the computer that the server runs on, with no proxy between. */
export function isAtTheServer(headers: Headers): boolean {
  if (process.env.PLASTERLINE_PROXY) return false;
  return isThisComputer(headers.get(REMOTE_HEADER) ?? "") && !headers.has("forwarded") && isDirect(headers);
}

/** A proxy on the same computer passes others' requests on, whether it was named or not. */
function isDirect(headers: Headers): boolean {
  const said = headers.get("x-forwarded-for");
  return said === null || said === headers.get(REMOTE_HEADER);
}

function trustedProxies(): BlockList {
  const read = readProxies(process.env.PLASTERLINE_PROXY ?? "");
  if (typeof read !== "string") return read;
  console.error(read);
  return new BlockList();
}
