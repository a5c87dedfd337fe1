/** One sheet of paper, A4 or Letter: ink on white, room for a pencil, nothing that must be printed in colour. */
export const styleSheet = `
*, *::before, *::after { box-sizing: border-box; }
:root { color-scheme: light; --panel: #fff; }
body { margin: 0 auto; padding: 1rem; max-width: 50rem; background: #fff; color: #111; font: 10.5pt/1.35 -apple-system, "Segoe UI", "Noto Sans", "Liberation Sans", system-ui, sans-serif; overflow-wrap: break-word; font-variant-numeric: tabular-nums lining-nums; }
h1, h2, p, ul, dl { margin: 0; }
h1 { font-size: 1.7rem; line-height: 1.1; }
h2 { font-size: 1.05rem; line-height: 1.25; }
ul { padding-inline-start: 1.2rem; }
header { display: flex; flex-wrap: wrap; align-items: baseline; gap: 0.2rem 1rem; margin-bottom: 0.7rem; }
.subtitle, .small { color: #444; }
header dl { display: flex; flex-wrap: wrap; gap: 0.9rem 1rem; flex-basis: 100%; margin-top: 0.7rem; }
header dl div, section dl div { display: flex; gap: 0.5rem; flex: 1 1 9rem; align-items: baseline; }
dt { color: #444; }
dd { margin: 0; flex: 1; min-width: 3rem; border-bottom: 1px solid #111; }
section { margin-bottom: 0.6rem; break-inside: avoid; }
section[id^="bin-"] { border-top: 2px solid #111; padding-top: 0.45rem; }
section dl { display: flex; flex-wrap: wrap; gap: 0.9rem 1rem; margin-top: 0.9rem; }
.lead { font-size: 1.45rem; line-height: 1.25; }
.icon { width: 1.1em; height: 1.1em; vertical-align: -0.16em; margin-inline-end: 0.35em; }
.icon > * { fill: currentColor; }
.icon > .sign { fill: none; stroke: #fff; stroke-width: 1.7; stroke-linecap: round; }
#safety-strip { border: 2px solid #111; padding: 0.45rem 0.7rem; }
#safety-strip li { font-weight: 600; }
#preparation ul { list-style: none; padding: 0; }
#preparation li { padding-inline-start: 1.5em; text-indent: -1.5em; }
#preparation li::before { content: "☐" / ""; display: inline-block; width: 1.5em; text-indent: 0; }
#catch-again ul { columns: 2; }
#catch-again { border-top: 2px solid #111; padding-top: 0.45rem; }
#notes dl { height: 14mm; border-bottom: 1px solid #111; margin: 0; }
.table { margin-bottom: 0.7rem; }
.scroll { overflow-x: auto; }
:focus-visible { outline: 3px solid #0b5a6b; outline-offset: 2px; }
table { border-collapse: collapse; width: 100%; font-size: 0.95rem; line-height: 1.2; }
caption { text-align: start; font-weight: 650; font-size: 1.05rem; padding-bottom: 0.2rem; }
th, td { border: 1px solid #555; padding: 0.15rem 0.35rem; text-align: start; vertical-align: middle; font-weight: 400; }
thead th { font-size: 0.85rem; font-weight: 650; }
tbody td { height: 7.5mm; }
.center { text-align: center; }
#bins td:empty { min-width: 6rem; }
#catches td:empty { min-width: 2.6rem; }
#catches td:nth-last-child(-n + 2):empty { min-width: 5.5rem; }
@media screen and (max-width: 30rem) {
  header dl div { flex-basis: 100%; }
  #bins td:empty, #catches td:empty, #catches td:nth-last-child(-n + 2):empty { min-width: 0; }
  #catch-again ul { columns: 1; }
}
@page { margin: 11mm 12mm; }
@media print {
  html { font-size: 11pt; }
  body { padding: 0; max-width: none; font-size: 9.8pt; }
  .scroll { overflow: visible; }
  tr { break-inside: avoid; }
  thead { display: table-header-group; }
}
`;
