/** The look of a page that says what is wrong with an address: no script, and nothing that has to be fetched. */
const LOOK = `
  :root { color-scheme: light dark; --table: #bfc8b8; --paper: #f8f3e7; --graphite: #2b2a27; }
  @media (prefers-color-scheme: dark) { :root { --table: #101316; --paper: #1d2023; --graphite: #ebe4d3; } }
  body { margin: 0; min-height: 100vh; display: grid; place-items: center; background: var(--table);
    color: var(--graphite); font: 1rem/1.4 "Segoe UI", sans-serif; }
  main { max-width: 32rem; margin: 1.5rem; padding: 2rem; background: var(--paper); border: 1px solid; }
  h1 { margin: 0 0 1rem; font-size: 1.5rem; line-height: 1.2; }
  a { color: inherit; }
`;

/** A page in place of a file that cannot be made: what is wrong and where to go on. */
export function problemPage(status: 400 | 404, title: string, problem: string, back: string): Response {
  const [shown, said, address] = [title, problem, back].map(escapeText);
  const html = `<!doctype html>
<html lang="en">
<head><meta charset="utf-8"><meta name="viewport" content="width=device-width"><title>${shown}</title><style>${LOOK}</style></head>
<body><main><h1>${shown}</h1><p>${said}</p><p><a href="${address}">Back to the sheet</a></p></main></body>
</html>
`;
  return new Response(html, { status, headers: { "Content-Type": "text/html; charset=utf-8" } });
}

function escapeText(text: string): string {
  return text.replaceAll("&", "&amp;").replaceAll("<", "&lt;").replaceAll(">", "&gt;").replaceAll('"', "&quot;");
}
