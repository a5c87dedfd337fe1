/** On paper there is the sheet for the cab and nothing else. */
export const paper = `
.sheet { display: none; }
@page { margin: 14mm; }
@media print {
  body { background: none; font-size: 11pt; }
  .screen { display: none; }
  .sheet { display: grid; gap: 4mm; overflow-wrap: break-word; }
  .sheet h1 { font-size: 18pt; }
  .sheet ul { border-inline-start: 2mm solid var(--ink); padding-inline-start: 4mm; font-weight: 600; }
  .sheet table { border-collapse: collapse; width: 100%; }
  .sheet th, .sheet td { border: 1px solid #777; padding: 2.5mm; text-align: start; vertical-align: top; }
  .sheet tr { break-inside: avoid; }
  .sheet td strong { font-size: 14pt; line-height: 1.2; }
  .sheet th:nth-child(3), .sheet td:nth-child(3) { white-space: nowrap; }
  .sheet .space { width: 24%; height: 22mm; }
}
`;
