import { darkCounterparts } from "../../../charts/palette.ts";

/** Specs are written in light colours; on a dark page each is matched by its attribute and replaced. */
const darkDrawings = [...darkCounterparts()]
  .map(
    ([from, to]) =>
      `.drawing [fill="${from}"] { fill: ${to}; } .drawing [stroke="${from}"] { stroke: ${to}; }`,
  )
  .join("\n  ");

/** Charts: a drawing for wide and one for narrow screens; in the interactive edition a live one above both. */
export const charts = `
.chart { margin: 1.75rem 0; background: var(--panel); border: 1px solid var(--rule); border-radius: 0.7rem; padding: 1.1rem 1.25rem 1rem; }
.chart figcaption { margin-bottom: 0.9rem; }
.chart-title { display: block; font-weight: 600; font-size: 1.0625rem; line-height: 1.35; }
.chart-caption { display: block; max-width: 42rem; color: var(--muted); font-size: 0.9375rem; line-height: 1.5; margin-top: 0.2rem; }
.drawing svg { display: block; height: auto; }
.drawing text { font-family: inherit; font-variant-numeric: tabular-nums; }
.drawing.wide svg { max-width: 52rem; }
.drawing.scroll svg { min-width: 34rem; }
.drawing.narrow { display: none; }
.drawing.narrow svg { max-width: 30rem; margin-inline: auto; }
.drawing.live svg { max-width: none; overflow: visible; }
@media screen and (max-width: 40rem) {
  .chart { padding: 0.9rem 0.7rem 0.7rem; }
  .chart figcaption { padding-inline: 0.3rem; }
  .drawing.wide { display: none; }
  .drawing.narrow { display: block; }
}
@media screen {
  .chart.alive > .drawing:not(.live) { display: none; }
}
/* Paper is light whatever the reader's setting. */
@media screen and (prefers-color-scheme: dark) {
  ${darkDrawings}
}
.hint { position: fixed; z-index: 3; pointer-events: none; max-width: 20rem; background: var(--ink); color: var(--page); border-radius: 0.45rem; padding: 0.5rem 0.7rem; font-size: 0.875rem; line-height: 1.4; box-shadow: 0 4px 18px rgb(0 0 0 / 0.22); font-variant-numeric: tabular-nums; }
.hint[hidden] { display: none; }
.hint div { display: flex; justify-content: space-between; gap: 1rem; }
.hint span:last-child { font-weight: 600; text-align: end; }
`;
