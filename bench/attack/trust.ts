import { randomStream } from "../../src/numeric/random.ts";
import { table } from "../study/support/markdown.ts";
import { type Attack, type Outcome, outcomes, type Tried } from "./attack.ts";

export interface Tally {
  readonly attack: Pick<Attack, "name" | "about" | "faults">;
  readonly counts: Readonly<Record<Outcome, number>>;
  /** What came out wrong, or failed. */
  readonly bad: readonly Tried[];
}

/** Tries an attack; its stream of random numbers is its own, so that one more in the list leaves the others as they are. */
export async function tallyOf(attack: Attack, seed: number, effort: number): Promise<Tally> {
  const counts: Record<Outcome, number> = {
    refused: 0,
    "over limit": 0,
    asked: 0,
    right: 0,
    wrong: 0,
    failed: 0,
  };
  const bad: Tried[] = [];
  for await (const tried of attack.run(randomStream(seed, streamOf(attack.name)), effort)) {
    counts[tried.outcome]++;
    if (tried.outcome === "wrong" || tried.outcome === "failed") bad.push(tried);
  }
  return { attack, counts, bad };
}

function streamOf(name: string): number {
  return [...name].reduce((sum, letter) => (sum * 31 + letter.charCodeAt(0)) % 1_000_003, 7);
}

const shown = 20;

/** What became of small changes of the code. */
export interface Noticed {
  readonly changes: number;
  readonly score: number;
}

/**
 * The page: what was tried and what became of it. Without times, so that one seed gives one page.
 *
 * @param noticed  null: nobody has asked
 */
export function trustPage(
  tallies: readonly Tally[],
  seed: number,
  effort: number,
  noticed: Noticed | null = null,
): readonly string[] {
  const inputs = tallies.filter(({ attack }) => !attack.faults);
  const injected = tallies.filter(({ attack }) => attack.faults);
  const total = ({ counts }: Tally) => outcomes.reduce((sum, one) => sum + counts[one], 0);
  const bad = tallies.flatMap(({ attack, bad }) =>
    bad.map((one) => `- ${attack.name}: ${one.name} (${one.outcome})`),
  );
  return [
    "# What was tried to make it fail",
    "",
    `\`npm run attack\` wrote this page (seed ${seed}, effort ${effort}). An answer or a refusal that takes more than five seconds of computing counts as failed.`,
    "",
    ...table(
      [
        "inputs",
        "tried",
        "refused, saying what to do",
        "over a limit that is named",
        "answered with a caution",
        "answered rightly",
        "silently wrong",
        "failed",
      ],
      inputs.map((one) => [
        `**${one.attack.name}**: ${one.attack.about}`,
        total(one),
        ...outcomes.map((outcome) => one.counts[outcome]),
      ]),
    ),
    "",
    "Where what a changed file says cannot be known beforehand, any answer that the reader gives counts as right.",
    "",
    ...table(
      ["faults", "injected", "survived"],
      injected.map((one) => [
        `**${one.attack.name}**: ${one.attack.about}`,
        total(one),
        one.counts.right,
      ]),
    ),
    "",
    "Survived: the old report stands whole or the new one does, no trace of the program is printed, and the next run ends with the new report.",
    ...(noticed === null
      ? []
      : [
          "",
          `Of ${noticed.changes} small changes of the code, tests of their topic notice ${(100 * noticed.score).toFixed(1)} % (\`npm run mutation\`, mutation.md).`,
        ]),
    ...(bad.length === 0 ? [] : ["", "## What was not withstood", "", ...bad.slice(0, shown)]),
  ];
}
