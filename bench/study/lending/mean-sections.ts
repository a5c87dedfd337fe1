import { at } from "../../../src/errors/at.ts";
import { randomStream } from "../../../src/numeric/random.ts";
import { type Claim, coverageCell, type Row, type Run, type Section } from "./claims.ts";
import { meanOutcomes } from "./mean-over-fills.ts";
import { usualTurns } from "./meters.ts";

const held: Claim = { atLeast: 0.945, atMost: null };
const fillCounts = [2, 3, 5, 10] as const;
const correlations = [0, 0.3, 0.5, 0.6, 0.7];
/** Neighbours that are more alike are more than the widening was made for. */
const mostAlike = 0.5;

const scales = [0.06, 0.12, 0.25].flatMap((delivery) =>
  [0.02, 0.05].flatMap((divisionKg) =>
    [0.01, 0.03].map((spread) => ({ delivery, divisionKg, spread })),
  ),
);

/** The sections about the mean over fills. */
export function meanSections({ replicates, seed }: Run): readonly Section[] {
  const correlated = correlations.flatMap((correlation, i): Row[] => {
    const random = randomStream(seed, 700 + i);
    const outcomes = meanOutcomes({ correlation }, fillCounts, replicates, random);
    const claim = correlation <= mostAlike ? held : null;
    return (["lent", "alone"] as const).map((side) => ({
      situation: `correlation ${correlation}, ${side === "lent" ? "two other meters" : "by itself"}`,
      cells: fillCounts.map((fills, c) =>
        coverageCell(
          `${fills} fills`,
          at(outcomes, c).map((outcome) => outcome[side]),
          claim,
        ),
      ),
    }));
  });
  const counts = [3, 6, 10];
  const coarse = scales.map((scale, i): Row => {
    const outcomes = meanOutcomes(scale, counts, replicates, randomStream(seed, 800 + i));
    const { delivery, divisionKg, spread } = scale;
    const bands = (c: number, side: "alone" | "readingIgnored") =>
      at(outcomes, c).map((outcome) => outcome[side]);
    return {
      situation: `catches of ${delivery * usualTurns} kg, scale to ${1000 * divisionKg} g, spread ${100 * spread} %`,
      cells: [
        ...counts.map((fills, c) => coverageCell(`${fills} fills`, bands(c, "alone"), held)),
        ...counts.map((fills, c) =>
          coverageCell(`${fills} fills, reading ignored`, bands(c, "readingIgnored")),
        ),
      ],
    };
  });
  return [
    { name: "mean over fills", rows: correlated },
    { name: "mean over fills on a coarse scale", rows: coarse },
  ];
}
