/**
 * Changes the code in small ways, one at a time, and asks whether a test of the topic notices. Writes reports/mutation.md.
 * Options: --sample N, default 600; --seed N; --only src/statistics, a part of the code, which is only printed; --workers N,
 * default as many as the machine has.
 * What is known already is kept in .cache, so that a run that was interrupted goes on; what no test noticed is asked of those
 * tests that changed since.
 */
import { createHash } from "node:crypto";
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
const texts = new Map(
  files
    .filter((file) => file.startsWith(values.only))
    .map((file) => [file, readFileSync(join(root, file), "utf8")]),
);
const all = [...texts].map(([file, text]) => mutantsOf(file, text));
/** By the text around it, so that what a change of the code left alone is not asked again. */
const nameOf = ({ file, start, end, put }: Mutant) => {
  const text = texts.get(file) ?? "";
  return JSON.stringify([file, text.slice(Math.max(0, start - 60), end + 60), put]);
};
const sample = sampleOf(all, Number(values.sample), seed, nameOf);
const folder = join(root, ".cache");
mkdirSync(folder, { recursive: true });
const kept = join(folder, "mutation.jsonl");
/** Which tests did not notice a change, each as it was then. */
type Against = Readonly<Record<string, string>>;
const known = new Map<string, Fate & { readonly against?: Against }>(
  (existsSync(kept) ? readFileSync(kept, "utf8").trim().split("\n") : [])
    .filter((line) => line !== "")
    .map((line) => JSON.parse(line)),
);

const states = new Map<string, string>();
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
  if (before !== undefined && before.is !== "survived") return before;
  const tests = testsOf(mutant.file);
  // A test that was not there then, or was another, may notice what none did.
  const asked = tests.filter((test) => before?.against?.[test] !== stateOf(test));
  if (before !== undefined && asked.length === 0) return before;
  const fate = await watched.fateOf(mutant, asked);
  const against = Object.fromEntries(tests.map((test) => [test, stateOf(test)]));
  const told = fate.is === "survived" ? { ...fate, against } : fate;
  appendFileSync(kept, `${JSON.stringify([name, told])}\n`);
  return fate;
}

function stateOf(test: string): string {
  const state =
    states.get(test) ??
    createHash("sha256")
      .update(readFileSync(join(root, test)))
      .digest("hex")
      .slice(0, 12);
  states.set(test, state);
  return state;
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
