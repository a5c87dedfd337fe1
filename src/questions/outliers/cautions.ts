import { type Caution, caution } from "../../results/caution.ts";
import type { Outliers } from "./result.ts";

type Found = Omit<Outliers, "kind" | "cautions">;

/** What a person should know about suspect catches before relying on a figure that rests on them. */
export function outlierCautions(found: Found): readonly Caution[] {
  return [
    ...aboutSuspects(found),
    ...aboutPairs(found),
    ...aboutFills(found),
    ...aboutToday(found),
  ];
}

function aboutSuspects({ bin, product, suspects, fills, options }: Found): readonly Caution[] {
  return suspects.map((one) => {
    const where = { bin, product, fill: one.fill, catches: [one.catch] };
    const pValue = one.inFill?.pValue ?? 1;
    const relativeResidual = one.relativeResidual ?? 0;
    return one.verdict === "stands out"
      ? caution("suspect-catch", where, {
          relativeResidual,
          pValue: one.family === "whole log" ? (one.inLog?.pValue ?? 1) : pValue,
          family: one.family ?? "this fill",
          mishaps: one.explanations.map(({ mishap }) => mishap),
          withoutKgPerTurn: one.influence.without.value,
          relativeChange: one.influence.relativeChange,
        })
      : caution("suspect-only-in-fill", where, {
          relativeResidual,
          pValue,
          expectedByChance: fills.length * (1 - options.screeningLevel),
        });
  });
}

function aboutPairs({ bin, product, pairs, today, fills, options }: Found): readonly Caution[] {
  return pairs.map(({ fill, catches, relativeDifference, inFill, family }) => {
    const where = { bin, product, fill, catches };
    return family === "whole log" || fill === today.fill
      ? caution("two-disagree", where, { relativeDifference, pValue: inFill.pValue })
      : caution("two-disagree-in-fill-only", where, {
          relativeDifference,
          pValue: inFill.pValue,
          expectedByChance: fills.length * (1 - options.screeningLevel),
        });
  });
}

function aboutFills({ bin, product, fills }: Found): readonly Caution[] {
  return fills
    .filter(({ moreThanCanBeTold }) => moreThanCanBeTold)
    .map(({ fill, catches, standingOut }) =>
      caution("more-than-can-be-told", { bin, product, fill, catches: standingOut }, { catches }),
    );
}

function aboutToday({ bin, product, today }: Found): readonly Caution[] {
  const { fill, status, catches, relativeRange, outsideDf } = today;
  return status === "too few to judge"
    ? [caution("too-few-to-judge", { bin, product, fill }, { catches, relativeRange, outsideDf })]
    : [];
}
