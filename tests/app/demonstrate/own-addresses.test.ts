import { describe, expect, it } from "vitest";
import { pagesOfDemonstration, talkName } from "@/app/demonstrate/[id]/addresses";

describe("the pages of a demonstration", () => {
  it("of the course are the server's", () => {
    const whose = { id: "tide-office", own: undefined };
    expect(talkName(whose)).toBe("tide-office");
    expect(pagesOfDemonstration(whose).notes).toBe("/demonstrate/tide-office/notes");
  });

  it("of one's own are found by what it is set aside under, and never by the name of one of the course", () => {
    const whose = { id: "tide-office", own: "k1-z" };
    expect(talkName(whose)).not.toBe("tide-office");
    expect(pagesOfDemonstration(whose)).toEqual({
      demonstration: "/demonstrate/draft?kept=k1-z",
      notes: "/demonstrate/draft/notes?kept=k1-z",
      practise: "/practise/draft?kept=k1-z",
    });
  });

  it("of one's own that this browser cannot set aside are open to no other window", () => {
    expect(pagesOfDemonstration({ id: "tide-office", own: null }).notes).toBeNull();
  });
});
