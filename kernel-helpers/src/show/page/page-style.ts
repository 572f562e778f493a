/** The page's look: one quiet column on screen, A4 or Letter in print. `runningTitle` stands at the head of each printed sheet. */
export function pageStyle(runningTitle: string): string {
  return `
:root { color-scheme: light; --ink: #221d18; --quiet: #5d554b; --rule: #cdc5b8; --wash: #f4f1ea; --accent: #6b3d1f; --warn: #8c2f16; }
* { box-sizing: border-box; }
html { background: #fff; color: var(--ink); -webkit-text-size-adjust: 100%; text-size-adjust: 100%; }
body { margin: 0 auto; padding: 2rem 1.25rem 4rem; max-width: 47rem; overflow-wrap: break-word;
  font: 1.0625rem/1.55 "Iowan Old Style", "Palatino Linotype", Palatino, P052, "URW Palladio L", "Book Antiqua", Charter, Georgia, "Noto Serif", "Liberation Serif", serif; }
a { color: var(--accent); text-underline-offset: 0.15em; text-decoration-thickness: 0.06em; }
:focus-visible { outline: 3px solid var(--accent); outline-offset: 2px; }
.skip { position: absolute; left: -100rem; }
.skip:focus { position: static; }
h1, h2, h3, h4 { line-height: 1.2; font-weight: 600; text-wrap: balance; }
h1 { font-size: 2.1rem; margin: 0.1em 0 0.5em; }
h2 { font-size: 1.5rem; margin: 0 0 0.7em; }
h3 { font-size: 1.15rem; margin: 1.8em 0 0.5em; }
h4 { font-size: 1rem; margin: 1.4em 0 0.4em; }
p, ul, ol, dl { margin: 0 0 0.9em; }
header { border-bottom: 3px double var(--ink); margin-bottom: 1.5rem; padding-bottom: 0.6rem; }
header dl { display: flex; flex-wrap: wrap; gap: 0.3rem 2.2rem; margin: 0; }
header dt, .small, figcaption, caption, .daybook-caution small { color: var(--quiet); font-size: 0.875rem; }
header dd { margin: 0; }
nav ol { list-style: none; padding: 0; margin: 0; columns: 2 16rem; }
nav li { margin: 0 0 0.3em; break-inside: avoid; }
nav h2 { font-size: 1.05rem; }
.sheet { border-top: 1px solid var(--rule); margin-top: 3rem; padding-top: 1.6rem; }
.output { margin: 0.8em 0; overflow-x: auto; }
.output > :last-child, .output > div:not([class]) > :last-child { margin-bottom: 0; }
table { border-collapse: collapse; margin: 0.4em 0 1em; font-size: 0.9375rem; line-height: 1.4; font-variant-numeric: lining-nums tabular-nums; max-width: 100%; }
caption { text-align: left; padding-bottom: 0.35em; }
th, td { padding: 0.3em 1.1em 0.3em 0; text-align: left; vertical-align: baseline; border-bottom: 1px solid var(--rule); }
th:last-child, td:last-child { padding-right: 0; }
thead th, thead td { border-bottom: 1.5px solid var(--ink); font-weight: 600; vertical-align: bottom; }
tbody th { font-weight: normal; }
td.value { font-weight: 600; white-space: pre-line; }
.parameters th:first-child { white-space: nowrap; }
td.number { text-align: right; }
.daybook-working { margin: -0.2em 0 1.2em 1.4rem; color: var(--quiet); }
.daybook-working p { font-size: 0.875rem; margin: 0; }
.daybook-symbols { font-size: 0.875rem; margin: 0 0 0.4em; }
.daybook-symbols th, .daybook-symbols td { border: 0; padding-top: 0.05em; padding-bottom: 0.05em; line-height: 1.3; }
.daybook-symbols th { font-weight: normal; font-style: italic; }
.math { overflow-x: auto; padding: 0.2em 0; }
math { font-family: "STIX Two Math", "Cambria Math", "Latin Modern Math", "TeX Gyre Pagella Math", "Libertinus Math", "Noto Sans Math", "DejaVu Math TeX Gyre", math; font-size: 1.08em; }
math[display="block"] { display: block math; width: max-content; margin: 0 0 0 1.4rem; }
.tml-jot > mtr > mtd { padding-top: 0.7ex; padding-bottom: 0.7ex; }
.tml-right { text-align: -webkit-right; text-align: right; }
.tml-left { text-align: -webkit-left; text-align: left; }
figure { margin: 1em 0; }
img { max-width: 100%; height: auto; }
pre, code { font-family: ui-monospace, "SFMono-Regular", Menlo, Consolas, "DejaVu Sans Mono", monospace; font-size: 0.84em; }
pre { background: var(--wash); padding: 0.7em 0.9em; white-space: pre-wrap; line-height: 1.45; margin: 0.6em 0; }
pre code { font-size: 1em; }
.record td:nth-child(2), .record td:last-child { white-space: nowrap; }
pre.error { background: none; border: 2px solid var(--warn); }
details.code { color: var(--quiet); font-size: 0.8125rem; margin: 0.2em 0 0.8em; }
details.code summary { cursor: pointer; width: max-content; margin-left: auto; }
.daybook-findings ul, .daybook-caution ul { margin: 0 0 0.6em; }
.daybook-findings li { break-inside: avoid; }
.daybook-caution { border: 1px solid var(--ink); padding: 0.7em 1.1em 0.1em; margin-bottom: 0.6em; font-size: 0.9375rem; }
.daybook-caution p { margin-bottom: 0.5em; }
.daybook-caution ul { padding-left: 1.2em; }
.problems { border: 3px solid var(--warn); padding: 0.7em 1.1em 0; margin: 1em 0; }
.whole { overflow-wrap: anywhere; }
.record { font-size: 0.875rem; }
.words { columns: 2 18rem; column-gap: 2.2rem; }
.words dt { font-weight: 600; }
.words dd { margin: 0 0 0.6em; }
.words div { break-inside: avoid; }
footer { border-top: 1px solid var(--rule); margin-top: 3rem; padding-top: 0.8rem; }
@page { margin: 17mm 18mm 19mm;
  @top-left { content: ${cssString(runningTitle)}; font: 8.5pt Georgia, serif; color: #5d554b; }
  @bottom-right { content: counter(page) " / " counter(pages); font: 8.5pt Georgia, serif; color: #5d554b; } }
@page :first { @top-left { content: none; } }
@media print {
  body { max-width: none; padding: 0; font-size: 9.5pt; line-height: 1.36; }
  a { color: inherit; text-decoration: none; }
  .skip, details.code { display: none; }
  h1, h2, h3, h4, caption { break-after: avoid; }
  h2 { font-size: 15pt; }
  h3 { margin-top: 1.1em; }
  p, li { orphans: 3; widows: 3; }
  .daybook-caution, .daybook-caution small { font-size: 8pt; }
  .daybook-caution ul { columns: 2; column-gap: 1.6em; }
  thead { display: table-header-group; }
  table, tr, figure, img, pre, .math, .daybook-caution, .problems { break-inside: avoid; }
  table.record, table:has(tr:nth-child(12)) { break-inside: auto; }
  p:has(+ .output), p:has(+ table), .daybook-findings > p { break-after: avoid; }
  th, td { padding-top: 0.17em; padding-bottom: 0.17em; }
  table:has(thead th:nth-child(9)) { font-size: 0.8em; }
  table:has(thead th:nth-child(9)) :is(th, td) { padding-right: 0.5em; }
  .output, .math { overflow: visible; }
  .math { break-after: avoid; }
  .sheet { break-before: page; border: 0; margin: 0; padding: 0; }
  nav + main > .sheet:first-child { break-before: auto; margin-top: 8mm; padding-top: 5mm; border-top: 1px solid var(--rule); }
  figure { text-align: left; }
  figure img { max-height: 210mm; width: auto; }
  pre { border: 1px solid var(--rule); background: none; }
}
`;
}

/** A string for CSS: everything but letters and digits as a code, so that it can end neither the string nor the style. */
function cssString(text: string): string {
  return `"${text.replace(/[^a-zA-Z0-9 ]/gu, (character) => `\\${(character.codePointAt(0) as number).toString(16)} `)}"`;
}
