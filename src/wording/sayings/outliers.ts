import type { Explanation } from "../../questions/outliers/explanations.ts";
import type {
  CatchJudgement,
  DisagreeingPair,
  FillScreening,
  LeftOutOfFill,
  Outliers,
  Suspect,
} from "../../questions/outliers.ts";
import type { Estimate } from "../../results/estimate.ts";
import { studied } from "../../results/studied.ts";
import type { outliers as templates } from "../en/outliers.ts";
import type { Format } from "../format.ts";
import { mishapWords } from "./mishaps.ts";
import { numbered } from "./numbered.ts";
import { remarksWords, remarkWords } from "./remarks.ts";
import { sentences } from "./sentences.ts";
import { studiedRange } from "./studied-range.ts";

/** From here on nobody asks how many times likelier. */
const aMillion = 1e6;
/** Fills whose scatter differs more doubtfully than this are not said to differ. */
const clearlyUnlike = 0.01;

/** Which sentences are said about catches that are not to be believed as they stand. */
export function outliersSayings(format: Format, say: typeof templates) {
  const rate = (chance: number) => format.percent(chance, 0);
  const delivery = ({ value, standardError }: Estimate<"kg/turn">) =>
    format.value(value, "delivery", standardError);
  const signed = (value: number) => `${value < 0 ? "−" : "+"}${format.fixed(Math.abs(value), 2)}`;
  const mishap = (one: Explanation): string => mishapWords(one, format, say.mishaps);
  const causes = ({ explanations }: Suspect) =>
    explanations
      .map((one) => {
        const { timesBetter } = one;
        const times = timesBetter >= aMillion ? null : format.plain(timesBetter, 1);
        return say.cause({ mishap: mishap(one), times });
      })
      .join(say.orCause) || null;
  const among = ({ family, verdict }: Suspect) => {
    if (family === "whole log") return say.among.log;
    return verdict === "stands out" ? say.among.fill : say.among.fillAlone;
  };
  const judgedBy = ({
    family,
    inFill,
    inLog,
  }: Pick<CatchJudgement, "family" | "inFill" | "inLog">) =>
    format.pValue((family === "whole log" ? inLog : inFill)?.pValue ?? 1);

  return {
    ...say.labels,
    explanationNote: say.explanationNote({
      normal: format.percent(studied.convincing.normal, 0),
      heavyTails: format.percent(studied.convincing.heavyTails, 0),
    }),
    /** The one sentence about the newest fill. */
    sentence: (result: Outliers): string =>
      sentences(
        todaySentence(result, format, say),
        result.suspects.some(({ fill }) => fill === result.today.fill) ? say.nothingChanged : null,
      ),
    standardErrors: signed,
    suspect: (one: Suspect): string => {
      const { remark, influence } = one;
      return sentences(
        say.suspect({
          fill: one.fill,
          catch: one.catch,
          row: one.row,
          off: format.signedPercent(one.relativeResidual ?? 0),
          p: judgedBy(one),
          among: among(one),
          causes: causes(one),
          without: delivery(influence.without),
          change: format.signedPercent(influence.relativeChange),
        }),
        one.verdict === "set aside" ? say.catchSetAside : null,
        remark.checked === null ? null : say.checked(remark.checked),
        remarkWords(remark, say.remarks),
      );
    },
    pair: (pair: DisagreeingPair): string =>
      sentences(
        say.pair({
          fill: pair.fill,
          first: pair.catches[0],
          second: pair.catches[1],
          apart: format.percent(pair.relativeDifference),
          p: judgedBy(pair),
        }),
        pair.setAside ? say.fillSetAside : null,
        ...remarksWords(pair.remarks, say.remarks),
      ),
    explanation: mishap,
    withoutSuspects: ({ fill, withoutSuspects }: FillScreening): string | null =>
      withoutSuspects === null
        ? null
        : say.withoutSuspects({
            fill,
            without: delivery(withoutSuspects.without),
            range: format.estimateInterval(withoutSuspects.without, "delivery"),
            now: delivery(withoutSuspects.now),
          }),
    family: ({ tests, metersInLog, falseAlarms }: Outliers): string =>
      tests === 0
        ? say.noneTested
        : say.family({
            tests,
            otherMeters: metersInLog - 1,
            told: rate(falseAlarms.told),
            lookFirst: rate(falseAlarms.lookFirst),
            setAside: rate(falseAlarms.setAside),
            heavyTails: studiedRange(studied.flags.heavyTails, format),
            turnsSquared: studiedRange(studied.flags.turnsSquared, format),
          }),
    scatter: ({ scatter, today }: Outliers): string => {
      if (today.outsideDf === 0) return say.noneLent;
      const aside = scatter.setAside.map(say.catchOfFill);
      return sentences(
        say.lent({ df: numbered(today.outsideDf, format) }),
        aside.length === 0 ? say.noneAside : say.aside(format.list(aside)),
      );
    },
    unlikeScatter: ({ scatter: { homogeneity } }: Outliers): string | null =>
      homogeneity === null || homogeneity.pValue >= clearlyUnlike
        ? null
        : say.unlikeScatter({
            p: format.pValue(homogeneity.pValue),
            flagged: studiedRange(studied.flags.unlikeFills, format),
          }),
    named: ({ named: { grubbs, generalizedEsd, missing } }: FillScreening): string => {
      if (grubbs === null) return say.noGrubbs[missing.grubbs ?? "catches agree exactly"];
      return sentences(
        say.grubbs({
          statistic: format.fixed(grubbs.statistic, 2),
          limit: format.fixed(grubbs.criticalValue, 2),
          p: format.pValue(grubbs.pValue),
        }),
        generalizedEsd === null
          ? missing.generalizedEsd === "weights tie at the scale's step"
            ? say.esdTied
            : say.esdTooFew
          : say.esd({ outliers: generalizedEsd.outliers.length }),
      );
    },
    leftOut: ({ fill, catches, without, withThem, relativeChange }: LeftOutOfFill): string =>
      say.leftOut({
        fill,
        catches: format.list(catches.map(say.leftOutCatch)),
        withThem: delivery(withThem),
        without: delivery(without),
        change: format.signedPercent(relativeChange),
      }),
    chart: {
      ...say.chart,
      residualTitle: ({ bin }: Outliers) => say.residualTitle(bin),
      residualDescription: ({ catches, input, suspects }: Outliers) =>
        say.residualDescription({
          catches: catches.length,
          fills: input.fills,
          standing: suspects.length,
        }),
      influenceTitle: ({ bin, today }: Outliers) => say.influenceTitle({ bin, fill: today.fill }),
      influenceDescription: ({ today, options }: Outliers) =>
        say.influenceDescription({ fill: today.fill, level: rate(options.level) }),
      point: (one: CatchJudgement) =>
        say.point({
          fill: one.fill,
          catch: one.catch,
          off: format.signedPercent(one.relativeResidual ?? 0),
          standardErrors: signed(one.statistic ?? 0),
        }),
    },
    table: { ...say.table, caption: ({ today }: Outliers) => say.tableCaption(today.fill) },
  };
}

function todaySentence(
  { bin, product, today, pairs, suspects, disagree }: Outliers,
  format: Format,
  say: typeof templates,
): string {
  const { catches, status, fill } = today;
  const who = say.who({ bin, product, fill });
  if (status === "nothing to compare with") return say.agreeExactly(who);
  if (disagree?.by === "range")
    return say.oneIsWrong({ who, apart: format.percent(disagree.range) });
  if (status === "too few to judge")
    return catches === 1
      ? say.oneCatch(who)
      : say.tooFew({ who, catches, apart: format.percent(today.relativeRange) });
  if (pairs.some((pair) => pair.fill === fill)) return say.twoDisagree(who);
  const standing = suspects.filter((one) => one.fill === fill).length;
  if (standing > 0) return say.standOut({ who, standing, catches });
  return catches === 2 ? say.twoAgree(who) : say.noneStandsOut({ who, catches });
}
