import { existsSync, readFileSync } from "node:fs";

/** What a server process has used: seconds of a core since it started, and memory now, mebibytes. */
export type ServerCost = { readonly coreS: number; readonly memoryMiB: number };

/** Clock ticks in a second on every Linux that Node.js is built for, https://man7.org/linux/man-pages/man5/proc_pid_stat.5.html. */
const TICKS_A_SECOND = 100;
const KIB_IN_MIB = 1024;

/** What a process has used, as Linux counts it; null on another system. */
export function serverCost(pid: number): ServerCost | null {
  if (!existsSync(`/proc/${pid}/stat`)) return null;
  const stat = readFileSync(`/proc/${pid}/stat`, "utf8");
  // Its name may have spaces: the fields are counted from behind it. User and system time are fields 14 and 15.
  const fields = stat.slice(stat.lastIndexOf(")") + 2).split(" ");
  const ticks = Number(fields[11]) + Number(fields[12]);
  const memory = /^VmRSS:\s+(\d+) kB$/m.exec(readFileSync(`/proc/${pid}/status`, "utf8"))?.[1];
  return { coreS: ticks / TICKS_A_SECOND, memoryMiB: Number(memory) / KIB_IN_MIB };
}
