import type { SettlingTest } from "../../questions/drift/settling.ts";
import type { DriftStep } from "../../questions/drift/verdict.ts";
import type { Drift } from "../../questions/drift.ts";
import type { Interval } from "../../results/estimate.ts";
import type { Format } from "../format.ts";
import { degrees } from "./counted.ts";
import { englishDriftCharts } from "./drift-charts.ts";

export type DriftWords = ReturnType<typeof englishDrift>;

/** Everything said about whether a meter has moved over its fills. */
export function englishDrift(format: Format) {
  return {
    heading: "Has the meter moved?",
    sentence: (result: Drift) =>
      `Bin ${result.bin} (${result.product}): ${finding(result, format)}`,
    verdicts: {
      "too few fills": "too few fills",
      steady: "steady",
      "newest differs": "newest fill differs",
      moved: "moved",
      trending: "trend or slow wander",
    } satisfies Record<Drift["verdict"], string>,
    step: (step: DriftStep, result: Drift) => steps(result, format)[step],
    next: "What to do",
    power: (result: Drift) => powerSentence(result, format),
    falseAlarms: (result: Drift) => falseAlarmSentence(result, format),
    limits: (result: Drift): string =>
      `Two kinds of lines: the bands come from the fills themselves and say what is usual for this meter; the tolerance lines (± ${rounded(result.options.tolerance, format)} about ${delivery(result.toleranceLines.center)}) come from what is wanted. A fill can be usual and still off, or unusual and still good enough.`,
    tests: (result: Drift) => testSentences(result, format),
    byName: (result: Drift) => byNameSentences(result, format),
    settling: (result: Drift) => settlingSentences(result, format),
    detail: "How this was judged",
    ...englishDriftCharts(format),
    table: {
      caption: "Fills in order of time",
      fill: "Fill",
      date: "Date",
      catches: "Catches",
      delivery: (unit: string) => `Delivery (${unit})`,
      expected: (unit: string) => `Expected from earlier fills (${unit})`,
      pValue: "p",
      remark: "Remark",
      outside: "outside its band",
      notJudged: "before the product change",
      missing: (count: number) =>
        count === 1 ? "one fill missing before it" : `${count} fills missing before it`,
      pause: (days: number) => `${format.count(Math.round(days))} days after the one before`,
      notKnown: "",
    },
  };

  function delivery(value: number): string {
    return format.value(value, "delivery");
  }
}

function finding(result: Drift, format: Format): string {
  switch (result.verdict) {
    case "too few fills":
      return `${fillWords(result.input.fills)} so far; whether the meter has moved can be told from the fourth fill on.`;
    case "steady":
      return steadySentence(result, format);
    case "newest differs":
      return newestSentence(result, format);
    case "moved":
      return shiftSentence(result, format);
    case "trending":
      return trendSentence(result, format);
  }
}

function steadySentence(result: Drift, format: Format): string {
  const { newest, input } = result;
  const over = `no sign that the meter has moved over ${fillWords(input.fills)}`;
  if (newest === null) return `${over}.`;
  return `${over}; fill ${newest.fill} is ${distance(newest.difference.value, format)} the mean of those before it, within its band.`;
}

function newestSentence({ newest, options }: Drift, format: Format): string {
  if (newest === null) return "";
  const band = format.interval(newest.interval, "delivery", null);
  return `fill ${newest.fill} delivers ${change(newest.difference.value, format)} than the ${newest.earlierFills} fills before it, outside the band of ${band} in which it was expected. One clean fill in ${Math.round(1 / (1 - options.level))} does that, so catch again before anything is turned.`;
}

function shiftSentence({ shift, options }: Drift, format: Format): string {
  if (shift === null) return "";
  const { fill, takenAt, earliest, latest } = shift.since;
  const on = takenAt === null ? "" : ` (${format.date(takenAt)})`;
  const range = signedRange(shift.relativeSize.interval, format);
  const size = range === null ? "" : `, ${format.percent(options.level, 0)} interval ${range}`;
  const place =
    earliest === latest ? "" : ` It may have begun with any fill from ${earliest} to ${latest}.`;
  return `since fill ${fill}${on} the meter delivers ${change(shift.relativeSize.value, format)}${size}.${place}`;
}

function trendSentence({ trend, options, input }: Drift, format: Format): string {
  if (trend === null) return "";
  const { value, interval } = trend.relativePerFill;
  const range = signedRange(interval, format);
  const size = range === null ? "" : ` (${format.percent(options.level, 0)} interval ${range})`;
  return `the delivery ${value < 0 ? "falls" : "rises"} by ${format.percent(Math.abs(value))} from fill to fill${size} over ${fillWords(input.fills)}: a trend or a slow wander, which so few fills cannot tell apart.`;
}

function steps(result: Drift, format: Format): Record<DriftStep, string> {
  const { shift, newest } = result;
  const after =
    shift === null
      ? ""
      : ` Since the shift the fills average ${format.value(shift.after, "delivery")}.`;
  return {
    "collect fills": "Keep the log going: every fill counts, even with one or two catches.",
    "carry on": "Carry on as before.",
    "catch again":
      result.verdict === "trending"
        ? "Catch every fill and set the drive from its own catches; an average of earlier fills is out of date."
        : `Catch again in this fill${newest === null ? "" : ` ${newest.fill}`}. If the catches agree with the first ones, set the drive from them.`,
    recalibrate: `Do not plan by the whole season any more.${after} For the fill in the bin its own catches count.`,
    inspect:
      "Look for the cause: wear, build-up or moisture at the meter, a changed setting, another lot of the product, a drive that slips.",
  };
}

function powerSentence({ power, options }: Drift, format: Format): string | null {
  if (power === null) return null;
  const { chance, range, shift, relativeSpread } = power;
  return `A ${rounded(shift, format)} shift halfway would have been found in about ${format.percent(chance, 0)} of such seasons, with the spread of ${format.percent(relativeSpread)} between this meter's fills; as that spread is only known roughly, it may be ${format.percent(range.lower, 0)} to ${format.percent(range.upper, 0)} (${rounded(options.level, format)} interval of the spread).`;
}

function falseAlarmSentence({ falseAlarms, input }: Drift, format: Format): string | null {
  const { season, seasonAskedEveryFill, newestFill, eachFill } = falseAlarms;
  if (eachFill === null) return null;
  const newest = `The newest fill alone stands outside its band in ${rounded(newestFill, format)} of cases without reason; the bands drawn are wide enough (${format.percent(1 - eachFill, 1)} each) that all fills of a steady season stay inside in ${rounded(1 - season, format)} of seasons.`;
  if (seasonAskedEveryFill === null) return newest;
  return `False alarms: a steady meter is said to have moved or to trend in at most ${rounded(season, format)} of seasons of ${fillWords(input.fills)}, asked once at the end; asked after every fill, in about ${format.percent(seasonAskedEveryFill, 0)}. ${newest}`;
}

function testSentences({ trend, shift }: Drift, format: Format): readonly string[] {
  return [
    ...(trend === null
      ? []
      : [
          `Trend: slope ${format.signedPercent(trend.relativePerFill.value)} a fill, t = ${format.plain(trend.statistic)} on ${degrees(trend.df, format)}, ${format.pValue(trend.pValue)}, beside the shift ${format.pValue(trend.adjustedPValue)} (Holm).`,
        ]),
    ...(shift === null
      ? []
      : [
          `Shift: most likely at fill ${shift.since.fill}, ${format.signedPercent(shift.relativeSize.value)}, largest |t| over the splits ${format.plain(Math.abs(shift.statistic))} on ${degrees(shift.df, format)}, ${format.pValue(shift.pValue)}, beside the trend ${format.pValue(shift.adjustedPValue)} (Holm). The interval uses the critical value of that test, because the place was looked for.`,
        ]),
  ];
}

function byNameSentences({ byName }: Drift, format: Format): readonly string[] {
  if (byName === null) return [];
  const { mannKendall, theilSenPerFill, individuals } = byName;
  const { lower, upper, center, outside } = individuals;
  const limits = { lower, upper, level: 0, about: "next fill" } satisfies Interval;
  return [
    `Mann–Kendall: score ${format.count(mannKendall.score)}, ${format.pValue(mannKendall.pValue)} (${mannKendall.method === "exact" ? "exact" : "normal approximation"}). Theil–Sen slope ${format.signedPercent(theilSenPerFill / center)} a fill.`,
    `Individuals chart: control limits ${format.interval(limits, "delivery", null)} (mean ± 2.66 mean moving ranges); ${outside.length === 0 ? "no fill outside" : `outside: fill ${format.list(outside.map(String))}`}. With few fills this chart seldom finds a shift.`,
  ];
}

function settlingSentences({ settling }: Drift, format: Format): readonly string[] {
  return settling.map((test) => {
    const estimate = test.perCatch ?? test.emptyToFull;
    const size = estimate === null ? "" : format.signedPercent(estimate.value);
    const unit = test.perCatch === null ? "from an empty to a full bin" : "from catch to catch";
    return `${settlingHeads[test.scope]}: delivery ${size} ${unit}, t = ${format.plain(test.statistic)} on ${degrees(test.df, format)}, ${format.pValue(test.adjustedPValue)}${test.adjustedPValue === test.pValue ? "" : " (Holm)"}.`;
  });
}

const settlingHeads: Record<SettlingTest["scope"], string> = {
  "this fill": "Within this fill",
  "within fills": "Within fills",
  "between fills": "From fill to fill",
};

/** A percentage that somebody chose, without digits that nobody gave it: 5 %, 2.5 %. */
function rounded(fraction: number, format: Format): string {
  const isWhole = Math.abs(100 * fraction - Math.round(100 * fraction)) < 1e-9;
  return format.percent(fraction, isWhole ? 0 : 1);
}

/** "5.2 % less". */
function change(relative: number, format: Format): string {
  return `${format.percent(Math.abs(relative))} ${relative < 0 ? "less" : "more"}`;
}

/** "1.3 % below". */
function distance(relative: number, format: Format): string {
  return `${format.percent(Math.abs(relative))} ${relative < 0 ? "below" : "above"}`;
}

function signedRange(interval: Interval | null, format: Format): string | null {
  if (interval?.lower == null || interval.upper === null) return null;
  return `${format.signedPercent(interval.lower)} to ${format.signedPercent(interval.upper)}`;
}

function fillWords(fills: number): string {
  return fills === 1 ? "one fill" : `${fills} fills`;
}
