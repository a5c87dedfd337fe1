import type { ChartSpec } from "../../../src/charts/chart-spec.ts";
import { composedSpec } from "../../../src/charts/theme.ts";
import { present } from "../../../test/support/reference.ts";
import { table } from "../support/markdown.ts";
import { firstCommit } from "./library.ts";
import { job } from "./mornings.ts";
import type { BandKept, MorningsOf, SeasonsOf, Study } from "./study.ts";

const names = { first: "then", now: "now" } as const;

export function thenAndNowPage(study: Study): readonly string[] {
  const { replicates, seed } = study;
  return [
    "# Then and now, on the same seasons",
    "",
    `What bins lend each other, one calibrated alarm and a price for the next catch changed, against the library as it was before`,
    `(commit ${firstCommit}): ${replicates} seasons and mornings a situation, random start ${seed}, the same ones for both; made by`,
    "`npm run study:then-and-now`.",
    "Three bins of 0.3 kg/turn, three catches of 20 turns a fill; catch scatter about 1.5 % and fill-to-fill spread about 2 %, each",
    "bin's own within a factor 2.7 in 95 % of them. Every band is nominally 95 %. Two standard errors of a share near 0.95 are",
    `${(2 * Math.sqrt((0.95 * 0.05) / replicates)).toFixed(3)}.`,
    "",
    "![Then and now](then-and-now-study.svg)",
    "",
    ...table(["", "then", "now"], rowsOf(study)),
    "",
    "A band is given with its median half-width and the share of them that held the truth. Alarms are any finding on the meter, asked",
    "after every fill. Mornings end when the answer is to set, after eight catches at the latest; their cost is that of the rate error",
    `(${job.hectares} ha at ${job.perPercent} a hectare and percent) with ${job.perCatch} a catch and ${job.toSetUp} to set up. Coverage there is of the 95 % interval as it stood when the`,
    "catches ended, which stopping makes a little lower than it says: that is why a width is taken wider before it counts as enough.",
    "Prices alone decide only now; before, they were stated and decided nothing.",
  ];
}

type Row = readonly [what: string, then: string, now: string];

function rowsOf({ seasons, mornings }: Study): readonly Row[] {
  const steady = (library: string) => seasonOf(seasons, library, "steady");
  const then = steady("first");
  const present = steady("now");
  return [
    ...bandRows("this fill", then.today, present.today),
    ...bandRows("the next fill", then.nextFill, present.nextFill),
    ["any alarm in a steady season of 12 fills", percent(then.alarmed), percent(present.alarmed)],
    ...seasons
      .filter(({ library, name }) => library === "now" && name !== "steady")
      .map(
        (one): Row => [
          `${one.name}: found by fill 12`,
          percent(seasonOf(seasons, "first", one.name).alarmed),
          percent(one.alarmed),
        ],
      ),
    ...[0, 3].flatMap((earlierFills) => morningRows(mornings, earlierFills)),
  ];
}

function bandRows(
  what: string,
  then: readonly BandKept[],
  now: readonly BandKept[],
): readonly Row[] {
  return now.map((one, i) => [
    `${what}, after ${one.fills === 1 ? "the first fill" : `${one.fills} fills`}`,
    bandWords(present(then[i])),
    bandWords(one),
  ]);
}

function bandWords({ coverage, medianHalfWidth, known }: BandKept): string {
  if (coverage === null || medianHalfWidth === null) return "not known";
  const share = known < 1 ? `, known in ${percent(known)}` : "";
  return `± ${percent(medianHalfWidth)} (${coverage.toFixed(3)}${share})`;
}

function morningRows(mornings: readonly MorningsOf[], earlierFills: number): readonly Row[] {
  const of = (library: string, rule: string) =>
    present(
      mornings.find(
        (one) => one.library === library && one.rule === rule && one.earlierFills === earlierFills,
      ),
    );
  const then = of("first", "tolerance 3 %");
  const now = of("now", "tolerance 3 %");
  const priced = of("now", "prices");
  const after = earlierFills === 0 ? "on a first morning" : `after ${earlierFills} fills`;
  return [
    [
      `catches until "set" at ± 3 %, ${after}`,
      then.meanCatches.toFixed(1),
      now.meanCatches.toFixed(1),
    ],
    [`coverage then, ${after}`, then.coverage.toFixed(3), now.coverage.toFixed(3)],
    [`cost a fill at ± 3 %, ${after}`, then.meanCost.toFixed(1), now.meanCost.toFixed(1)],
    [
      `cost a fill where prices decide, ${after}`,
      "prices decide nothing",
      `${priced.meanCost.toFixed(1)} (${priced.meanCatches.toFixed(1)} catches)`,
    ],
  ];
}

function seasonOf(seasons: readonly SeasonsOf[], library: string, name: string): SeasonsOf {
  return present(seasons.find((one) => one.library === library && one.name === name));
}

function percent(share: number): string {
  return `${(100 * share).toFixed(1)} %`;
}

const panel = { width: 260, height: 180 };
const color = { field: "library", type: "nominal", sort: ["then", "now"], title: null };

/** Widths of both bands over the fills of a season, and what is found, then and now. */
export function thenAndNowChart({ seasons }: Study): ChartSpec {
  const found = seasons.map(({ library, name, alarmed }) => ({
    library: named(library),
    season: name.replace(" more", "").replace(" on", ""),
    share: 100 * alarmed,
  }));
  return {
    ...composedSpec({
      title: "Then and now, on the same seasons",
      description: `Median half-width of the band for this fill and for the next one, and share of seasons in which the meter was called moved or different, before bins lent each other their spread and now: ${found.map(({ library, season, share }) => `${season}, ${library} ${share.toFixed(0)} %`).join("; ")}.`,
    }),
    hconcat: [
      widths("This fill", seasons, ({ today }) => today),
      widths("The next fill", seasons, ({ nextFill }) => nextFill),
      {
        ...panel,
        title: "Called moved or different",
        data: { values: found },
        mark: { type: "bar" },
        encoding: {
          y: {
            field: "season",
            type: "nominal",
            sort: null,
            title: null,
          },
          yOffset: { field: "library", sort: ["then", "now"] },
          x: {
            field: "share",
            type: "quantitative",
            title: "Seasons of 12 fills (%)",
            scale: { domain: [0, 100] },
          },
          color,
        },
      },
    ],
  };
}

function widths(
  title: string,
  seasons: readonly SeasonsOf[],
  bandsOf: (one: SeasonsOf) => readonly BandKept[],
): ChartSpec {
  const values = seasons.flatMap((one) =>
    bandsOf(one).flatMap(({ fills, medianHalfWidth }) =>
      medianHalfWidth === null
        ? []
        : [{ library: named(one.library), fills, halfWidth: 100 * medianHalfWidth }],
    ),
  );
  return {
    ...panel,
    title,
    data: { values },
    mark: { type: "line", point: true },
    encoding: {
      x: { field: "fills", type: "ordinal", title: "Fills so far", axis: { labelAngle: 0 } },
      y: {
        field: "halfWidth",
        type: "quantitative",
        scale: { type: "log", nice: false, padding: 12 },
        axis: { values: [1, 1.5, 1.75, 2, 2.5, 3, 5, 7, 10, 15, 20, 30, 50] },
        title: "Median half-width (± %), log scale",
      },
      color,
    },
  };
}

function named(library: string): string {
  return library === "first" ? names.first : names.now;
}
