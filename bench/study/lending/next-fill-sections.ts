import { at } from "../../../src/errors/at.ts";
import { randomStream } from "../../../src/numeric/random.ts";
import { type Claim, coverageCell, type Row, type Run, ratioCell, type Section } from "./claims.ts";
import { fifthsRow } from "./comparison.ts";
import { type NextFillPlan, nextFillOutcomes } from "./next-fill.ts";
import { aloneOf, lentOf, type Outcome, point, shrinkage, widthRatios } from "./outcomes.ts";

type Situation = readonly [name: string, plan: Partial<NextFillPlan>];

const base = "two other meters of nine fills";
const fillCounts = [1, 2, 3, 5] as const;
const held: Claim = { atLeast: 0.94, atMost: 0.985 };
/** Of the width that the meter has by itself, after two, three and five fills. */
const shrinkages = new Map([
  [2, 0.34],
  [3, 0.72],
  [5, 0.91],
]);

const claimedSituations: readonly Situation[] = [
  [base, {}],
  ["meters differ less (0.3) than is taken for granted", { heterogeneity: 0.3 }],
  ["one other meter of five fills", { others: 1, fillsOfOthers: 5 }],
  ["thirty other meters of six fills", { others: 30, fillsOfOthers: 6 }],
  ["fills with heavy tails (t on 4 degrees of freedom)", { departure: "heavy tails" }],
  ["skewed fills (exponential)", { departure: "skewed" }],
  ["fills in two humps", { departure: "two humps" }],
  ["one fill in ten 4 standard deviations too high", { departure: "some far too high" }],
  ["one fill in ten 4 standard deviations off, to either side", { departure: "some far off" }],
  ["neighbouring fills alike, correlation 0.3", { correlation: 0.3 }],
  ["neighbouring fills alike, correlation 0.6", { correlation: 0.6 }],
  ["one catch a fill, three a fill of the others", { catches: 1 }],
  ["1 to 8 catches a fill, of all meters", { catches: [1, 8], catchesOfOthers: [1, 8] }],
];

const unclaimedSituations: readonly Situation[] = [
  ["meters differ more (0.8) than is taken for granted", { heterogeneity: 0.8 }],
  ["typical spread 1 %", { spread: 0.01 }],
  ["typical spread 6 %", { spread: 0.06 }],
  ["the meter spreads twice as much as the others do typically", { times: 2 }],
  ["three times as much", { times: 3 }],
  ["half as much", { times: 0.5 }],
];

const sharing: readonly Situation[] = [
  ["two other meters, what fills do is shared, correlation 0.5", { shared: 0.5 }],
  ["the same, correlation 0.9", { shared: 0.9 }],
  ["five other meters, correlation 0.9", { shared: 0.9, others: 5 }],
];

interface Simulated {
  readonly situation: string;
  readonly counts: readonly number[];
  /** For each count. */
  readonly outcomes: readonly (readonly Outcome[])[];
}

/** The sections about the next fill. */
export function nextFillSections({ replicates, seed }: Run): readonly Section[] {
  const simulate = (situations: readonly Situation[], counts: readonly number[], stream: number) =>
    situations.map(([situation, plan], i): Simulated => {
      const random = randomStream(seed, stream + i);
      return { situation, counts, outcomes: nextFillOutcomes(plan, counts, replicates, random) };
    });
  const kept = simulate(claimedSituations, fillCounts, 100);
  const open = simulate(unclaimedSituations, fillCounts, 200);
  // What is shared shows when the others have just as many fills; of a first fill they could say nothing.
  const together = sharing.map(
    ([name, plan]): Situation => [name, { fillsOfOthers: "as many", ...plan }],
  );
  const shared = simulate(together, fillCounts.slice(1), 300);
  return [
    { name: "next fill", rows: kept.map((one) => coverageRow(one, held)) },
    {
      name: "next fill, narrower than by itself",
      rows: [...kept, ...open, ...shared].map(shrinkageRow),
    },
    {
      name: "next fill, no claim",
      rows: [...open, ...shared].map((one) => coverageRow(one, null)),
    },
    { name: "next fill, by itself", rows: [...kept, ...open, ...shared].map(aloneRow) },
    { name: "next fill, by fifths", rows: rowsByFifths(at(kept, 0)) },
    { name: "from fill to fill", rows: growthRows(at(kept, 0)) },
  ];
}

const afterFills = (fills: number) => (fills === 1 ? "1 fill" : `${fills} fills`);

function coverageRow({ situation, counts, outcomes }: Simulated, claim: Claim | null): Row {
  return {
    situation,
    cells: counts.map((fills, i) =>
      coverageCell(afterFills(fills), lentOf(at(outcomes, i)), claim),
    ),
  };
}

function aloneRow({ situation, counts, outcomes }: Simulated): Row {
  return {
    situation,
    cells: counts.flatMap((fills, i) =>
      fills === 1 ? [] : coverageCell(afterFills(fills), aloneOf(at(outcomes, i))),
    ),
  };
}

function shrinkageRow({ situation, counts, outcomes }: Simulated): Row {
  return {
    situation,
    cells: counts.flatMap((fills, i) => {
      const atMost = situation === base ? (shrinkages.get(fills) ?? null) : null;
      const claim = atMost === null ? null : { atLeast: null, atMost };
      return fills === 1 ? [] : ratioCell(afterFills(fills), shrinkage(at(outcomes, i)), claim);
    }),
  };
}

function rowsByFifths({ counts, outcomes }: Simulated): readonly Row[] {
  return counts.map((fills, i) => fifthsRow(afterFills(fills), at(outcomes, i), lentOf));
}

const growth: Claim = { atLeast: null, atMost: 1.6 };

/** How a band changes with one fill more. */
function growthRows({ counts, outcomes }: Simulated): readonly Row[] {
  const bandsAfter = (fills: number, side: "lent" | "alone") =>
    at(outcomes, counts.indexOf(fills)).map((outcome) => outcome[side]);
  const row = (situation: string, fills: number, side: "lent" | "alone", claim: Claim | null) => {
    const ratios = widthRatios(bandsAfter(fills, side), bandsAfter(fills - 1, side));
    return {
      situation,
      cells: [
        ratioCell("half of logs", point(ratios, 0.5)),
        ratioCell("95 in 100", point(ratios, 0.95), claim),
        ratioCell("99 in 100", point(ratios, 0.99)),
      ],
    };
  };
  return [
    row("the second fill, with two other meters", 2, "lent", growth),
    row("the third fill, with two other meters", 3, "lent", null),
    row("the third fill, by itself", 3, "alone", null),
  ];
}
