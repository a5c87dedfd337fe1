/**
 * How long does one refit take? Eight fills of five catches, fitted again and again with fresh scatter: through the
 * whole model (grouping, totals, pooled scatter, two-stage) and through REML alone. The peer in the same run is the
 * one-way analysis of variance of the package jstat, which answers far less.
 *
 *   npm run bench
 */
import jstat from "jstat";
import { Bench } from "tinybench";
import { remlAcrossFills } from "../src/model/across-fills.ts";
import { fitModel } from "../src/model/model.ts";
import { randomStream } from "../src/numeric/random.ts";
import { fitRandomEffects } from "../src/statistics/random-effects.ts";
import { simulate } from "./study/coverage/season.ts";

const refits = 10_000;
const random = randomStream(1);
const season = {
  turns: Array.from({ length: 8 }, () => [20, 20, 20, 20, 20]),
  fillSpread: 0.03,
  catchScatter: 0.015,
};
const logs = Array.from({ length: 64 }, () => simulate(season, random).catches);
const options = { level: 0.95, tolerance: 0.03, scaleDivisionKg: 0.02 };
let next = 0;
const log = () => logs[next++ % logs.length] ?? [];
const groups = logs.map((catches) =>
  (fitModel(catches, options).meters[0]?.fills ?? []).map(({ delivery, totals }) => ({
    estimate: delivery,
    information: totals.turns,
    sumOfSquares: totals.scatterSum,
    df: totals.catches - 1,
  })),
);

checkFirst();
const bench = new Bench({ time: 1000 });
bench.add("whole model", () => fitModel(log(), options));
bench.add("REML from totals", () => fitRandomEffects(groups[next++ % groups.length] ?? []));
bench.add("peer: one-way ANOVA, jstat", () => analysisOfVariance(log()));
await bench.run();

const milliseconds = bench.tasks.map(({ name, result }) => ({
  name,
  ms: result.state === "completed" ? result.latency.mean : Number.NaN,
}));
const peer = milliseconds.at(-1)?.ms ?? Number.NaN;
for (const { name, ms } of milliseconds)
  console.log(
    `${name}: ${(ms * 1000).toFixed(1)} µs a refit, ${((ms * refits) / 1000).toFixed(2)} s for ${refits}, ${(ms / peer).toFixed(2)} × the peer`,
  );

/** A benchmark of a wrong answer is worth nothing. */
function checkFirst(): void {
  const [meter] = fitModel(logs[0] ?? [], options).meters;
  const reml = meter === undefined ? null : remlAcrossFills(meter.fills);
  if (!reml || !meter?.across.spread.standardDeviation)
    throw new Error("The model gave no answer.");
  const balanced = meter.across.spread.standardDeviation.value / Math.sqrt(8);
  if (!reml.atBoundary && Math.abs(reml.standardError / balanced - 1) > 1e-9)
    throw new Error("REML and analysis of variance must agree on balanced data.");
}

function analysisOfVariance(catches: ReturnType<typeof log>): number {
  const fills = new Map<number, number[]>();
  for (const { fill, netKg, turns } of catches) {
    const own = fills.get(fill) ?? [];
    own.push(netKg / turns);
    fills.set(fill, own);
  }
  return jstat.jStat.anovafscore(...fills.values());
}
