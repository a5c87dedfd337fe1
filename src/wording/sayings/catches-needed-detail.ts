import type { Action } from "../../analysis/decision.ts";
import type { CatchesNeeded, TrialSplit } from "../../questions/catches-needed.ts";
import type { catchesNeeded } from "../en/catches-needed.ts";
import type { catchesNeededDetail as templates } from "../en/catches-needed-detail.ts";
import type { Format } from "../format.ts";
import { numbered } from "./numbered.ts";
import { sentences } from "./sentences.ts";
import { skipWords } from "./skip-words.ts";

/** Which sentences are said in a report of plans, of what another catch buys, and of going without. */
export function catchesNeededDetailSayings(
  format: Format,
  say: typeof templates,
  short: typeof catchesNeeded,
) {
  const { plusMinus } = format;
  const whole = (share: number) => format.percent(share, 0);
  const mass = (kg: number) => format.value(kg, "mass");
  const split = ({ fills, catchesPerFill, halfWidth }: TrialSplit) => ({
    fills,
    catches: catchesPerFill,
    halfWidth: plusMinus(halfWidth),
  });

  const reachPoint = (at: { readonly catches: number; readonly chance: number }) =>
    say.reachPoint({ catches: at.catches, chance: format.chance(at.chance) });

  return {
    ...say.labels,
    /** @param action  what is decided for the fill: nothing is said while something is to be looked at */
    skip: (result: CatchesNeeded, action?: Action): string | null =>
      result.skip === null || action === "look-first"
        ? null
        : skipWords(result.skip, result.options, format, say),
    buys: ({ curve, standing }: CatchesNeeded): string | null => {
      const now = curve.points.find(({ basis }) => basis === "made");
      const another = curve.points.find(({ further }) => further === 1);
      if (now?.halfWidth == null || another?.halfWidth == null || standing === "not reachable")
        return null;
      const facts = { now: plusMinus(now.halfWidth), next: plusMinus(another.halfWidth) };
      return facts.now === facts.next ? say.buysLittle(facts) : say.buys(facts);
    },
    scale: ({ leastTurns, basis }: CatchesNeeded): string | null =>
      leastTurns === null || leastTurns <= basis.turnsPerCatch
        ? null
        : say.scale(format.count(leastTurns)),
    step: ({ options }: CatchesNeeded): string | null =>
      options.settingError === 0
        ? null
        : say.step({
            error: format.signedPercent(options.settingError),
            tolerance: plusMinus(options.tolerance),
          }),
    limits: ({ basis, standing }: CatchesNeeded): string | null => {
      if (standing !== "short" || basis.longestTurns === null) return null;
      const heaviest = mass(basis.heaviestCatch.kg);
      return basis.heaviestCatch.given ? say.heaviest(heaviest) : say.heaviestAssumed(heaviest);
    },
    time: ({ turnsPlan, options }: CatchesNeeded): string | null => {
      if (turnsPlan === null || options.time === null) return null;
      const { best } = turnsPlan;
      const minutes = format.plain(options.time.minutes);
      return best === null
        ? say.timeTooShort(minutes)
        : say.time({
            minutes,
            catches: best.catches,
            turns: numbered(best.turns, format),
            halfWidth: plusMinus(best.halfWidth),
          });
    },
    trial: ({ trialPlan }: CatchesNeeded): string | null => {
      if (trialPlan === null) return null;
      const { best, bestWithTwoLevels } = trialPlan;
      return best === null
        ? say.noTrial
        : sentences(
            say.trial(split(best)),
            bestWithTwoLevels === null ? null : say.trialOfTwoLevels(split(bestWithTwoLevels)),
          );
    },
    curve: {
      ...say.curve,
      assured: (assurance: number) => say.curveAssured(whole(assurance)),
    },
    reach: {
      ...say.reach,
      title: ({ bin, fill, options }: CatchesNeeded) =>
        say.reachTitle({ bin, fill, tolerance: plusMinus(options.tolerance) }),
      point: reachPoint,
      description: ({ options, curve }: CatchesNeeded) =>
        say.reachDescription({
          tolerance: plusMinus(options.tolerance),
          asked: whole(options.assurance),
          chances: curve.points
            .flatMap(({ catches, chance }) =>
              chance === null ? [] : [reachPoint({ catches, chance })],
            )
            .join("; "),
        }),
    },
    chart: {
      ...say.chart,
      catches: short.catchesOfFill,
      title: (result: CatchesNeeded) => say.chartTitle(result),
      description: ({ options, curve }: CatchesNeeded) =>
        say.chartDescription({
          level: whole(options.level),
          chance: whole(options.assurance),
          tolerance: plusMinus(options.tolerance),
          halfWidths: curve.points
            .flatMap(({ catches, halfWidth }) =>
              halfWidth === null ? [] : [`${catches}: ${format.percent(halfWidth)}`],
            )
            .join("; "),
        }),
    },
  };
}
