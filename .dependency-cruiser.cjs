/**
 * Which way the arrows point: who may import whom.
 *
 * The rooms of lib stand in one list. A room may import the rooms above it and none below; the three rooms in
 * `APART` also keep out of each other. A type import counts as an import.
 */

const swc = require("@swc/core");

// The cruiser has swc read every file as plain TypeScript, and a .tsx file then fails on its first tag.
const { parseFileSync } = swc;
Object.assign(swc, {
  parseFileSync: (/** @type {string} */ file) =>
    parseFileSync(file, { syntax: "typescript", target: "es2022", decorators: true, tsx: file.endsWith(".tsx") }),
});

const ROOMS = [
  "measure",
  "geometry",
  "sheet",
  "stage",
  "plan",
  "perspective",
  "construction",
  "exercise",
  "habits",
  "grading",
  "generator",
  "progress",
  "drawing",
  "photo",
  "draft",
  "classroom",
  "cli",
];

const APART = ["photo", "draft", "classroom"];

/** Rooms that read data from outside and may check it with zod; elsewhere the types are trusted. */
const ROOMS_WITH_ZOD = ["exercise", "draft", "classroom", "cli"];

/** Programs that only a developer starts, and that may need a developer's packages. */
const DEVELOPERS_PROGRAMS = [".+\\.mjs$", "photograph[a-z-]*\\.ts$"];

/** @param {readonly string[]} names */
const anyOf = (names) => `(${names.join("|")})`;

/** @param {string} room */
function roomsClosedTo(room) {
  const at = ROOMS.indexOf(room);
  const apart = APART.includes(room) ? APART.filter((other) => other !== room) : [];
  return [...new Set([...ROOMS.slice(at + 1), ...apart])];
}

/** @type {import("dependency-cruiser").IForbiddenRuleType[]} */
const arrowsBetweenRooms = ROOMS.filter((room) => roomsClosedTo(room).length > 0).map((room) => ({
  name: `lib-${room}-looks-up-only`,
  comment: `lib/${room} may import the rooms above it in the list of rooms, and none of these.`,
  severity: "error",
  from: { path: `^lib/${room}/` },
  to: { path: `^lib/${anyOf(roomsClosedTo(room))}/` },
}));

/** @type {{ forbidden: import("dependency-cruiser").IForbiddenRuleType[], options: import("dependency-cruiser").ICruiseOptions }} */
module.exports = {
  forbidden: [
    ...arrowsBetweenRooms,
    {
      name: "lib-imports-from-a-room",
      comment: "Every file of lib stands in one of the listed rooms; a new room is added to the list first.",
      severity: "error",
      from: { path: "^lib/", pathNot: `^lib/${anyOf(ROOMS)}/` },
      to: {},
    },
    {
      name: "lib-is-imported-in-a-room",
      comment: "The same, seen from the other end.",
      severity: "error",
      from: {},
      to: { path: "^lib/", pathNot: `^lib/${anyOf(ROOMS)}/` },
    },
    {
      name: "lib-knows-no-page",
      comment: "lib knows neither the app nor what it is built with.",
      severity: "error",
      from: { path: "^lib/", pathNot: "^lib/cli/" },
      to: { path: ["^app/", "^tests/", "node_modules/(react|react-dom|next|@next)/"] },
    },
    {
      name: "cli-knows-no-page",
      comment: "Programs start the app as a child; they do not import its pages.",
      severity: "error",
      from: { path: "^lib/cli/" },
      to: { path: ["^app/", "^tests/"] },
    },
    {
      name: "programs-run-before-install",
      comment: "A .mjs program starts on a fresh clone: packages only by a dynamic import, after the install.",
      severity: "error",
      from: { path: "^lib/cli/.+\\.mjs$" },
      to: { path: "node_modules/", dynamic: false },
    },
    {
      name: "zod-at-the-edge",
      comment: "Data is parsed once, where it comes in. It is also heavy in a page.",
      severity: "error",
      from: { path: "^(lib|app)/", pathNot: `^lib/${anyOf(ROOMS_WITH_ZOD)}/` },
      to: { path: "node_modules/zod/" },
    },
    {
      name: "app-leaves-programs-alone",
      comment: "lib/cli belongs to the terminal.",
      severity: "error",
      from: { path: "^app/" },
      to: { path: ["^lib/cli/", "^tests/"] },
    },
    {
      name: "route-keeps-to-itself",
      comment: "A route folder is its own; what several share stands in app/_sheet, app/_photo or app/_parts.",
      severity: "error",
      from: { path: "^app/([^/_][^/]*)/" },
      to: { path: "^app/[^/_][^/]*/", pathNot: "^app/$1/" },
    },
    {
      name: "shared-knows-no-route",
      comment: "The drawing board and the shared parts are used by routes, never the other way round.",
      severity: "error",
      from: { path: "^app/_" },
      to: { path: "^app/[^/_][^/]*/" },
    },
    {
      name: "shipped-code-ships-its-packages",
      comment: "What the app or the command line needs at run time is a dependency, not a development one.",
      severity: "error",
      from: { path: "^(lib|app)/", pathNot: `^lib/cli/${anyOf(DEVELOPERS_PROGRAMS)}` },
      to: { dependencyTypes: ["npm-dev"], dependencyTypesNot: ["type-only"] },
    },
    {
      name: "no-cycle",
      comment: "Two files that need each other are one file, or want a third above them.",
      severity: "error",
      from: {},
      to: { circular: true },
    },
    {
      name: "no-broken-import",
      comment: "An import that leads nowhere would hide an arrow.",
      severity: "error",
      from: { path: "^(lib|app|tests)/" },
      to: { couldNotResolve: true },
    },
  ],
  options: {
    // The default parser cannot read TypeScript 7: it finds no module at all, and finds nothing wrong with that.
    parser: "swc",
    tsPreCompilationDeps: true,
    doNotFollow: { path: "node_modules" },
    exclude: { path: "^(\\.next|coverage|test-results)/" },
    enhancedResolveOptions: {
      exportsFields: ["exports"],
      conditionNames: ["import", "require", "node", "default", "types"],
    },
  },
};
