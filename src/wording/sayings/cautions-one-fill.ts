import type { CautionFacts } from "../../results/caution.ts";
import type { OneFillCautionFacts } from "../../results/caution-facts/one-fill.ts";
import type { cautionsOneFill as templates } from "../en/cautions-one-fill.ts";
import type { Format } from "../format.ts";
import type { CautionSentences } from "./caution-sentences.ts";
import { lenderFacts } from "./lenders.ts";
import { numbered } from "./numbered.ts";

/** About the catches of one fill. A code that is not here carries no figures: its facts go to the sentence as they are. */
export function cautionsOneFillSayings(
  format: Format,
  say: typeof templates,
): CautionSentences<OneFillCautionFacts> {
  const mass = (kg: number) => format.value(kg, "mass");
  const delivery = (kgPerTurn: number) => format.value(kgPerTurn, "delivery");
  const df = (facts: { readonly df: number }) => ({ df: numbered(facts.df, format) });
  const p =
    (template: (p: string) => string) =>
    ({ pValue }: { readonly pValue: number }) =>
      template(format.pValue(pValue));
  const constant = (facts: CautionFacts["constant-mass"]) => ({
    mass: mass(facts.constantKg),
    range:
      facts.lowerKg === null || facts.upperKg === null
        ? null
        : format.range(mass(facts.lowerKg), mass(facts.upperKg)),
    p: format.pValue(facts.pValue),
    without: delivery(facts.interceptSlopeKgPerTurn),
  });
  return {
    ...say,
    "one-catch-lent": ({ lentBy, ...facts }) =>
      say["one-catch-lent"]({ ...df(facts), ...lenderFacts(lentBy) }),
    "two-catches": ({ widthFactor }) => say["two-catches"](format.plain(widthFactor)),
    "few-degrees-of-freedom": (facts) => say["few-degrees-of-freedom"](df(facts)),
    "zero-scatter": ({ divisionKg }) => say["zero-scatter"](mass(divisionKg)),
    "scale-limits-result": ({ share }) => say["scale-limits-result"](format.percent(share, 0)),
    "constant-mass": (facts) => say["constant-mass"](constant(facts)),
    "constant-mass-suspected": (facts) => say["constant-mass-suspected"](constant(facts)),
    "lack-of-fit": p(say["lack-of-fit"]),
    "heteroscedastic-error-used": ({ ratio }) =>
      say["heteroscedastic-error-used"](format.plain(ratio)),
    "scale-looks-coarser": ({ stepKg, divisionKg }) =>
      say["scale-looks-coarser"]({ step: mass(stepKg), division: mass(divisionKg) }),
    "scatter-differs": p(say["scatter-differs"]),
    "catches-wilder-than-bins": p(say["catches-wilder-than-bins"]),
    "catches-calmer-than-bins": p(say["catches-calmer-than-bins"]),
    "weighting-by-name": ({ usualKgPerTurn }) => say["weighting-by-name"](delivery(usualKgPerTurn)),
  };
}
