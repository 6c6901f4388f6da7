import { FORBIDDEN, handlePost } from "@/app/_server/handle-post";
import { makeClass } from "@/lib/classroom/accounts/classes";
import { MakeClassRequest } from "@/lib/classroom/accounts/requests";

export const POST = handlePost(MakeClassRequest, async ({ value, person, store }) =>
  person.kind === "teacher" ? makeClass(store, person.userId, value.title) : FORBIDDEN,
);
