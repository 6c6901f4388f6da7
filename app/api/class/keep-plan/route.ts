import { FORBIDDEN, handlePost } from "@/app/_server/handle-post";
import { planSubject } from "@/lib/classroom/access/find-subject";
import { mayDo } from "@/lib/classroom/access/may-do";
import { SCHOOL } from "@/lib/classroom/access/person";
import { countKeeping } from "@/lib/classroom/library/count-keeping";
import { keepPlan } from "@/lib/classroom/library/keep-plan";
import { KeepPlanRequest } from "@/lib/classroom/library/requests";

/** A plan of 1 MiB, whose quotes and line ends take more room on the way. */
const MOST_BYTES = 4 * 1024 * 1024;

/** Keeps a plan in the library of whoever asks; one that is there already, in its owner's only. */
export const POST = handlePost(
  KeepPlanRequest,
  async ({ value, person, store }) => {
    const subject = await planSubject(store, value.planId);
    const may = subject ? mayDo(person, "change-plan", subject) : mayDo(person, "make-plan", SCHOOL);
    if (person.kind !== "teacher" || !may) return FORBIDDEN;
    const often = await countKeeping(store, person.userId);
    return often ?? keepPlan(store, { ...value, ownerId: person.userId });
  },
  MOST_BYTES,
);
