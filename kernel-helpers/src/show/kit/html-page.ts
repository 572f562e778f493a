import { escapeHtml } from './escape.js';

// A second wall behind the escaping: even a slip could run nothing and fetch nothing.
const contentPolicy =
  "default-src 'none'; img-src data:; style-src 'unsafe-inline'; base-uri 'none'; form-action 'none'";

/**
 * A whole HTML document that carries all it needs: it loads nothing and runs nothing.
 *
 * @param page.title  plain text
 * @param page.style  CSS of its own
 * @param page.body  HTML, its texts escaped
 */
export function htmlPage({ title, style, body }: { title: string; style: string; body: string }): string {
  return `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="${contentPolicy}">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>${escapeHtml(title)}</title>
<style>${style}</style>
</head>
<body>
${body}
</body>
</html>
`;
}
