/** What the two windows of a demonstration are. */
export type Role = "demonstration" | "notes";

export type PressName = "on" | "back" | "blank" | "show" | "try";

/** What the projected window is showing. */
export type Showing = {
  /** From 0. */
  readonly at: number;
  readonly blank: boolean;
  readonly trying: "no" | "waiting" | "shown";
  readonly guesses: number;
  /** When it began, milliseconds since 1970. */
  readonly startedAt: number;
};

export type Message =
  | { readonly kind: "showing"; readonly showing: Showing }
  | { readonly kind: "press"; readonly press: PressName }
  | { readonly kind: "go"; readonly at: number }
  /** Is the other window there? It answers with what it shows. */
  | { readonly kind: "ask" }
  | { readonly kind: "bye"; readonly role: Role };

export type Talk = { readonly send: (message: Message) => void; readonly close: () => void };

/** The part of a window that talking needs. */
export type TalkWindow = Pick<Window, "addEventListener" | "removeEventListener"> & {
  readonly BroadcastChannel?: typeof BroadcastChannel;
  readonly localStorage: Storage;
};

const NAME = "plasterline.demonstrate";

/**
 * Talks with the other window of the same demonstration in the same browser, without a server: over a channel where the
 * browser has one, else by what it keeps, which it tells its other windows of. What cannot be said is not said; the page works alone.
 */
export function openTalk(id: string, hear: (message: Message) => void, window: TalkWindow): Talk {
  const name = `${NAME}.${id}`;
  if (window.BroadcastChannel) {
    const channel = new window.BroadcastChannel(name);
    channel.onmessage = ({ data }) => {
      const message = readMessage(data);
      if (message) hear(message);
    };
    return { send: (message) => channel.postMessage(message), close: () => channel.close() };
  }
  let said = 0;
  const listen = (event: StorageEvent) => {
    if (event.key !== name || event.newValue === null) return;
    const message = parse(event.newValue);
    if (message) hear(message);
  };
  window.addEventListener("storage", listen);
  return {
    send: (message) => {
      said += 1;
      try {
        // The count makes every word a change, and only changes are told.
        window.localStorage.setItem(name, JSON.stringify({ ...message, said }));
      } catch {
        // A browser that keeps nothing cannot carry a word to its other window.
      }
    },
    close: () => window.removeEventListener("storage", listen),
  };
}

function parse(text: string): Message | null {
  try {
    return readMessage(JSON.parse(text));
  } catch {
    return null;
  }
}

const PRESSES: readonly PressName[] = ["on", "back", "blank", "show", "try"];

/** A message from outside, or null for anything else. */
export function readMessage(data: unknown): Message | null {
  if (!isRecord(data)) return null;
  const { kind, at, press, showing, role } = data;
  if (kind === "ask") return { kind };
  if (kind === "bye" && (role === "demonstration" || role === "notes")) return { kind, role };
  if (kind === "go" && isIndex(at)) return { kind, at };
  const known = PRESSES.find((each) => each === press);
  if (kind === "press" && known) return { kind, press: known };
  if (kind === "showing" && isShowing(showing)) return { kind, showing };
  return null;
}

function isShowing(value: unknown): value is Showing {
  if (!isRecord(value)) return false;
  const { at, blank, trying, guesses, startedAt } = value;
  return (
    isIndex(at) &&
    typeof blank === "boolean" &&
    (trying === "no" || trying === "waiting" || trying === "shown") &&
    isIndex(guesses) &&
    typeof startedAt === "number" &&
    Number.isFinite(startedAt)
  );
}

function isIndex(value: unknown): value is number {
  return typeof value === "number" && Number.isInteger(value) && value >= 0;
}

function isRecord(value: unknown): value is Record<string, unknown> {
  return typeof value === "object" && value !== null;
}
