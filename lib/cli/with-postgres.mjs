import { PROJECT_ROOT } from "./project-root.mjs";
import { runNode } from "./run-node.mjs";
import { startPostgres } from "./start-postgres.mjs";

/** Runs a program of Node's with a PostgreSQL beside it: node lib/cli/with-postgres.mjs node_modules/vitest/vitest.mjs run tests/classroom */
const server = await startPostgres("quick");
if ("sentence" in server) console.log(server.sentence);
const env = "url" in server ? { PLASTERLINE_TEST_POSTGRES: server.url } : {};
const { code } = await runNode(process.argv.slice(2), { cwd: PROJECT_ROOT, env });
if ("stop" in server) await server.stop();
process.exitCode = code;
