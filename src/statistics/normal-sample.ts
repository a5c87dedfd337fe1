import { requireFinite, requirePositive, requireWhole } from "../numeric/domain.ts";

/** What a sample says of the normal population it is from; the standard deviation may rest on other samples. */
export interface NormalSample {
  readonly mean: number;
  /** Above zero. */
  readonly standardDeviation: number;
  /** Observations behind the mean, at least 1. */
  readonly n: number;
  /** Degrees of freedom behind the standard deviation, above zero; n − 1 unless it comes from elsewhere. */
  readonly df: number;
}

export function requireNormalSample(routine: string, sample: NormalSample): void {
  requireFinite(routine, "mean", sample.mean);
  requirePositive(routine, "standardDeviation", sample.standardDeviation);
  requireWhole(routine, "n", sample.n, 1);
  requirePositive(routine, "df", sample.df);
}
