import type { Markup } from '../text/html.js';

/** Style of the report beside that of any page: tables, bars, breaks between questions in print. */
export const REPORT_STYLE: Markup = {
  markup: `
table { border-collapse: collapse; width: 100%; margin: 1rem 0; }
caption { text-align: left; font-weight: 600; padding-bottom: .25rem; }
th, td { text-align: left; vertical-align: top; padding: .25rem .5rem; border-bottom: 1px solid #bbb; overflow-wrap: anywhere; }
tbody th { font-weight: 400; }
.wide { overflow-x: auto; } .class { table-layout: fixed; min-width: 40rem; }
.class th:first-child { width: 32%; } .class th:last-child { width: 24%; }
.n { text-align: right; font-variant-numeric: tabular-nums; white-space: nowrap; overflow-wrap: normal; }
.idea { border-left: 4px solid #555; padding-left: .75rem; }
.swatches { list-style: none; padding: 0; }
.swatch { display: inline-block; width: 6rem; height: 2.5rem; vertical-align: middle; border: 1px solid #777; margin: .15rem .5rem .15rem 0; }
.fields { display: grid; grid-template-columns: repeat(auto-fit, minmax(18rem, 1fr)); gap: 0 1.5rem; }
.bars { width: 40%; white-space: nowrap; } .track { display: inline-block; width: 60%; } .bar { display: block; height: .8em; background: #555; }
.share { margin-left: .4rem; white-space: nowrap; }
@media print { .wide { overflow: visible; } .class { min-width: 0; } section, table, tr { break-inside: avoid; } thead { display: table-header-group; } }
`,
};
