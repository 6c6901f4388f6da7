import type { Person } from "@/lib/classroom/access/person";
import type { Auth } from "@/lib/classroom/accounts/auth";
import { type Fault, faultOf, refusal } from "@/lib/classroom/store/fault";
import type { Store } from "@/lib/classroom/store/store";
import { openClassroom } from "./classroom";
import { isAtTheServer, readClient } from "./client";
import { readPost } from "./read-post";

/** A form's schema, as far as it is used here. */
type Schema<Value> = {
  readonly safeParse: (
    value: unknown,
  ) =>
    | { readonly success: true; readonly data: Value }
    | { readonly success: false; readonly error: { readonly issues: readonly { readonly message: string }[] } };
};

export type Asked<Value> = {
  readonly value: Value;
  readonly person: Person;
  readonly store: Store;
  readonly auth: Auth;
  readonly headers: Headers;
  readonly address: string;
  readonly atTheServer: boolean;
};

/** What a route answers: `ok` with what the page needs, or why not, in a sentence; cookies are set either way. */
export type Answer =
  | { readonly ok: true; readonly cookies?: readonly string[]; readonly [part: string]: unknown }
  | { readonly ok: false; readonly reason: string; readonly sentence: string; readonly status?: number };

export const FORBIDDEN: Answer = {
  ok: false,
  reason: "forbidden",
  status: 403,
  sentence: "This is not yours to do. If you were signed out meanwhile, sign in and try once more.",
};

const STATUS: Readonly<Record<string, number>> = { "too-many": 429, full: 507 };
const FAULTS: readonly string[] = [
  "held",
  "no-sqlite",
  "unreachable",
  "lost",
  "damaged",
  "busy",
  "newer",
] satisfies Fault[];

/** A route that does something: it reads a form, finds out who asks, and answers in JSON, whatever goes wrong. */
export function handlePost<Value>(
  schema: Schema<Value>,
  work: (asked: Asked<Value>) => Promise<Answer>,
  mostBytes?: number,
) {
  return async (request: Request): Promise<Response> => {
    const read = await readPost(request, mostBytes);
    if (!read.ok) return reply({ ok: false, reason: "unread", sentence: read.sentence, status: read.status });
    const form = schema.safeParse(read.value);
    if (!form.success)
      return reply({
        ok: false,
        reason: "unclear",
        sentence: form.error.issues[0]?.message ?? "Something is missing.",
        status: 400,
      });
    try {
      const opened = await openClassroom();
      if (!opened.ok) return reply({ ok: false, ...opened.refusal });
      const { store, authFor, whoIs } = opened.classroom;
      const { headers } = request;
      const { address } = readClient(headers);
      const [person, auth] = [await whoIs(headers), authFor(headers)];
      return reply(
        await work({ value: form.data, person, store, auth, headers, address, atTheServer: isAtTheServer(headers) }),
      );
    } catch (error) {
      const fault = faultOf(error);
      if (fault) return reply({ ok: false, ...refusal(fault) });
      // Only the kind of mistake: the rest may hold somebody's name.
      console.error(`Class could not do something: ${error instanceof Error ? error.name : "unknown"}`);
      return reply({
        ok: false,
        reason: "mistake",
        sentence: "Something went wrong in the program, and nothing was kept of this. Try once more.",
        status: 500,
      });
    }
  };
}

function reply(answer: Answer): Response {
  const { cookies, status, ...body } = answer as Answer & { cookies?: readonly string[]; status?: number };
  const headers = new Headers({ "Cache-Control": "no-store" });
  for (const cookie of cookies ?? []) headers.append("Set-Cookie", cookie);
  return Response.json(body, { status: status ?? statusOf(answer), headers });
}

function statusOf(answer: Answer): number {
  if (answer.ok) return 200;
  return STATUS[answer.reason] ?? (FAULTS.includes(answer.reason) ? 503 : 422);
}
