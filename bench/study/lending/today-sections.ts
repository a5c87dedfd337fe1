import { at } from "../../../src/errors/at.ts";
import { randomStream } from "../../../src/numeric/random.ts";
import { type Claim, coverageCell, type Row, type Run, type Section } from "./claims.ts";
import { fifthsRow } from "./comparison.ts";
import { usualDelivery, usualTurns } from "./meters.ts";
import { lentOf, type Outcome } from "./outcomes.ts";
import { type TodayPlan, todayOutcomes } from "./today.ts";

type Situation = readonly [name: string, plan: Partial<TodayPlan>];

const divisionKg = 0.02;
const divisionOfCatch = divisionKg / (usualDelivery * usualTurns);

const scales: readonly Situation[] = [
  ["first morning, two other meters of three catches", {}],
  ["the same, one bag for all catches", { oneBag: true }],
  ["after 3 earlier fills, two other meters of 4", { earlier: 3, fillsOfOthers: 4 }],
];
const scattersInDivisions = [0.05, 0.1, 0.25, 0.5, 1, 2, 4];
const heldOnScale: Claim = { atLeast: 0.94, atMost: null };
const held: Claim = { atLeast: 0.93, atMost: 0.975 };

const coarse: readonly Situation[] = scales.flatMap(([name, plan]) =>
  scattersInDivisions.map((divisions): Situation => {
    const scatter = divisions * divisionOfCatch;
    return [`${name}, scatter ${divisions} divisions`, { ...plan, divisionKg, scatter }];
  }),
);

const claimedSituations: readonly Situation[] = [
  ...[0, 1, 2, 3, 4, 5].flatMap((earlier) =>
    [0, 0.2, 0.3].map((variesBy): Situation => {
      const name = `${earlier} earlier fill${earlier === 1 ? "" : "s"}, scatter differs between fills by ${variesBy}`;
      return [name, { earlier, fillsOfOthers: earlier + 1, variesBy }];
    }),
  ),
  ["first morning, meters differ less (0.3) than is taken for granted", { heterogeneity: 0.3 }],
  ["first morning, one catch in twenty 4 standard deviations off", { departure: "some far off" }],
  ["first morning, catches with heavy tails (t on 4)", { departure: "heavy tails" }],
];

const unclaimedSituations: readonly Situation[] = [
  ["first morning, meters differ more (0.8) than is taken for granted", { heterogeneity: 0.8 }],
  [
    "the meter scatters twice as much as two others of nine fills do",
    { times: 2, fillsOfOthers: 9 },
  ],
  ["three times as much", { times: 3, fillsOfOthers: 9 }],
  ["half as much", { times: 0.5, fillsOfOthers: 9 }],
];

interface Simulated {
  readonly situation: string;
  readonly counts: readonly number[];
  /** For each count. */
  readonly outcomes: readonly (readonly Outcome[])[];
}

/** The sections about today's fill. */
export function todaySections({ replicates, seed }: Run): readonly Section[] {
  const simulate = (situations: readonly Situation[], counts: readonly number[], stream: number) =>
    situations.map(([situation, plan], i): Simulated => {
      const random = randomStream(seed, stream + i);
      return { situation, counts, outcomes: todayOutcomes(plan, counts, replicates, random) };
    });
  const onScales = simulate(coarse, [1, 2, 3, 5], 400);
  const kept = simulate(claimedSituations, [1, 2, 3, 4], 500);
  const open = simulate(unclaimedSituations, [1, 2, 3, 4], 600);
  return [
    { name: "today's fill", rows: kept.map((one) => coverageRow(one, held)) },
    { name: "today's fill, no claim", rows: open.map((one) => coverageRow(one, null)) },
    { name: "today's fill, by fifths", rows: rowsByFifths(at(kept, 0)) },
    {
      name: "today's fill on a coarse scale",
      rows: onScales.map((one) => coverageRow(one, heldOnScale)),
    },
  ];
}

function coverageRow({ situation, counts, outcomes }: Simulated, claim: Claim | null): Row {
  return {
    situation,
    cells: counts.map((catches, i) =>
      coverageCell(withCatches(catches), lentOf(at(outcomes, i)), claim),
    ),
  };
}

function rowsByFifths({ counts, outcomes }: Simulated): readonly Row[] {
  return counts.map((catches, i) => fifthsRow(withCatches(catches), at(outcomes, i), lentOf));
}

function withCatches(catches: number): string {
  return catches === 1 ? "1 catch" : `${catches} catches`;
}
