/**
 * How long does a person wait? Runs each command as a process of its own, in turn and several times over, and prints the
 * median of each with its ratio to a Node that does nothing, which is what to compare: machines differ, and busy ones more so.
 * Wants what `npm run build` makes.
 */
import { execFileSync, spawnSync } from "node:child_process";
import { renameSync, rmSync } from "node:fs";
import { median } from "simple-statistics";

const runs = 7;
const season = "data-demo/season";
const folder = ".cache/bench-report";
const morning = "data-demo/first-morning/catches.csv";
const built = "dist/cli/main.js";
const compiled = "dist/cli/compiled";
const ofSeason = [`${season}/catches.csv`, "--setup", `${season}/setup.json`];
const report = ["report", ...ofSeason, "--out", folder];

/** Seconds on the clock, and of all processors together, which a busy machine lengthens less; null: not told. */
interface Taken {
  readonly clock: number;
  readonly processors: number | null;
}

/** Prints the seconds of one analysis in a process that has done nothing before it. */
const analysis = `
import { analyse } from "./dist/index.js";
import { readCatchesFile, readSetupFile } from "./dist/node.js";
const log = await readCatchesFile("${season}/catches.csv");
const setup = await readSetupFile("${season}/setup.json");
const [from, used] = [performance.now(), process.cpuUsage()];
analyse(log, setup);
const { user, system } = process.cpuUsage(used);
console.log((performance.now() - from) / 1e3, user / 1e6, system / 1e6);`;

/** Node does not tell what a child used; the shell's `time` does. */
const timed = `TIMEFORMAT="%R %U %S"; time "$@" > /dev/null 2> /dev/null`;
const ofProcess =
  (command: string, ...args: readonly string[]) =>
  () => {
    const env = { ...process.env, LC_ALL: "C" };
    const run = spawnSync("bash", ["-c", timed, "bash", command, ...args], {
      encoding: "utf8",
      env,
    });
    if (run.status !== 0)
      throw new Error(`${[command, ...args].join(" ")} ended with ${run.status}`);
    return takenOf(run.stderr);
  };
const ofNode = (...args: readonly string[]) => ofProcess(process.execPath, ...args);
const ofAnalysis = () =>
  takenOf(execFileSync(process.execPath, ["--input-type=module", "-e", analysis]).toString());

function takenOf(text: string): Taken {
  const [clock = Number.NaN, user = Number.NaN, system = Number.NaN] = text
    .trim()
    .split(/\s+/)
    .map(Number);
  return { clock, processors: user + system };
}

/** A command as after an installation, when nothing that it compiled is kept; what was kept is there again behind it. */
const firstTime =
  (...args: readonly string[]) =>
  () => {
    const aside = `${compiled}-aside`;
    renameSync(compiled, aside);
    const taken = ofNode(built, ...args)();
    rmSync(compiled, { recursive: true });
    renameSync(aside, compiled);
    return taken;
  };

/** Prints, as a process ends, the seconds that the command itself measured of its analysis. */
const telling = `process.on("exit", () => {
  for (const { duration } of performance.getEntriesByName("analysis")) console.error("took", duration / 1e3);
});`;
const ofAnalysisWithin =
  (...args: readonly string[]) =>
  (): Taken => {
    const preload = `data:text/javascript,${encodeURIComponent(telling)}`;
    const run = spawnSync(process.execPath, ["--import", preload, ...args], { encoding: "utf8" });
    const told = /^took (.*)$/m.exec(run.stderr)?.[1];
    if (run.status !== 0 || told === undefined)
      throw new Error(`${args.join(" ")} ended with ${run.status} and told of no analysis`);
    return { clock: Number(told), processors: null };
  };

const bare = "node -e 0";
const hasR = spawnSync("Rscript", ["--version"]).status === 0;
const measured: Readonly<Record<string, () => Taken>> = {
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
  "enough, three catches, the first time": firstTime("enough", morning, "--no-setup"),
  "enough, three catches with a setup": ofNode(built, "enough", morning),
  "short report on the season": ofNode(built, ...report),
  "full report on the season": ofNode(built, ...report, "--edition", "full"),
  "the analysis in the short report": ofAnalysisWithin(built, ...report),
  "short report, the first time": firstTime(...report),
  "short report from a clone (npm start)": ofNode("test/tools/start.mjs", ...report),
  "the analysis alone": ofAnalysis,
};

// Once before it counts: what a process keeps for the next is there, as it is for whoever asks a second time.
for (const once of [ofNode(built, "enough", morning), ofNode(built, ...report)]) once();
const names = Object.keys(measured);
const taken = new Map(names.map((name) => [name, [] as Taken[]]));
for (let run = 0; run < runs; run++)
  for (const [name, once] of Object.entries(measured)) taken.get(name)?.push(once());

/** Null where a single one is not told. */
const medianOf = (name: string, what: keyof Taken) => {
  const all = (taken.get(name) ?? []).flatMap((one) => one[what] ?? []);
  return all.length < runs ? null : median(all);
};
const shown = (name: string, what: keyof Taken) => {
  const [seconds, ofBare] = [medianOf(name, what), medianOf(bare, what)];
  if (seconds === null || ofBare === null) return "";
  return `${seconds.toFixed(3)} s ${(seconds / ofBare).toFixed(1).padStart(5)}`;
};
console.log(`median of ${runs} runs, and its ratio to that of ${bare}`);
console.log(`${"".padEnd(42)}   on the clock      of processors`);
for (const name of names)
  console.log(`${name.padEnd(42)} ${shown(name, "clock")}    ${shown(name, "processors")}`);
