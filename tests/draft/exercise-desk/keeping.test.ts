import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { packText, unpackText } from "@/lib/draft/exercise-desk/pack-text";
import { addVersion, dropVersion, MOST_VERSIONS, readVersions, type Version } from "@/lib/draft/exercise-desk/versions";
import { seeded } from "../../seeded";

const version = (n: number, text = `plan ${n}`, name = ""): Version => ({
  when: new Date(n * 60_000).toISOString(),
  name,
  text,
});

describe("the versions of a plan", () => {
  it("stand the newest first, and the oldest go", () => {
    const all = Array.from({ length: MOST_VERSIONS + 3 }, (_, n) => version(n)).reduce(
      addVersion,
      [] as readonly Version[],
    );
    expect(all).toHaveLength(MOST_VERSIONS);
    expect(all[0]).toEqual(version(MOST_VERSIONS + 2));
    expect(all.at(-1)).toEqual(version(3));
  });

  it("are not kept twice, unless one is given a name", () => {
    const one = addVersion([], version(1, "plan"));
    expect(addVersion(one, version(2, "plan"))).toBe(one);
    expect(addVersion(one, version(2, "plan", "  As shown  "))[0]).toEqual(version(2, "plan", "As shown"));
  });

  it("come back from what a browser kept, without what is none", () => {
    const kept = [version(2), { when: "never", name: "", text: "" }, null, "plan", version(1)];
    expect(readVersions(JSON.parse(JSON.stringify(kept)))).toEqual([version(2), version(1)]);
    expect(readVersions({ when: "" })).toEqual([]);
    expect(dropVersion([version(2), version(1)], version(2).when)).toEqual([version(1)]);
  });
});

describe("a text in an address", () => {
  it("comes back whole, and holds only what an address may", async () => {
    await fc.assert(
      fc.asyncProperty(fc.string({ unit: "grapheme", minLength: 1, maxLength: 300 }), async (text) => {
        const packed = await packText(text);
        expect(packed).toMatch(/^[\w-]+$/);
        expect(await unpackText(packed)).toEqual({ ok: true, text: text });
      }),
      { ...seeded, numRuns: 50 },
    );
  });

  it("is nothing where the address was cut or changed", async () => {
    const packed = await packText(JSON.stringify({ title: "The tide office", walls: [1, 2, 3, 4, 5, 6, 7] }));
    for (const broken of ["", "!", "%20", packed.slice(0, -9), `xx${packed}`])
      expect(await unpackText(broken), broken).toEqual({ ok: false });
  });

  it("is not blown up past what a file may hold", async () => {
    const packed = await packText(" ".repeat(50_000));
    expect(packed.length).toBeLessThan(200);
    expect(await unpackText(packed, 40_000)).toEqual({ ok: false });
    expect((await unpackText(packed, 50_000)).ok).toBe(true);
  });
});
