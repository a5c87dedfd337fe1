import type { ChartSpec } from "../../src/charts/chart-spec.ts";
import { baseSpec } from "../../src/charts/theme.ts";
import { count, table, two } from "../study/support/markdown.ts";
import {
  aimOf,
  emptyNodeOfAims,
  exponents,
  type Measured,
  mostThrice,
  paceOf,
  together,
} from "./growth.ts";
import { type Pooled, pooledLines, pooledPoints } from "./pooled.ts";

/** What the measurements ran on. */
export interface Ground {
  readonly seed: number;
  readonly node: string;
  readonly flags: readonly string[];
  readonly cores: number;
  /** Seconds that a Node takes that does nothing, the median of some. */
  readonly emptyNode: number;
}

/** The page in reports. */
export function scalePage(
  measured: readonly Measured[],
  pooled: readonly Pooled[],
  ground: Ground,
): readonly string[] {
  const pace = paceOf(ground.emptyNode);
  return [
    "# How time and memory grow with the log",
    "",
    "Invented logs of meters with ten fills of five catches, read from a file and decided meter by meter to the table of meters, each",
    `in a process of its own (\`npm run scale -- --seed ${ground.seed}\`; Node ${ground.node} with \`${ground.flags.join(" ")}\`, ${ground.cores} cores).`,
    "Times are those on the clock; beside them stand those of all processors together, which a busy machine lengthens less. Up to",
    `${count(mostThrice)} rows they are those of the middle one of three runs.`,
    `An empty Node (\`node -e 0\`) took ${ground.emptyNode.toFixed(3)} s in between. Where the aims were set it takes ${emptyNodeOfAims} s, so that everything is`,
    `taken to last ${two(pace)} times as long here; the aims at that pace stand in brackets.`,
    "",
    "![Seconds against rows](scale.svg)",
    "",
    ...table(
      [
        "rows",
        "meters",
        "read (s)",
        "table of meters (s)",
        "together (s)",
        "processors (s)",
        "aim (s)",
        "peak memory (MB)",
        "aim (MB)",
      ],
      measured.map((one) => {
        const aim = aimOf(one.rows);
        return [
          count(one.rows),
          count(one.meters),
          one.reading.seconds.toFixed(2),
          one.deciding.seconds.toFixed(2),
          together(one).seconds.toFixed(2),
          together(one).processors.toFixed(2),
          aim === null ? "–" : `< ${aim.seconds} (${two(aim.seconds * pace)})`,
          one.peakMegabytes.toFixed(0),
          aim === null ? "–" : `< ${aim.megabytes}`,
        ];
      }),
    ),
    "",
    ...missedLines(measured, pace),
    ...busyLines(measured),
    "Growth exponents of the processors' seconds and of memory, from each size to the next; 1 is in proportion to the rows, 2 would",
    "be with their square:",
    "",
    ...table(
      ["", ...measured.slice(1).map((one) => `to ${count(one.rows)} rows`)],
      [
        ["reading", ...exponents(measured, (one) => one.reading.processors).map(two)],
        ["table of meters", ...exponents(measured, (one) => one.deciding.processors).map(two)],
        ["memory", ...exponents(measured, (one) => one.peakMegabytes).map(two)],
        ...othersIn(measured).map((name) => [
          name,
          ...exponents(measured, (one) => one.beside[name]?.processors ?? Number.NaN).map(two),
        ]),
      ],
    ),
    "",
    "The first sizes hold the time in which the engine warms up, so that their exponents lie below 1.",
    "",
    ...besideLines(measured),
    ...pooledLines(pooled),
  ];
}

/** Programs that ran on every size. */
function othersIn(measured: readonly Measured[]): readonly string[] {
  const [first] = measured;
  return Object.keys(first?.beside ?? {}).filter((name) =>
    measured.every(({ beside }) => beside[name] !== undefined),
  );
}

/** Seconds of all processors, and memory, of others with the same files. */
function besideLines(measured: readonly Measured[]): readonly string[] {
  const others = othersIn(measured);
  if (others.length === 0) return [];
  const versions = others.map((name) => `${name}: ${measured[0]?.beside[name]?.version}`);
  const seconds = (one: Measured) =>
    others.map((name) => one.beside[name]?.processors.toFixed(2) ?? "–");
  const megabytes = (one: Measured) =>
    others.map((name) => one.beside[name]?.peakMegabytes.toFixed(0) ?? "–");
  return [
    "## Beside R and the engine alone",
    "",
    "The same files in the same run, each in a process of its own. R reads the file, sums up every fill and puts a line through the",
    "origin with its interval through it (`bench/scale/measure.R`); the parser turns the text into rows that are summed up fill by",
    "fill (`bench/scale/engine.mjs`); the database reads and sums up in one statement (`bench/scale/duckdb.mjs`). None of them",
    "checks a row, screens a catch, borrows from other bins, asks whether a meter has",
    `moved, or decides; that is what the difference buys. All find the same deliveries. ${versions.join("; ")}. Seconds are those of`,
    "all processors together.",
    "",
    ...table(
      [
        "rows",
        "evencatch (s)",
        ...others.map((name) => `${name} (s)`),
        "evencatch (MB)",
        ...others.map((name) => `${name} (MB)`),
      ],
      measured.map((one) => [
        count(one.rows),
        together(one).processors.toFixed(2),
        ...seconds(one),
        one.peakMegabytes.toFixed(0),
        ...megabytes(one),
      ]),
    ),
    "",
  ];
}

function missedLines(measured: readonly Measured[], pace: number): readonly string[] {
  const missed = measured.flatMap((one) => {
    const aim = aimOf(one.rows);
    if (aim === null) return [];
    const time = missedTime(together(one).seconds, aim.seconds, pace);
    const memory = one.peakMegabytes < aim.megabytes ? [] : ["memory above the aim"];
    const what = [...time, ...memory].join("; ");
    return what === "" ? [] : [`${count(one.rows)} rows: ${what}.`];
  });
  return missed.length === 0 ? ["Every aim is met.", ""] : [...missed, ""];
}

function missedTime(seconds: number, aim: number, pace: number): readonly string[] {
  if (seconds < aim) return [];
  return [`time above the aim${seconds < pace * aim ? ", within it at this machine's pace" : ""}`];
}

/** A process that has a processor to itself uses nearly a second of it in each second on the clock, and more while it tidies up. */
const undisturbed = 0.8;

function busyLines(measured: readonly Measured[]): readonly string[] {
  const took = measured.map(together);
  const share = Math.min(...took.map(({ seconds, processors }) => processors / seconds));
  if (share >= undisturbed) return [];
  return [
    `Other work had the machine while this ran: of a second on the clock these processes got as little as ${two(share)} s of a`,
    "processor. What the clock says then says little, and crowded caches lengthen the processors' seconds too.",
    "",
  ];
}

/** Seconds against rows, both logarithmic, beside growth in proportion. */
export function scaleChart(measured: readonly Measured[], pooled: readonly Pooled[]): ChartSpec {
  const values = [
    ...measured.flatMap((one) => [
      { rows: one.rows, seconds: one.reading.processors, what: "reading" },
      { rows: one.rows, seconds: one.deciding.processors, what: "table of meters" },
      ...Object.entries(one.beside).map(([what, { processors }]) => ({
        rows: one.rows,
        seconds: processors,
        what,
      })),
    ]),
    ...pooledPoints(pooled),
  ];
  const encoding = {
    x: { field: "rows", type: "quantitative", title: "Rows", scale: { type: "log" } },
    y: {
      field: "seconds",
      type: "quantitative",
      title: "Seconds of all processors",
      scale: { type: "log" },
    },
    color: { field: "what", type: "nominal", title: null },
  };
  return {
    ...baseSpec({
      title: "Seconds against rows",
      description: `Seconds that reading and deciding take, and that others take to read and sum up, for logs of ${measured.map(({ rows }) => count(rows)).join(", ")} rows.`,
    }),
    data: { values },
    layer: [
      { mark: { type: "line" }, encoding },
      { mark: { type: "point" }, encoding },
    ],
  };
}
