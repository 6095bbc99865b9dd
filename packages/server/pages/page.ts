import { html, raw } from 'hono/html';

/** Escaped markup. */
export type Markup = ReturnType<typeof html>;

/** A whole page without script. What goes in as text is escaped. */
export const page = ({ title, body }: { readonly title: string; readonly body: Markup }): Markup =>
  html`${raw('<!doctype html>')}
<html lang="en-GB">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta name="color-scheme" content="light dark">
<title>${title} · Fettle</title>
<link rel="stylesheet" href="/assets/fettle.css">
<link rel="icon" href="data:,">
</head>
<body>
${body}
</body>
</html>
`;
