import { count, table, two } from "../study/support/markdown.ts";
import { type Beside, exponents } from "./growth.ts";

/** What pooling took, and the database alone. */
export interface Pooled {
  readonly rows: number;
  readonly pool: Beside;
  readonly alone: Beside;
}

/** What pooling is meant to take at most for ten million rows, on two processors. */
const aim = { rows: 10_000_000, seconds: 60 } as const;

/** The section of the page on logs too long for memory. */
export function pooledLines(pooled: readonly Pooled[]): readonly string[] {
  const [first] = pooled;
  if (first === undefined) return [];
  const longest = pooled.find(({ rows }) => rows === aim.rows);
  return [
    "## Too long for memory",
    "",
    "The same kind of log by `poolTotals` of evencatch/pool: read, every row checked, fills summed up in two passes and handed out one",
    `by one, with 2 GB for the database (\`bench/scale/pool.mjs\`); beside it ${first.alone.version} alone, which reads and sums up in one pass`,
    "and checks nothing (`bench/scale/duckdb.mjs`). Both find the same deliveries.",
    "",
    ...table(
      [
        "rows",
        "fills",
        "pooled (s)",
        "processors (s)",
        "peak memory (MB)",
        "database alone (s)",
        "processors (s)",
        "peak memory (MB)",
      ],
      pooled.map(({ rows, pool, alone }) => [
        count(rows),
        count(pool.fills),
        ...[pool, alone].flatMap((one) => [
          two(one.seconds),
          two(one.processors),
          one.peakMegabytes.toFixed(0),
        ]),
      ]),
    ),
    "",
    ...(longest === undefined ? [] : [aimLine(longest), ""]),
    "Growth exponents of the processors' seconds and of memory:",
    "",
    ...table(
      ["", ...pooled.slice(1).map(({ rows }) => `to ${count(rows)} rows`)],
      [
        ["pooled", ...exponents(pooled, ({ pool }) => pool.processors).map(two)],
        ["database alone", ...exponents(pooled, ({ alone }) => alone.processors).map(two)],
        ["memory of the pool", ...exponents(pooled, ({ pool }) => pool.peakMegabytes).map(two)],
      ],
    ),
    "",
  ];
}

/** On a machine that others use the clock says little, and the seconds of the processors do not tell it. */
function aimLine({ pool }: Pooled): string {
  const wanted = `The aim for ${count(aim.rows)} rows is less than ${aim.seconds} s on two processors`;
  return pool.seconds < aim.seconds
    ? `${wanted}, and is met.`
    : `${wanted}, and is not met on the clock of this run: ${two(pool.seconds)} s, of which all processors together worked ${two(pool.processors)} s.`;
}

/** Points of the chart, of the processors' seconds as of the others. */
export function pooledPoints(pooled: readonly Pooled[]) {
  return pooled.map(({ rows, pool }) => ({ rows, seconds: pool.processors, what: "pooled" }));
}
