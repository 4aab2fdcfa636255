import type { Markup } from '../text/html.js';

/** Style of a report beside that of any page: tables and bars, cards side by side, small in print so that a class takes a few sheets. */
export const REPORT_STYLE: Markup = {
  markup: `
main { max-width: 62rem; }
table { border-collapse: collapse; width: 100%; margin: .75rem 0; }
caption { text-align: left; font-weight: 600; padding-bottom: .25rem; }
th, td { text-align: left; vertical-align: top; padding: .15rem .4rem; border-bottom: 1px solid #bbb; overflow-wrap: break-word; }
thead th { vertical-align: bottom; font-weight: 600; font-size: .85em; } tbody th { font-weight: 400; }
abbr { text-decoration: none; }
.n { text-align: right; font-variant-numeric: tabular-nums; white-space: nowrap; } thead .n { white-space: normal; }
.weak { font-weight: 700; background: #e4e4e4; }
.next { border: 2px solid #333; padding: .25rem .75rem; } .next h2 { margin-top: .25rem; } .next p { margin: .4rem 0; }
.idea { border-left: 4px solid #555; padding-left: .5rem; }
ul { padding-left: 1.2rem; margin: .4rem 0; } p { margin: .4rem 0; } h3 { font-size: 1rem; margin: 0; }
.wide { overflow-x: auto; } .grid { width: auto; min-width: 60%; } .grid tbody th { min-width: 7rem; max-width: 16rem; }
.grid td { white-space: nowrap; } .grid td.words { white-space: normal; min-width: 8rem; } .grid th:first-child { position: sticky; left: 0; background: #fff; }
.side, .cards { display: grid; grid-template-columns: repeat(auto-fit, minmax(min(100%, 24rem), 1fr)); gap: 0 1.5rem; align-items: start; }
.card { border-top: 1px solid #555; padding: .5rem 0; font-size: .9rem; min-width: 0; }
.swatches { list-style: none; padding: 0; } .swatches li { display: flex; align-items: center; gap: .4rem; }
.swatch { flex: none; width: 3rem; height: 1.4rem; border: 1px solid #777; margin: .1rem 0; }
.bars { width: 15%; min-width: 2.5rem; vertical-align: middle; } .track { display: block; border: 1px solid #999; } .bar { display: block; height: .6em; background: #555; }
.weak, .next { print-color-adjust: exact; -webkit-print-color-adjust: exact; }
@media (max-width: 30rem) { main { padding: .75rem; } .bars { display: none; } thead .bars { display: none; } .optional { display: none; } }
@media print {
  @page { margin: 12mm; }
  body { font-size: 8pt; line-height: 1.25; } .card { font-size: 7pt; padding: .2rem 0; } p, ul { margin: .15rem 0; } h3 { font-size: 8.5pt; } .card caption { display: none; } h1 { margin: 0; font-size: 14pt; } h2 { font-size: 11pt; margin: .5rem 0 .1rem; }
  .wide { overflow: visible; } .grid th:first-child { position: static; } th, td { padding: .05rem .3rem; } table { margin: .25rem 0; }
  .side { grid-template-columns: 1fr 1fr; } .cards { display: block; columns: 2; column-gap: 6mm; } .cards.many { columns: 3; } .many .screen, .many .bars { display: none; } .remarks { columns: 3; }
  .card, tr, .next { break-inside: avoid; } .many .card { break-inside: auto; } h2, h3, caption { break-after: avoid; } thead { display: table-header-group; }
  .swatch { width: 2rem; height: .9rem; }
}
`,
};
