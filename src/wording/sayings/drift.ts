import type { FoundChange } from "../../model/history-findings.ts";
import type { DriftPower, FalseAlarms, LogFalseAlarms } from "../../questions/drift/rates.ts";
import type { DriftStep } from "../../questions/drift/verdict.ts";
import type { Drift } from "../../questions/drift.ts";
import type { Estimate } from "../../results/estimate.ts";
import { studied } from "../../results/studied.ts";
import type { drift as templates } from "../en/drift.ts";
import type { Format } from "../format.ts";
import { change } from "./change.ts";
import { driftChartsSayings } from "./drift-charts.ts";
import { driftDetailSayings } from "./drift-detail.ts";
import { otherMeters } from "./lenders.ts";
import { limits } from "./limits.ts";
import { oneIn } from "./one-in.ts";
import { sentences } from "./sentences.ts";

const tenths = 10;
const { cleanReports: clean } = studied;
const rounding = { about: Math.round, "at least": Math.floor };

/** Which sentences are said about whether a meter has moved over its fills. */
export function driftSayings(format: Format, say: typeof templates) {
  /** A percentage that somebody chose, without digits that nobody gave it: 5 %, 2.5 %. */
  const chosen = (fraction: number) => {
    const isWhole = Math.abs(100 * fraction - Math.round(100 * fraction)) < 1e-9;
    return format.percent(fraction, isWhole ? 0 : 1);
  };
  const sized = ({ value, interval }: Estimate, { options }: Drift) => ({
    ...change(value, format),
    level: format.percent(options.level, 0),
    range: limits(interval, format.signedPercent, format),
  });
  /** In tenths, because nobody knows such a chance more closely. */
  const logs = ({ chance, bound }: DriftPower): string | null => {
    const count = rounding[bound](tenths * chance);
    if (count === 0) return null;
    return count === tenths
      ? say.nearlyEveryLog
      : say.logs({ bound: say.bounds[bound], count, of: tenths });
  };
  const wouldHaveShown = ({ power }: Drift): string | null => {
    if (power === null) return null;
    const facts = { shift: chosen(power.shift), since: power.sinceFill };
    const shown = logs(power);
    return shown === null
      ? say.needNotHaveShown(facts)
      : say.wouldHaveShown({ ...facts, logs: shown });
  };
  const since = ({ since: { fill }, season }: FoundChange) => ({
    since: fill,
    season: season ?? null,
  });
  const who = ({ bin, product }: Drift) => ({ bin, product });
  const inForce = (result: Drift) => {
    const stretch = result.stretches.at(-1);
    const afresh = stretch?.begins === "setup" ? stretch.from : null;
    return { ...who(result), fills: result.input.fillsInForce, afresh };
  };
  const steady = (result: Drift): string => {
    const [found, stretch] = [result.changes.at(-1), result.stretches.at(-1)];
    if (stretch?.begins !== "moved" || found === undefined)
      return sentences(say.steady(inForce(result)), wouldHaveShown(result));
    const size = format.signedPercent(found.size.value);
    return say.steadySince({ ...inForce(result), ...since(found), size });
  };
  // Each of these verdicts comes with what was found; without it there is nothing to say.
  const differs = (result: Drift): string => {
    const found = result.differs;
    if (found === null) return "";
    const facts = { ...who(result), ...found, ...change(found.difference.value, format) };
    return found.confirmed
      ? say.differsConfirmed(facts)
      : say.differs({
          ...facts,
          p: format.pValue(found.pValue),
          oneIn: oneIn(found.limit, format),
        });
  };
  const stoodApart = (result: Drift): string => {
    const odd = result.stoodApart.at(-1);
    if (odd === undefined) return "";
    const facts = { ...who(result), ...odd, ...change(odd.difference, format) };
    return sentences(say.stoodApart(facts), wouldHaveShown(result));
  };
  const moved = (result: Drift): string => {
    if (result.moved === null) return "";
    const { takenAt } = result.moved.since;
    const date = takenAt === null ? null : format.date(takenAt);
    const when = { ...since(result.moved), date };
    return say.moved({ ...who(result), ...sized(result.moved.size, result), ...when });
  };
  const trending = (result: Drift): string => {
    if (result.trending === null) return "";
    const { perFill, fills } = result.trending;
    return say.trending({ ...who(result), ...sized(perFill, result), fills });
  };
  const alarms = ({ fills, season, alike, wilder }: FalseAlarms): string =>
    say.falseAlarms({
      fills,
      oneIn: oneIn(season, format),
      oneInAlike: oneIn(alike.season, format),
      correlation: format.plain(alike.correlation),
      wilder:
        wilder === null
          ? null
          : { oneIn: oneIn(wilder.season, format), times: format.plain(wilder.times) },
    });
  const restsOn = ({ relativeSpread, lentBy }: DriftPower): string =>
    say.restsOn({
      spread: format.percent(relativeSpread),
      lentBy:
        lentBy === null
          ? null
          : { fills: false, ...otherMeters(lentBy), assumed: lentBy.from === "assumption" },
    });

  return {
    ...say.labels,
    sentence: (result: Drift): string => {
      switch (result.verdict) {
        case "not asked":
          return say.notAsked(result);
        case "too few fills":
          return say.tooFewFills(inForce(result));
        case "steady":
          return steady(result);
        case "fill differs":
        case "fill differs, confirmed":
          return differs(result);
        case "stood apart":
          return stoodApart(result);
        case "moved":
          return moved(result);
        case "trending":
          return trending(result);
      }
    },
    step: (step: DriftStep, result: Drift): string =>
      sentences(
        say.steps[step],
        step === "catch again" && result.differs !== null
          ? say.standsWith(result.differs.catchesToConfirm)
          : null,
        step === "set by this fill" && result.moved !== null
          ? say.meanSince({
              since: result.moved.since.fill,
              mean: format.value(result.moved.after, "delivery"),
            })
          : null,
      ),
    falseAlarms: ({ falseAlarms, verdict, power }: Drift): string | null =>
      verdict === "not asked"
        ? null
        : sentences(alarms(falseAlarms), power === null ? null : restsOn(power)),
    falseAlarmsTogether: ({ meters, fills, season }: LogFalseAlarms): string =>
      sentences(
        say.falseAlarmsTogether({ meters, fills, oneIn: oneIn(season, format) }),
        say.cleanReports({ ...clean, oneIn: oneIn(clean.atMost, format) }),
      ),
    limits: ({ options, toleranceLines }: Drift): string =>
      say.limits({
        tolerance: chosen(options.tolerance),
        center: format.value(toleranceLines.center, "delivery"),
      }),
    table: {
      ...say.table,
      pause: (days: number) => say.pause(format.count(Math.round(days))),
    },
    ...driftDetailSayings(format, say.behind),
    ...driftChartsSayings(format, say.charts),
  };
}
