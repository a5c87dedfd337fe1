import { markdownTable } from "markdown-table";
import type { CoverageRow } from "./verdict.ts";

const claims: Readonly<Record<CoverageRow["claimed"], string>> = {
  nominal: "93–97 %",
  "at least": "93 % or more",
  no: "none",
};

/** The study as a page: what was promised, what was found, where the promise does not hold. */
export function coverageMarkdown(
  rows: readonly CoverageRow[],
  { replicates, seed }: { readonly replicates: number; readonly seed: number },
): string {
  const intervals = [...new Set(rows.map(({ interval }) => interval))];
  const kept = rows.filter((row) => row.kept && row.claimed !== "no").length;
  const claimed = rows.filter((row) => row.claimed !== "no").length;
  return `# How often each interval holds what it is about

Simulated through the public functions, ${replicates} seasons a situation, seed ${seed}; made by \`npm run study\`.
Base case: 0.3 kg/turn, catches of 20 turns, catch scatter 1.5 %, fill-to-fill spread 3 %. Every interval is nominally
95 %. The figure after ± is two standard errors of the simulation itself. A claim of 93–97 % or of 93 % or more was kept
in ${kept} of ${claimed} situations that carry one; situations without a claim are weaknesses, stated on purpose.

![Nominal against achieved coverage](coverage.svg)

${intervals.map((interval) => section(interval, rows)).join("\n")}`;
}

function section(interval: string, rows: readonly CoverageRow[]): string {
  const own = rows.filter((row) => row.interval === interval);
  const table = markdownTable(
    [
      ["Situation", "Achieved", "±", "Claim", "Kept"],
      ...own.map((row) => [
        row.situation,
        percent(row.achieved),
        percent(row.monteCarloError),
        claims[row.claimed],
        row.claimed === "no" ? "" : row.kept ? "yes" : "NO",
      ]),
    ],
    { align: ["l", "r", "r", "l", "l"] },
  );
  return `## ${interval[0]?.toUpperCase()}${interval.slice(1)}\n\n${table}\n`;
}

function percent(fraction: number): string {
  return `${(fraction * 100).toFixed(1)} %`;
}
