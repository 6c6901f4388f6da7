import { writeCsv } from "./csv";
import type { Gradebook } from "./gradebook";
import { lineItemsCsv } from "./line-items-csv";
import { resultsCsv } from "./results-csv";
import { storeZip } from "./store-zip";

/** The files that OneRoster 1.2 knows; names as in the manifest of `@conform-ed/contracts` (oneroster/v1_2). */
const FILES = [
  "academicSessions",
  "categories",
  "classes",
  "classResources",
  "courses",
  "courseResources",
  "demographics",
  "enrollments",
  "lineItemLearningObjectiveIds",
  "lineItems",
  "lineItemScoreScales",
  "orgs",
  "resources",
  "resultLearningObjectiveIds",
  "results",
  "resultScoreScales",
  "roles",
  "scoreScales",
  "userProfiles",
  "userResources",
  "users",
] as const;
const SENT: readonly string[] = ["lineItems", "results"];

/** What an archive of OneRoster 1.2 holds: which files there are and which not, the whole of each that there is. */
export function manifestCsv(): string {
  return writeCsv([
    ["propertyName", "value"],
    ["manifest.version", "1.0"],
    ["oneroster.version", "1.2"],
    ...FILES.map((file) => [`file.${file}`, SENT.includes(file) ? "bulk" : "absent"]),
    ["source.systemName", "Plasterline"],
    ["source.systemCode", ""],
  ]);
}

/** A class's exercises and results as one archive, for another system to read. */
export function resultsZip(book: Gradebook, classId: string, now: string): Uint8Array {
  return storeZip([
    { name: "manifest.csv", text: manifestCsv() },
    { name: "lineItems.csv", text: lineItemsCsv(book, classId) },
    { name: "results.csv", text: resultsCsv(book, classId, now) },
  ]);
}
