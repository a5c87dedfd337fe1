/**
 * How often does each interval hold what it is about? Simulates the situations of coverage/cells.ts through the public
 * functions and writes reports/coverage.md, .json, .vl.json and .svg.
 *
 *   npm run study -- --replicates 4000 --seed 1 --workers 2
 */
import { fork } from "node:child_process";
import { mkdir, writeFile } from "node:fs/promises";
import { availableParallelism } from "node:os";
import { SingleBar } from "cli-progress";
import { Command } from "commander";
import { renderSvg } from "../../src/report/svg.ts";
import { cells } from "./coverage/cells.ts";
import { coverageChart } from "./coverage/chart.ts";
import { type Count, level } from "./coverage/count.ts";
import { coverageMarkdown } from "./coverage/markdown.ts";
import { type CoverageRow, coverageRow } from "./coverage/verdict.ts";
import type { Counted } from "./coverage/worker.ts";

const whole = (text: string) => Math.max(1, Math.trunc(Number(text)));
const { replicates, seed, workers } = new Command("study")
  .description("Coverage of every interval, by simulation.")
  .option("--replicates <n>", "seasons a situation", whole, 4000)
  .option("--seed <n>", "seed of the random numbers", whole, 1)
  .option("--workers <n>", "processes side by side", whole, availableParallelism())
  .parse()
  .opts<{ replicates: number; seed: number; workers: number }>();

const bar = new SingleBar({ format: "{bar} {value}/{total} situations, {eta_formatted} left" });
bar.start(cells.length, 0);
const counts = await countAll();
bar.stop();
const rows = cells.map((cell, i) => coverageRow(cell, counts[i] ?? none(), level));
await write(rows);
const broken = rows.filter(({ kept }) => !kept);
for (const { interval, situation, achieved } of broken)
  console.error(`Not kept: ${interval}, ${situation}: ${achieved}`);
process.exitCode = broken.length > 0 ? 1 : 0;

/** Deals the cells out to the workers one by one; each cell has its own random stream, so the deal changes nothing. */
function countAll(): Promise<Count[]> {
  const results: Count[] = [];
  let next = 0;
  const oneWorker = () =>
    new Promise<void>((resolve, reject) => {
      const worker = fork(
        new URL("./coverage/worker.ts", import.meta.url),
        [String(replicates), String(seed)],
        { execArgv: ["--import", "tsx"] },
      );
      const deal = () => (next < cells.length ? worker.send(next++) : worker.disconnect());
      worker.on("message", ({ cell, count }: Counted) => {
        results[cell] = count;
        bar.increment();
        deal();
      });
      worker.on("error", reject);
      worker.on("exit", (code) =>
        code === 0 ? resolve() : reject(new Error(`exit code ${code}`)),
      );
      deal();
    });
  return Promise.all(Array.from({ length: workers }, oneWorker)).then(() => results);
}

function none(): Count {
  throw new Error("A situation was not simulated.");
}

async function write(rows: readonly CoverageRow[]): Promise<void> {
  const folder = new URL("../../reports/", import.meta.url);
  await mkdir(folder, { recursive: true });
  const chart = coverageChart(rows);
  const save = (name: string, text: string) => writeFile(new URL(name, folder), text);
  await save("coverage.json", `${JSON.stringify(rows, null, 1)}\n`);
  await save("coverage.md", coverageMarkdown(rows, { replicates, seed }));
  await save("coverage.vl.json", `${JSON.stringify(chart, null, 1)}\n`);
  await save("coverage.svg", `${await renderSvg(chart, { id: "coverage" })}\n`);
}
