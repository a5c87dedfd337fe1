/**
 * How do time and memory grow with the log? Writes invented logs of 10,000, 100,000 and 1,000,000 rows, measures reading them
 * and deciding every meter, each in a process of its own, beside R (where Rscript and data.table are installed) and a bare
 * parser and a database; then pools logs up to 10,000,000 rows in that database; and writes reports/scale.md, .json, .vl.json and .svg.
 *
 *   npm run scale -- --seed 1
 */
import { execFileSync } from "node:child_process";
import { mkdirSync, writeFileSync } from "node:fs";
import { availableParallelism } from "node:os";
import { Command } from "commander";
import { median } from "simple-statistics";
import { renderSvg } from "../src/report/svg.ts";
import { besideOf } from "./scale/beside.ts";
import { type Measured, middleOf, mostThrice } from "./scale/growth.ts";
import { inventedLog } from "./scale/invented-log.ts";
import { measurePooled } from "./scale/measure-pooled.ts";
import { scaleChart, scalePage } from "./scale/page.ts";
import { writeStudy } from "./study/support/write-study.ts";

const whole = (text: string) => Math.max(1, Math.trunc(Number(text)));
const { seed, most, pool } = new Command("scale")
  .description("Time and memory of reading and deciding long logs.")
  .option("--seed <n>", "seed of the random numbers", whole, 1)
  .option("--most <n>", "rows of the longest log in memory", whole, 1_000_000)
  .option("--pool <n>", "rows of the longest log in a database", whole, 10_000_000)
  .parse()
  .opts<{ seed: number; most: number; pool: number }>();

const folder = ".cache/scale";
const library = `${folder}/library`;
// What keeps a million rows below a gigabyte: the engine would rather take more memory than tidy up.
const flags = ["--max-old-space-size=850", "--max-semi-space-size=32"];

mkdirSync(folder, { recursive: true });
execFileSync("npx", ["tsc", "-p", "tsconfig.build.json", "--outDir", library], {
  stdio: "inherit",
});

const measured = [10_000, 100_000, 1_000_000]
  .filter((rows) => rows <= most)
  .map((rows): Measured => {
    const file = `${folder}/log-${rows}.csv`;
    writeFileSync(file, inventedLog(rows, seed));
    const runs = Array.from({ length: rows > mostThrice ? 1 : 3 }, () => {
      const args = [...flags, "bench/scale/measure.mjs", library, file];
      return JSON.parse(execFileSync(process.execPath, args, { encoding: "utf8" }));
    });
    const one: Measured = { ...middleOf(runs), beside: besideOf(file) };
    console.log(
      `${rows} rows: read ${one.reading.seconds.toFixed(2)} s, table of meters ${one.deciding.seconds.toFixed(2)} s, ${one.peakMegabytes.toFixed(0)} MB`,
    );
    return one;
  });

const empty = Array.from({ length: 15 }, () => {
  const begun = performance.now();
  execFileSync(process.execPath, ["-e", "0"]);
  return (performance.now() - begun) / 1e3;
});

const pooled = [10_000, 100_000, 1_000_000, 10_000_000]
  .filter((rows) => rows <= pool)
  .map((rows) => {
    const one = measurePooled(rows, seed, library);
    console.log(
      `${rows} rows: pooled ${one.pool.seconds.toFixed(2)} s, ${one.pool.peakMegabytes.toFixed(0)} MB`,
    );
    return one;
  });

const ground = {
  seed,
  node: process.version,
  flags,
  cores: availableParallelism(),
  emptyNode: median(empty),
};
const chart = scaleChart(measured, pooled);
const file = (ending: string) => new URL(`../reports/scale.${ending}`, import.meta.url);
writeFileSync(file("vl.json"), `${JSON.stringify(chart, null, 1)}\n`);
writeFileSync(file("svg"), `${await renderSvg(chart, { id: "scale" })}\n`);
writeStudy("scale", { ...ground, measured, pooled }, scalePage(measured, pooled, ground));
