import { cruiseArrows } from "./cruise-arrows.mjs";
import { PROJECT_ROOT } from "./project-root.mjs";

/** Another folder laid out like this one may be named, to see what the check makes of it. */
const root = process.argv[2] ?? PROJECT_ROOT;

const { modules, broken } = await cruiseArrows(root);

for (const { rule, from, to, why } of broken) {
  console.log(`${from} imports ${to}\n  ${rule}: ${why}`);
}
console.log(
  `${modules} modules read, ${broken.length} ${broken.length === 1 ? "arrow points" : "arrows point"} the wrong way.`,
);
if (modules === 0) console.log("No module was read, so nothing was checked.");
process.exitCode = modules > 0 && broken.length === 0 ? 0 : 1;
