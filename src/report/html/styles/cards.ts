/** The first page: one card a bin. */
export const cards = `
.cards { list-style: none; padding: 0; margin: 1.5rem 0; max-width: none; display: grid; gap: 1.1rem; grid-template-columns: repeat(auto-fit, minmax(min(100%, 15.5rem), 1fr)); grid-auto-rows: auto; }
.cards > li { margin: 0; max-width: 26rem; display: grid; grid-row: span 5; grid-template-rows: subgrid; }
.card { display: grid; grid-row: span 5; grid-template-rows: subgrid; row-gap: 0.85rem; min-width: 0; background: var(--panel); border: 1px solid var(--rule); border-radius: 0.7rem; padding: 1.25rem 1.25rem 1.35rem; }
.card > div { min-width: 0; }
.card p { margin: 0; }
.card h2, .card h3, .card h4, .card h5, .card h6 { font-size: 1.0625rem; margin: 0; }
.card-subtitle { color: var(--muted); font-size: 0.9375rem; line-height: 1.4; }
.figure { font-variant-numeric: tabular-nums lining-nums; line-height: 1.1; }
.figure .value { font-size: 2.5rem; font-weight: 600; letter-spacing: -0.03em; }
.figure .unit { font-size: 1.0625rem; color: var(--muted); white-space: nowrap; }
.figure.unknown { font-size: 1.6rem; color: var(--muted); padding-block: 0.5rem; }
.card .card-interval { margin-top: 0.35rem; font-size: 0.9375rem; line-height: 1.45; color: var(--muted); font-variant-numeric: tabular-nums; }
.card-interval strong { color: var(--ink); font-weight: 600; }

.span { margin: 0; }
.span svg { display: block; max-width: 22rem; height: auto; }
.span figcaption { font-size: 0.875rem; color: var(--muted); line-height: 1.4; margin-top: 0.2rem; }
.span .graduation { stroke: var(--muted); stroke-width: 1; fill: none; opacity: 0.7; }
.span .band { fill: var(--band-soft); }
.span .bracket { stroke: var(--bracket); stroke-width: 1.75; fill: none; }
.span .bar, .span .bar-end { fill: var(--accent); }
.span .bar { opacity: 0.55; }
.span .needle { stroke: var(--ink); stroke-width: 2.5; stroke-linecap: round; }

.call { display: flex; align-items: flex-start; gap: 0.5rem; padding: 0.55rem 0.8rem 0.55rem 0.65rem; border-radius: 0.5rem; font-weight: 650; font-size: 1.1875rem; line-height: 1.35; }
.icon { flex: none; width: 1em; height: 1em; vertical-align: -0.12em; margin-inline-end: 0.35em; }
.cautions .icon { width: 1.05rem; height: 1.05rem; margin: 0.13rem 0 0; }
.call .icon { width: 1.2rem; height: 1.2rem; margin: 0.2rem 0 0; }
.icon > * { fill: currentColor; }
.icon > .sign { fill: none; stroke: var(--panel); stroke-width: 1.9; stroke-linecap: round; stroke-linejoin: round; }
.fine { --tone: var(--fine); --tone-soft: var(--fine-soft); }
.attention { --tone: var(--attention); --tone-soft: var(--attention-soft); }
.problem { --tone: var(--problem); --tone-soft: var(--problem-soft); }
.neutral { --tone: var(--neutral); --tone-soft: var(--neutral-soft); }
.call { color: var(--tone); background: var(--tone-soft); }

.card-why p { font-size: 0.9375rem; line-height: 1.5; }
.card-why p + p { margin-top: 0.45rem; }
.card-why p:first-child { font-size: 1rem; }
.card dl { margin: 0.9rem 0 0; padding-top: 0.75rem; border-top: 1px solid var(--rule); font-size: 0.9375rem; }
.card dl div { display: flex; justify-content: space-between; gap: 1rem; }
.card dt { color: var(--muted); }
.card dd { margin: 0; text-align: end; font-variant-numeric: tabular-nums; }
`;
