/** The frame of an HTML page to print or send: no scripts, nothing loaded from elsewhere, grey so that nothing competes with colours. */
import { html, type Markup } from './html.js';

const STYLE: Markup = {
  markup: `
:root { color-scheme: light; }
body { margin: 0; background: #fff; color: #1a1a1a; font: 16px/1.5 system-ui, sans-serif; }
main { max-width: 52rem; margin: 0 auto; padding: 1.5rem; }
h1 { font-size: 1.6rem; } h2 { font-size: 1.2rem; margin: 1.5rem 0 .25rem; }
.family { color: #555; margin: 0; }
.bar, .swatch { print-color-adjust: exact; -webkit-print-color-adjust: exact; }
@media print { main { max-width: none; padding: 0; } body { font-size: 11pt; } }
`,
};

/** What a page holds. */
export interface Page {
  readonly title: string;
  /** Style beside the common one. */
  readonly style: Markup;
  readonly body: Markup;
  /** Whether pictures stand in it, as data addresses; nothing is loaded from elsewhere all the same. */
  readonly withPictures?: boolean;
  /** Language of the words in it. */
  readonly lang?: string;
}

/** The page as text. */
export function htmlPage({ title, style, body, withPictures = false, lang = 'en' }: Page): string {
  return html`<!doctype html>
<html lang="${lang}">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src 'unsafe-inline'${withPictures ? '; img-src data:' : ''}">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>${title}</title>
<style>${STYLE}${style}</style>
</head>
<body>
<main>
${body}
</main>
</body>
</html>
`.markup;
}
