import { fileURLToPath } from "node:url";

/** Absolute path of the folder that holds package.json. Programs find everything from here, wherever they are started. */
export const PROJECT_ROOT = fileURLToPath(new URL("../..", import.meta.url));
