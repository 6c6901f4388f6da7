import { openLiveClassroom } from "@/app/_live/live-server";
import { whoPlaces } from "@/app/_live/who-places";
import { mayDo } from "@/lib/classroom/access/may-do";

/** A browser that lost the stream comes back after this time, in milliseconds; not all at the same moment. */
const RETRY_MS = 1000;
const RETRY_SPREAD_MS = 1500;
/** Someone who takes nothing in for so many events is gone. */
const MOST_WAITING = 50;

const HEADERS = {
  "Content-Type": "text/event-stream; charset=utf-8",
  // A stream that is packed or gathered on its way comes too late.
  "Cache-Control": "no-store, no-transform",
  "X-Accel-Buffering": "no",
  // Or the browser would come back by the same line to a server that has stopped listening and waits for its lines to end.
  Connection: "close",
};

/** A vote (`?vote=`) as it happens: its stage and how many have placed their mark, for whoever was let in. */
export async function GET(request: Request): Promise<Response> {
  const opened = await openLiveClassroom();
  if (!opened.ok) return new Response(opened.refusal.sentence, { status: 503 });
  const { classroom, live } = opened;
  const { headers } = request;
  const voteId = new URL(request.url).searchParams.get("vote") ?? "";
  const subject = await live.subjectOf(voteId);
  const person = await classroom.whoIs(headers);
  if (!subject || !(mayDo(person, "see-vote", subject) || whoPlaces(headers, person, subject, live.secret)))
    return new Response("This is not yours to see.", { status: 403 });

  // Only the screen at the front shows how many are in: a thousand phones need not be told of every mark.
  const counts = mayDo(person, "run-vote", subject);
  const encoder = new TextEncoder();
  let leave: (() => void) | null = null;
  const stream = new ReadableStream<Uint8Array>(
    {
      start: (controller) => {
        const end = () => {
          leave?.();
          leave = null;
          try {
            controller.close();
          } catch {
            // It was closed from the other end.
          }
        };
        const send = (lines: string) => {
          if ((controller.desiredSize ?? 0) < 0) return end();
          controller.enqueue(encoder.encode(lines));
        };
        send(`retry: ${RETRY_MS + Math.round(Math.random() * RETRY_SPREAD_MS)}\n\n`);
        leave = live.rooms.enter(voteId, headers.get("last-event-id"), { send, end, counts });
        if (!leave) return end();
        request.signal.addEventListener("abort", end, { once: true });
      },
      cancel: () => leave?.(),
    },
    { highWaterMark: MOST_WAITING },
  );
  return new Response(stream, { headers: HEADERS });
}
