/** Sent with everything, whatever it is; what a page may run is said by proxy.ts. */
const HEADERS = [
  { key: "X-Content-Type-Options", value: "nosniff" },
  { key: "Referrer-Policy", value: "same-origin" },
];

/**
 * What the page that reads photographs has its worker keep to: it runs and fetches what this server gives it and nothing else.
 * A worker takes its rules from its own file's answer, not from the page that starts it, and its file is one of the builder's;
 * on scripts that are no worker's the rules say nothing. OpenCV puts functions together from texts, and is code compiled
 * beforehand: both are allowed there, and on no page.
 */
const WORKER_RULES = [
  "default-src 'none'",
  "script-src 'self' 'unsafe-eval' 'wasm-unsafe-eval'",
  "connect-src 'self'",
  "base-uri 'none'",
].join("; ");

/** The worker that opens scans is served as it is written. It puts nothing together from texts, and is given what it fetches. */
const SCAN_RULES = ["default-src 'none'", "script-src 'self' 'wasm-unsafe-eval'", "base-uri 'none'"].join("; ");

/** @type {import("next").NextConfig} */
const config = {
  reactStrictMode: true,
  poweredByHeader: false,
  // Loaded as they are: one is compiled for this computer and may be missing, the others find their parts by themselves.
  serverExternalPackages: ["better-sqlite3", "pg", "kysely", "better-auth"],
  // A browser that has not come to a page's own word for its icon asks for one by this name.
  rewrites: async () => [{ source: "/favicon.ico", destination: "/icon.svg" }],
  headers: async () => [
    { source: "/:path*", headers: HEADERS },
    {
      source: "/_next/static/chunks/:file(.*\\.js)",
      headers: [{ key: "Content-Security-Policy", value: WORKER_RULES }],
    },
    {
      source: "/_next/static/media/:file(.*\\.mjs)",
      headers: [{ key: "Content-Security-Policy", value: SCAN_RULES }],
    },
  ],
};

export default config;
