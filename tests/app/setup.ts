import "@testing-library/jest-dom/vitest";
import { cleanup } from "@testing-library/react";
import { afterEach } from "vitest";

// Without vitest globals the library cannot hook its own cleanup, and one test's page would stand in the next.
afterEach(cleanup);
