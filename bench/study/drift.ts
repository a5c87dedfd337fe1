/**
 * Has the meter moved? False alarms and power of the decision after every fill, by itself and with a spread that other
 * meters lend, the next fill's band after changes of level, what is stated of the power, and the tests that explain. Writes
 * reports/drift-study. Option: --seasons N, default 4,000.
 */

import { parseArgs } from "node:util";
import { at } from "../../src/errors/at.ts";
import { alarmTable, foundTable, nextFillTable, statedPowerTable } from "./drift/decision.ts";
import { intervalTable } from "./drift/intervals.ts";
import { driftPage } from "./drift/page.ts";
import {
  lastingRows,
  nextFillRows,
  onceRows,
  type Row,
  risingRows,
  statedPlans,
  steadyRows,
  togetherRows,
} from "./drift/plans.ts";
import { rateTable } from "./drift/rates.ts";
import { settlingTable } from "./drift/settling.ts";
import { togetherTable } from "./drift/together.ts";
import { verdictOn } from "./support/claims.ts";
import { writeStudy } from "./support/write-study.ts";

const { values } = parseArgs({ options: { seasons: { type: "string", default: "4000" } } });
const seasons = Number(values.seasons);
const seed = 20_261_129;
/** Every log of bins that lend each other is asked fill by fill, which takes long; each has several meters to count. */
const logs = Math.ceil(seasons / 4);
/** Fills of the season that the claim about steady meters is about. */
const claimedFills = 12;

const started = performance.now();
function timed<T>(name: string, made: T): T {
  console.log(`${name}: ${Math.round((performance.now() - started) / 1000)} s`);
  return made;
}

/** Cells with what their rows say, and whether they keep it. */
function named<Plan, Cell>(
  rows: readonly Row<Plan>[],
  cells: readonly Cell[],
  claimed: (cell: Cell) => number,
  replicates = seasons,
) {
  return rows.map(({ name, plan, claim }, i) => {
    const cell = at(cells, i);
    const verdict = claim === null ? null : verdictOn(claimed(cell), claim, replicates);
    if (verdict === "missed")
      console.log(`Missed: ${name} ${JSON.stringify(plan)}: ${claimed(cell)}`);
    return { name, ...cell, claim, verdict };
  });
}

const plansOf = <Plan>(rows: readonly Row<Plan>[]) => rows.map(({ plan }) => plan);
const found = (rows: readonly Row[], ofTable: number) =>
  named(rows, foundTable(plansOf(rows), seasons, seed + ofTable), (cell) => cell.found);

const alarms = timed(
  "Steady seasons",
  named(
    steadyRows,
    alarmTable(plansOf(steadyRows), [4, 6, 9, claimedFills, 18, 24], seasons, seed),
    ({ by }) => by.find(({ fills }) => fills === claimedFills)?.share ?? 1,
  ),
);
const lasting = timed("Changes that last", found(lastingRows, 100));
const once = timed("Single odd fills", found(onceRows, 300));
const rising = timed("Rises", found(risingRows, 400));
const nextFills = timed(
  "Next fill",
  named(
    nextFillRows,
    nextFillTable(plansOf(nextFillRows), seasons, seed + 500),
    ({ covered }) => covered,
  ),
);
const stated = timed("Stated power", statedPowerTable(statedPlans, seasons, seed + 600));
const together = timed(
  "Bins together",
  named(
    togetherRows,
    togetherTable(plansOf(togetherRows), logs, seed + 1000),
    (cell) => cell.found,
    logs,
  ),
);
const explaining = timed(
  "Tests that explain",
  rateTable(
    [
      ...[6, 12].map((fills) => ({ fills })),
      ...[6, 12].map((fills) => ({ fills, correlation: 0.6 })),
      ...[8, 12].map((fills) => ({ fills, shift: 0.05 })),
      ...[8, 12].map((fills) => ({ fills, perFill: 0.01 })),
    ],
    seasons,
    seed + 700,
  ),
);
const intervals = timed("Intervals", intervalTable(seasons, seed + 800));
const settling = timed("Settling", settlingTable(seasons, seed + 900));

const study = {
  ...{ seasons, logs, seed },
  ...{ alarms, lasting, once, rising, nextFills, stated },
  ...{ explaining, intervals, settling, together },
};
writeStudy("drift-study", study, driftPage(study));
