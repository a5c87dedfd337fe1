import { writeFileSync } from "node:fs";
import { studentTQuantile } from "../../src/numeric/distributions/student-t.ts";
import { type RandomStream, randomStream } from "../../src/numeric/random.ts";
import { foldedShares } from "../../src/statistics/change-point-shares.ts";

/**
 * Makes src/statistics/change-point-table.ts: for the largest pooled two-sample |t| over the splits of n normal values,
 * the share of Bonferroni's bound that is not counted twice.
 *
 * With A_s "split s exceeds", P(any A_s) = Σ_s E[1{A_s}/N], N the number of splits that exceed. All splits have the same
 * P(A_s) = p, so the share wanted is E[1/N | A_s] with s uniform over the splits. It is a mean of numbers between 1/splits
 * and 1 whatever the p, so that even chances of one in a billion come out to three digits.
 *
 * Given A_s the series is made directly: on the unit sphere of centred series its contrast at s is x = t/√(t² + n − 2)
 * with t from the tail of Student's t, and what is left is uniform at right angles to it.
 */
export interface ShareTableOptions {
  /** −log10 of the two-sided p of one split. */
  readonly exponents: readonly number[];
  /** At least so many; filled up until every split has every stratum equally often. */
  readonly samples: number;
  readonly seed: number;
  /** Fewest values on either side of a split; 2 in the package, 1 for comparison with published tables. */
  readonly fewestBeside: number;
}

/** Levels within the tail; drawing them in strata takes their part of the noise away. */
const strata = 256;

export function sharesCountedOnce(n: number, options: ShareTableOptions): number[] {
  const { exponents, samples, seed, fewestBeside } = options;
  const random = randomStream(seed, n);
  const splits = Array.from({ length: n - 2 * fewestBeside + 1 }, (_, i) => i + fewestBeside);
  const tails = exponents.map((exponent) => tailOfOneSplit(10 ** -exponent, n));
  const totals = exponents.map(() => 0);
  const round = splits.length * strata;
  const rounded = Math.ceil(samples / round) * round;
  for (let sample = 0; sample < rounded; sample++) {
    const chosen = sample % splits.length;
    const stratum = Math.floor(sample / splits.length) % strata;
    const { along, across } = directions(random, n, splits, chosen);
    tails.forEach(({ limit, sizes }, i) => {
      const x = sizes[stratum] ?? 1;
      const rest = Math.sqrt(1 - x * x);
      let exceeding = 0;
      for (let j = 0; j < splits.length; j++)
        if (j === chosen || Math.abs(x * (along[j] ?? 0) + rest * (across[j] ?? 0)) >= limit)
          exceeding++;
      totals[i] = (totals[i] ?? 0) + 1 / exceeding;
    });
  }
  return totals.map((total) => total / rounded);
}

/** Size of the contrast at which one split has the two-sided p, and the middle of each stratum beyond it. */
function tailOfOneSplit(p: number, n: number): { limit: number; sizes: Float64Array } {
  const sizeAt = (tail: number) => {
    const t = tail >= 0.5 ? 0 : -studentTQuantile(tail, n - 2);
    return t / Math.sqrt(t * t + n - 2);
  };
  const sizes = Float64Array.from({ length: strata }, (_, i) =>
    sizeAt((p / 2) * ((i + 0.5) / strata)),
  );
  return { limit: sizeAt(p / 2), sizes };
}

/**
 * The contrast at each split of the unit contrast at the chosen split, and of a random unit series at right angles to
 * it.
 */
function directions(random: RandomStream, n: number, splits: readonly number[], chosen: number) {
  const values = Float64Array.from({ length: n }, () => random.normal());
  const center = values.reduce((sum, value) => sum + value, 0) / n;
  let [partial, squares] = [0, 0];
  const contrasts = new Float64Array(n);
  values.forEach((value, i) => {
    partial += value - center;
    squares += (value - center) ** 2;
    contrasts[i + 1] = partial * Math.sqrt(n / ((i + 1) * (n - i - 1)));
  });
  const at = splits[chosen] ?? 1;
  const own = contrasts[at] ?? 0;
  const length = Math.sqrt(squares - own * own);
  const along = splits.map((split) => {
    const [a, b] = [Math.min(split, at), Math.max(split, at)];
    return Math.sqrt((a * (n - b)) / (b * (n - a)));
  });
  const across = splits.map(
    (split, j) => ((contrasts[split] ?? 0) - own * (along[j] ?? 0)) / length,
  );
  return { along, across };
}

export const tableOptions: ShareTableOptions = {
  exponents: [
    ...Array.from({ length: 40 }, (_, i) => i / 10),
    ...Array.from({ length: 17 }, (_, i) => 4 + i / 2),
  ],
  samples: 250_000,
  seed: 20260401,
  fewestBeside: 2,
};

export const tableSizes: readonly number[] = [
  ...Array.from({ length: 16 }, (_, i) => i + 5),
  22,
  24,
  26,
  28,
  30,
  33,
  36,
  40,
  45,
  50,
  60,
  70,
  80,
  100,
  125,
  150,
  200,
];

if (process.argv[1]?.endsWith("change-point-table.ts")) {
  const folded = tableSizes.map((n) => {
    console.log(`n = ${n}`);
    const shares = sharesCountedOnce(n, tableOptions);
    return foldedShares(shares.map((share) => Number(share.toPrecision(5))));
  });
  const { samples, seed, exponents } = tableOptions;
  const source = `/**
 * Made by bench/study/change-point-table.ts, which says what it holds and how; not to be edited by hand.
 * A module and not a JSON file, because Node 20 prints a warning at every import of JSON.
 */
export const changePointTable: {
  readonly samples: number;
  readonly seed: number;
  /** −log10 of the two-sided p of one split. */
  readonly exponents: readonly number[];
  /** Numbers of values. */
  readonly sizes: readonly number[];
  /** One row a size, one column an exponent: shares as change-point-shares.ts folds them. */
  readonly folded: readonly (readonly number[])[];
} = ${JSON.stringify({ samples, seed, exponents, sizes: tableSizes, folded })};
`;
  writeFileSync(new URL("../../src/statistics/change-point-table.ts", import.meta.url), source);
}
