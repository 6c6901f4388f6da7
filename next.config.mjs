/** Sent with everything, whatever it is; what a page may run is said by proxy.ts. */
const HEADERS = [
  { key: "X-Content-Type-Options", value: "nosniff" },
  { key: "Referrer-Policy", value: "same-origin" },
];

/** @type {import("next").NextConfig} */
const config = {
  reactStrictMode: true,
  poweredByHeader: false,
  // Loaded as they are: one is compiled for this computer and may be missing, the others find their parts by themselves.
  serverExternalPackages: ["better-sqlite3", "pg", "kysely", "better-auth"],
  headers: async () => [{ source: "/:path*", headers: HEADERS }],
};

export default config;
