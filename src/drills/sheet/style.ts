/** Style of the contact sheet beside that of any page: patches in a column, so that answers are compared at a glance. */
import type { Markup } from '../../text/html.js';

export const SHEET_STYLE: Markup = {
  markup: `
h2 { margin: 3rem 0 0; border-bottom: 2px solid #1a1a1a; }
h3 { font-size: 1.05rem; margin: 0; } p { margin: .35rem 0; }
article { border-top: 1px solid #bbb; padding-top: 1rem; margin-top: 1.5rem; }
h2 + article { border-top: 0; margin-top: 0; }
code { font: .85em ui-monospace, monospace; background: #f0f0f0; padding: 0 .25em; }
.hint { color: #444; } .figures { font-variant-numeric: tabular-nums; }
.fault { border-left: 4px solid #1a1a1a; padding-left: .75rem; font-weight: 600; }
.goal, .said { margin: .2rem 0; padding-left: 1.1rem; } .said { font-size: .85rem; line-height: 1.4; }
.toc { columns: 2; padding-left: 1.1rem; }
.scene { display: flex; gap: 1rem; margin: .6rem 0; break-inside: avoid; } .scene svg { width: 24rem; max-width: 49%; border: 1px solid #777; }
.given { display: flex; flex-wrap: wrap; gap: .5rem 1.25rem; margin: .6rem 0; padding: 0; list-style: none; }
.given li { width: 11.5rem; font-size: .85rem; line-height: 1.35; }
.answer { display: grid; grid-template-columns: 11rem 1fr; gap: 0 1rem; padding: .5rem 0; border-top: 1px solid #ddd; }
.answer.plain { display: block; }
.answer p { margin: 0; } .answer .mark { float: right; margin-left: 1rem; }
.best { border-top: 2px solid #777; }
.pair { display: flex; height: 3.5rem; border: 1px solid #777; } .answer .pair { height: 5rem; }
.swatch { flex: 2; } .swatch + .swatch { flex: 1; }
@media print { :root { font-size: 9pt; } body { font-size: 1rem; } .answer, .given, .goal { break-inside: avoid; } h2, h3, article > p { break-after: avoid; } }
`,
};
