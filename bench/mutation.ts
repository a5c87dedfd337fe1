/**
 * Changes the code in small ways, one at a time, and asks whether a test of the topic notices. Writes reports/mutation.md.
 * Options: --sample N, default 600; --seed N; --only src/statistics, a part of the code, which is only printed; --workers N,
 * default as many as the machine has.
 * What is known already is kept in .cache, so that a run that was interrupted goes on.
 */
import { appendFileSync, existsSync, mkdirSync, readFileSync } from "node:fs";
import { availableParallelism } from "node:os";
import { join } from "node:path";
import { parseArgs } from "node:util";
import { SingleBar } from "cli-progress";
import { root } from "../test/support/compiler.ts";
import { type Mutant, mutantsOf } from "./mutation/mutants.ts";
import { mutationPage, scoreOf, type Tried } from "./mutation/page.ts";
import { sampleOf } from "./mutation/sample.ts";
import { topics } from "./mutation/topics.ts";
import { type Fate, Watched } from "./mutation/watched.ts";
import { writeStudy } from "./study/support/write-study.ts";

const { values } = parseArgs({
  options: {
    sample: { type: "string", default: "600" },
    seed: { type: "string", default: "1" },
    only: { type: "string", default: "src/" },
    workers: { type: "string", default: String(availableParallelism()) },
  },
});
const seed = Number(values.seed);
const { files, testsOf } = topics();
const all = files
  .filter((file) => file.startsWith(values.only))
  .map((file) => mutantsOf(file, readFileSync(join(root, file), "utf8")));

const texts = new Map(files.map((file) => [file, readFileSync(join(root, file), "utf8")]));
/** By the text around it, so that what a change of the code left alone is not asked again. */
const nameOf = ({ file, start, end, put }: Mutant) => {
  const text = texts.get(file) ?? "";
  return JSON.stringify([file, text.slice(Math.max(0, start - 60), end + 60), put]);
};
const sample = sampleOf(all, Number(values.sample), seed, nameOf);
const folder = join(root, ".cache");
mkdirSync(folder, { recursive: true });
const kept = join(folder, "mutation.jsonl");
const known = new Map<string, Fate>(
  (existsSync(kept) ? readFileSync(kept, "utf8").trim().split("\n") : [])
    .filter((line) => line !== "")
    .map((line) => JSON.parse(line)),
);

const workers = Array.from({ length: Number(values.workers) }, () => new Watched());
const close = () => {
  for (const watched of workers) watched.close();
};
process.once("SIGINT", () => {
  close();
  process.exit(130);
});
const bar = new SingleBar({ format: "{bar} {value} of {total} changes, {name}", fps: 2 });
bar.start(sample.length, 0, { name: "" });
const fates = new Map<Mutant, Fate>();
const waiting = sample.values();
await Promise.all(
  workers.map(async (watched) => {
    for (const mutant of waiting) {
      bar.increment({ name: mutant.file });
      fates.set(mutant, await fateOf(mutant, watched));
    }
  }),
);
bar.stop();
close();

async function fateOf(mutant: Mutant, watched: Watched): Promise<Fate> {
  const name = nameOf(mutant);
  const before = known.get(name);
  // A test that is there now may notice what none did.
  if (before !== undefined && before.is !== "survived") return before;
  const fate = await watched.fateOf(mutant, testsOf(mutant.file));
  appendFileSync(kept, `${JSON.stringify([name, fate])}\n`);
  return fate;
}

const tried: readonly Tried[] = sample.flatMap((mutant) => {
  const fate = fates.get(mutant);
  return fate === undefined ? [] : [{ mutant, fate }];
});
const page = mutationPage(tried, seed);
if (values.only === "src/") {
  const survived = tried.filter(({ fate }) => fate.is === "survived").map(({ mutant }) => mutant);
  writeStudy("mutation", { seed, changes: tried.length, score: scoreOf(tried), survived }, page);
} else console.log(page.join("\n"));
