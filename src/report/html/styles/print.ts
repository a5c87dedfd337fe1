/** Paper: A4 or Letter, whatever is in the tray. Cards, charts, cautions and short tables stay whole. */
export const print = `
@page { margin: 16mm 15mm 18mm; @bottom-right { content: counter(page) " / " counter(pages); font: 9pt sans-serif; color: #516066; } }
@media print {
  html { font-size: 10.5pt; }
  body { background: none; font-size: 1rem; line-height: 1.5; }
  .skip, .contents, .drawing.live, .hint { display: none; }
  .masthead, .page, footer { max-width: none; padding-inline: 1px; }
  .masthead { padding-top: 0; }
  .masthead h1 { font-size: 2.1rem; }
  .masthead::after, .icon, .span, .call, .cautions > li, .drawing svg, tbody tr[class] > * { -webkit-print-color-adjust: exact; print-color-adjust: exact; }
  .page { padding-block: 1.2rem 0; }
  main > section { margin-top: 2.2rem; }
  p, li { orphans: 3; widows: 3; }
  h2, h3, h4, h5, h6, caption, summary { break-after: avoid; }
  .card, .chart, .cautions > li, .table.short, tr, dl > div, .next-step { break-inside: avoid; }
  .cards { grid-template-columns: repeat(auto-fit, minmax(13rem, 1fr)); gap: 0.7rem; }
  .card { padding: 0.9rem; }
  .figure .value { font-size: 1.9rem; }
  .card, .chart, .table .scroll, details { border-color: #b9c4c1; }
  .scroll { overflow: visible; }
  .drawing.scroll svg { min-width: 0; }
  .drawing.wide svg { max-width: 155mm; }
  table { font-size: 0.86rem; }
  th, td { padding: 0.32rem 0.6rem; }
  tbody th { position: static; min-width: 0; }
  .wordy, thead th.wordy, thead th:not(.brief) { min-width: 0; }
  .details > .table .scroll, .details > .chart { margin-inline: 0; }
  caption { padding: 0.6rem 0.6rem 0.3rem; }
  thead { display: table-header-group; }
  a { color: inherit; text-decoration: none; }
  details { border: 0; }
  details::details-content { content-visibility: visible; block-size: auto; opacity: 1; }
  summary { list-style: none; padding: 0; cursor: auto; border: 0 !important; }
  summary::-webkit-details-marker { display: none; }
  .details { padding: 0.6rem 0 0; }
  footer { padding-bottom: 0; margin-top: 1.5rem; break-inside: avoid; }
}
`;
