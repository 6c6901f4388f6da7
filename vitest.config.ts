import { fileURLToPath } from "node:url";
import react from "@vitejs/plugin-react";
import { defineConfig } from "vitest/config";

const root = fileURLToPath(new URL(".", import.meta.url));

export default defineConfig({
  plugins: [react()],
  resolve: { alias: { "@": root } },
  test: {
    projects: [
      {
        extends: true,
        test: {
          name: "lib",
          environment: "node",
          include: ["tests/**/*.test.ts"],
          exclude: ["tests/browser/**"],
          benchmark: { include: ["tests/bench/*.bench.ts", "tests/bench/!(browser)/**/*.bench.ts"] },
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
