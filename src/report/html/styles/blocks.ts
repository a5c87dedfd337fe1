/** Tables, cautions, folded details, lists of terms. */
export const blocks = `
.scroll { overflow-x: auto; overscroll-behavior-x: contain; }
.table { margin: 1.5rem 0 1.75rem; }
.table .scroll { background: var(--panel); border: 1px solid var(--rule); border-radius: 0.7rem; }
table { border-collapse: separate; border-spacing: 0; width: 100%; font-size: 0.9375rem; line-height: 1.45; font-variant-numeric: tabular-nums lining-nums; }
caption { text-align: start; padding: 0.9rem 0.85rem 0.35rem; font-weight: 600; font-size: 1rem; }
caption span { display: inline-block; position: sticky; inset-inline-start: 0.85rem; max-width: min(40rem, calc(100vw - 5rem)); }
th, td { padding: 0.5rem 0.85rem; text-align: start; vertical-align: top; border-top: 1px solid var(--rule); }
thead th { border-top: 0; border-bottom: 1.5px solid var(--muted); color: var(--muted); font-weight: 600; vertical-align: bottom; }
tbody tr:first-child > * { border-top: 0; }
tbody th { font-weight: 600; position: sticky; inset-inline-start: 0; background: var(--panel); min-width: 5rem; max-width: 14rem; }
.brief { white-space: nowrap; }
.wordy { min-width: 13rem; }
thead th:not(.brief) { min-width: 5.6rem; }
thead th.wordy { min-width: 9rem; }
thead th { text-wrap: balance; }
th.end, td.end { text-align: end; }
th.center, td.center { text-align: center; }
tbody tr[class] > * { background: var(--tone-soft); }
tbody tr[class] .icon { color: var(--tone); }
.table > .small { margin: 0.6rem 0 0; }

.cautions { list-style: none; padding: 0; max-width: none; display: grid; gap: 0.65rem; margin: 1.25rem 0; }
.cautions > li { display: flex; gap: 0.75rem; margin: 0; padding: 0.85rem 1.1rem; border-radius: 0.6rem; background: var(--tone-soft); }
.cautions .icon, .cautions strong { color: var(--tone); }
.cautions .icon { margin-top: 0.28rem; }
.cautions p { margin: 0; }
.cautions .where { color: var(--muted); margin-inline-start: 0.5rem; font-size: 0.9375rem; }
.cautions .problem .where, .cautions .attention .where { color: var(--ink); }

details { margin: 1.25rem 0; border: 1px solid var(--rule); border-radius: 0.7rem; background: var(--panel); }
summary { padding: 0.8rem 1.1rem; cursor: pointer; font-weight: 600; }
details[open] > summary { border-bottom: 1px solid var(--rule); }
.details { padding: 1.1rem 1.1rem 0.2rem; }
.details > .table .scroll, .details > .chart { border: 0; padding: 0; margin-inline: -0.1rem; }

main dl > div { display: grid; grid-template-columns: minmax(8rem, 14rem) minmax(0, 1fr); gap: 0.15rem 1.5rem; padding: 0.45rem 0; border-top: 1px solid var(--rule); }
main dl > div:first-child { border-top: 0; }
main dt { color: var(--muted); }
main dd { margin: 0; }
main .card dl > div { display: flex; padding: 0.1rem 0; border: 0; }
@media (max-width: 30rem) {
  main dl > div { grid-template-columns: minmax(0, 1fr); }
}
`;
