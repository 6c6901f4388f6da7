import { fileURLToPath } from "node:url";
import react from "@vitejs/plugin-react";
import { defineConfig } from "vitest/config";

const root = fileURLToPath(new URL(".", import.meta.url));

export default defineConfig({
  plugins: [react()],
  resolve: { alias: { "@": root } },
  test: {
    // Two cores would else get one worker, for the sake of a watcher that nobody runs here.
    maxWorkers: "100%",
    // Properties try hundreds of cases; a busy or slow laptop must not fail them for it.
    testTimeout: 30_000,
    projects: [
      {
        extends: true,
        test: {
          name: "lib",
          environment: "node",
          include: ["tests/**/*.test.ts"],
          exclude: ["tests/browser/**"],
          benchmark: { include: ["tests/bench/**/*.bench.ts"], exclude: ["tests/bench/browser/**"] },
        },
      },
      {
        extends: true,
        test: {
          name: "ui",
          environment: "jsdom",
          include: ["tests/app/**/*.test.tsx"],
          setupFiles: ["tests/app/setup.ts"],
          benchmark: { include: [] },
        },
      },
    ],
  },
});
