/**
 * How long does a person wait? Runs each command as a process of its own, in turn and several times over, and prints the
 * median of each with its ratio to a Node that does nothing, which is what to compare: machines differ, and busy ones more so.
 * Wants what `npm run build` makes.
 */
import { execFileSync, spawnSync } from "node:child_process";
import { median } from "simple-statistics";

const runs = 7;
const season = "data-demo/season";
const folder = ".cache/bench-report";
const morning = "data-demo/first-morning/catches.csv";
const built = "dist/cli/main.js";
const ofSeason = [`${season}/catches.csv`, "--setup", `${season}/setup.json`];
const report = ["report", ...ofSeason, "--out", folder];

/** Prints the milliseconds of one analysis in a process that has done nothing before it. */
const analysis = `
import { analyse } from "./dist/index.js";
import { readCatchesFile, readSetupFile } from "./dist/node.js";
const log = await readCatchesFile("${season}/catches.csv");
const setup = await readSetupFile("${season}/setup.json");
const from = performance.now();
analyse(log, setup);
console.log(performance.now() - from);`;

/** Seconds of a process from its start to its end. */
const ofProcess =
  (command: string, ...args: readonly string[]) =>
  () => {
    const from = performance.now();
    execFileSync(command, args, { stdio: "ignore" });
    return (performance.now() - from) / 1000;
  };
const ofNode = (...args: readonly string[]) => ofProcess(process.execPath, ...args);
const ofAnalysis = () =>
  Number(execFileSync(process.execPath, ["--input-type=module", "-e", analysis])) / 1000;

const bare = "node -e 0";
const hasR = spawnSync("Rscript", ["--version"]).status === 0;
const measured: Readonly<Record<string, () => number>> = {
  [bare]: ofNode("-e", "0"),
  ...(hasR
    ? {
        "three catches in plain R (bench/enough.R)": ofProcess(
          "Rscript",
          "bench/enough.R",
          morning,
        ),
      }
    : {}),
  "enough, three catches": ofNode(built, "enough", morning, "--no-setup"),
  "enough, three catches with a setup": ofNode(built, "enough", morning),
  "short report on the season": ofNode(built, ...report),
  "full report on the season": ofNode(built, ...report, "--edition", "full"),
  "the same, short, from a clone (npm start)": ofNode(
    "--import",
    "tsx",
    "src/cli/main.ts",
    ...report,
  ),
  "the analysis alone": ofAnalysis,
};

const seconds = Object.keys(measured).map((name) => ({ name, taken: [] as number[] }));
for (let run = 0; run < runs; run++)
  for (const { name, taken } of seconds) taken.push(measured[name]?.() ?? Number.NaN);

const bareSeconds = median(seconds.find(({ name }) => name === bare)?.taken ?? []);
console.log(`median of ${runs} runs, each with its ratio to ${bare}`);
for (const { name, taken } of seconds) {
  const middle = median(taken);
  const ratio = (middle / bareSeconds).toFixed(1);
  console.log(`${name.padEnd(44)} ${middle.toFixed(3)} s  ${ratio.padStart(5)}`);
}
