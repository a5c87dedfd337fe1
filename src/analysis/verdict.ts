import type { CatchesNeeded } from "../questions/catches-needed.ts";
import type { Delivery } from "../questions/delivery.ts";
import type { Drift } from "../questions/drift.ts";
import type { Outliers } from "../questions/outliers.ts";
import type { Caution, Where } from "../results/caution.ts";

/** Where one bin stands, in a word. The wording layer makes the sentence and the next step of it. */
export type Verdict =
  /** Something about the fill in the bin may be wrong whatever its interval says. */
  | { readonly code: "check-first"; readonly catches: readonly number[] }
  /** The fills have moved; earlier figures do not hold for this one. */
  | { readonly code: "moved"; readonly wellEnough: boolean }
  | { readonly code: "known-well-enough" }
  /** null: more catches of these turns alone do not reach the tolerance. */
  | { readonly code: "not-yet"; readonly moreCatches: number | null; readonly turns: number }
  | { readonly code: "unknown"; readonly turns: number };

interface Answers {
  readonly delivery: Delivery;
  readonly outliers: Outliers;
  readonly drift: Drift;
  readonly catchesNeeded: CatchesNeeded;
}

/** Verdicts on the fills that take earlier figures from under today's. */
const moving: readonly Drift["verdict"][] = [
  "moved",
  "trending",
  "fill differs",
  "fill differs, confirmed",
];

/** Sums up one bin: first what may be wrong, then whether the meter has moved, then whether more catches are needed. */
export function verdictOf(
  { delivery, outliers, drift, catchesNeeded }: Answers,
  aboutTheFile: readonly Caution[],
): Verdict {
  const suspects = [
    ...outliers.suspects.filter(({ fill }) => fill === delivery.fill).map((one) => one.catch),
    ...outliers.pairs.filter(({ fill }) => fill === delivery.fill).flatMap((pair) => pair.catches),
  ];
  const { bin, product, fill } = delivery;
  const here = (place: Where) =>
    (place.bin === null || place.bin === bin) &&
    (place.product === null || place.product === product) &&
    (place.fill === null || place.fill === fill);
  const serious = [...aboutTheFile, ...delivery.cautions, ...outliers.cautions].some(
    ({ severity, where }) => severity === "serious" && here(where),
  );
  if (suspects.length > 0 || serious) return { code: "check-first", catches: suspects };

  const { met, recommended, basis } = catchesNeeded;
  if (moving.includes(drift.verdict)) return { code: "moved", wellEnough: met === true };
  if (met === true) return { code: "known-well-enough" };
  if (met === null) return { code: "unknown", turns: basis.turnsPerCatch };
  return {
    code: "not-yet",
    // Two catches know their scatter on one degree of freedom: no plan can be made before a third.
    moreCatches: recommended?.further ?? (basis.df <= 1 ? 1 : null),
    turns: recommended?.turns ?? basis.turnsPerCatch,
  };
}
