import type { Draft } from "@/lib/draft/draft";
import type { Edit } from "@/lib/draft/edit";

/** An edit that is made for whatever stands on the draft when its turn comes; it may still be one that is refused. */
export type Making = (draft: Draft) => Edit;
