import type { DriftPower } from "../../questions/drift/rates.ts";
import type { DriftStep } from "../../questions/drift/verdict.ts";
import type { Drift, DriftStretch } from "../../questions/drift.ts";
import type { Interval } from "../../results/estimate.ts";
import { driftCharts } from "../en/drift-charts.ts";
import { driftDetail } from "../en/drift-detail.ts";
import type { Format } from "../format.ts";
import { driftChartsSayings } from "../sayings/drift-charts.ts";
import { driftDetailSayings } from "../sayings/drift-detail.ts";
import { catchWords, earlierFillWords, fillWords } from "./counted.ts";

export type DriftWords = ReturnType<typeof englishDrift>;

/** Everything said about whether a meter has moved over its fills. */
export function englishDrift(format: Format) {
  return {
    heading: "Has the meter moved?",
    sentence: (result: Drift) =>
      `Bin ${result.bin} (${result.product}): ${finding(result, format)}`,
    verdicts: {
      "not asked": "not asked",
      "too few fills": "too few fills",
      steady: "steady so far",
      "fill differs": "newest fill differs",
      "fill differs, confirmed": "newest fill differs, confirmed",
      "stood apart": "steady but for one fill",
      moved: "moved",
      trending: "trend or slow wander",
    } satisfies Record<Drift["verdict"], string>,
    step: (step: DriftStep, result: Drift) => steps(result, format)[step],
    next: "What to do",
    falseAlarms: (result: Drift) => falseAlarmSentence(result, format),
    limits: (result: Drift): string =>
      `The levels drawn come from the fills themselves and say what is usual for this meter; the tolerance lines (± ${rounded(result.options.tolerance, format)} about ${format.value(result.toleranceLines.center, "delivery")}) come from what is wanted. A fill can be usual and still off, or unusual and still good enough.`,
    detail: "How this was judged",
    ...driftDetailSayings(format, driftDetail),
    ...driftChartsSayings(format, driftCharts),
    table: {
      caption: "Fills in order of time, and what was decided when each came",
      fill: "Fill",
      date: "Date",
      catches: "Catches",
      delivery: (unit: string) => `Delivery (${unit})`,
      pValue: "p against its level",
      evidence: "Evidence of a lasting shift (limit)",
      remark: "Remark",
      outcomes: {
        "too few": null,
        steady: null,
        differs: "differs",
        moved: "change found",
        trending: "trending",
      } satisfies Record<NonNullable<Drift["fills"][number]["step"]>["outcome"], string | null>,
      apart: "stood apart, left out",
      begins: {
        log: null,
        moved: "new level from here",
        setup: "starts afresh, by the setup",
        unsettled: "differed, never settled",
      } satisfies Record<DriftStretch["begins"], string | null>,
      missing: (count: number) =>
        count === 1 ? "one fill missing before it" : `${count} fills missing before it`,
      pause: (days: number) => `${format.count(Math.round(days))} days after the one before`,
    },
  };
}

function finding(result: Drift, format: Format): string {
  switch (result.verdict) {
    case "not asked":
      return "whether the meter has moved was not asked of these fills.";
    case "too few fills":
      return `${fillWords(result.input.fillsInForce)} so far${afresh(result)}; whether the meter has moved can be told from the fourth fill on.`;
    case "steady":
      return steadySentence(result, format);
    case "fill differs":
    case "fill differs, confirmed":
      return differsSentence(result, format);
    case "stood apart":
      return apartSentence(result, format);
    case "moved":
      return movedSentence(result, format);
    case "trending":
      return trendSentence(result, format);
  }
}

function afresh({ stretches }: Drift): string {
  const inForce = stretches.at(-1);
  return inForce?.begins === "setup" ? ` since it starts afresh with fill ${inForce.from}` : "";
}

function steadySentence(result: Drift, format: Format): string {
  const { input, changes, stretches } = result;
  const [change, inForce] = [changes.at(-1), stretches.at(-1)];
  const over = `steady so far, over ${fillWords(input.fillsInForce)}${afresh(result)}`;
  if (inForce?.begins === "moved" && change !== undefined)
    return `${over} since fill ${change.since.fill}, when it changed by ${format.signedPercent(change.size.value)}.`;
  return `${over}.${powerSentence(result, format)}`;
}

function powerSentence({ power }: Drift, format: Format): string {
  if (power === null) return "";
  return ` A lasting shift of ${rounded(power.shift, format)} since fill ${power.sinceFill} would have shown by now in ${logs(power)}.`;
}

const tenths = 10;

/** "about 6 of 10 such logs": nobody knows such a chance more closely. */
function logs({ chance, bound }: DriftPower): string {
  const round = { about: Math.round, "at least": Math.floor, "at most": Math.ceil }[bound];
  const count = round(tenths * chance);
  if (count === 0) return "hardly any such log";
  return count === tenths ? "nearly every such log" : `${bound} ${count} of ${tenths} such logs`;
}

function differsSentence({ differs }: Drift, format: Format): string {
  if (differs === null) return "";
  const { fill, difference, earlierFills, catches, pValue, limit, confirmed } = differs;
  const earlier = `than ${earlierFillWords(earlierFills)}`;
  const size = change(difference.value, format);
  return confirmed
    ? `fill ${fill} delivers ${size} ${earlier}, confirmed by ${catchWords(catches)}.`
    : `fill ${fill} stands apart: it delivers ${size} ${earlier} (${format.pValue(pValue)}). One clean fill in ${Math.round(1 / limit)} does that.`;
}

function apartSentence(result: Drift, format: Format): string {
  const odd = result.stoodApart.at(-1);
  if (odd === undefined) return "";
  const { fill, difference, backWith } = odd;
  return `fill ${fill} was the odd one (${change(difference, format)}); fill ${backWith} is back. Fill ${fill} is left out of the mean and of the spread.${powerSentence(result, format)}`;
}

function movedSentence({ moved, options }: Drift, format: Format): string {
  if (moved === null) return "";
  const { since, size } = moved;
  const on = since.takenAt === null ? "" : ` (${format.date(since.takenAt)})`;
  const range = signedRange(size.interval, format);
  const interval = range === null ? "" : `, ${format.percent(options.level, 0)} interval ${range}`;
  return `this meter has given about ${change(size.value, format)} since fill ${since.fill}${on}${interval}.`;
}

function trendSentence({ trending, options }: Drift, format: Format): string {
  if (trending === null) return "";
  const { value, interval } = trending.perFill;
  const range = signedRange(interval, format);
  const size = range === null ? "" : `, ${format.percent(options.level, 0)} interval ${range}`;
  return `each fill gives ${value < 0 ? "less" : "more"} than the last, about ${format.percent(Math.abs(value))} a fill over ${fillWords(trending.fills)}${size}: a trend or a slow wander. Earlier fills no longer tell the next.`;
}

function steps({ moved, differs }: Drift, format: Format): Record<DriftStep, string> {
  const level =
    moved === null
      ? ""
      : ` Since fill ${moved.since.fill} the fills average ${format.value(moved.after, "delivery")}.`;
  const confirm =
    differs === null
      ? ""
      : ` With ${catchWords(differs.catchesToConfirm)} or more in all, none of them doubtful, the fill counts as it stands.`;
  return {
    "collect fills": "Keep the log going: every fill counts, even with one or two catches.",
    "carry on": "Carry on as before.",
    "catch again": `Catch again in this fill before anything is turned.${confirm}`,
    "catch every fill": "Catch every fill and set the drive from its own catches.",
    "set by this fill": `Today's value is the one that counts.${level}`,
    "look for the cause":
      "Look for the cause: wear, build-up or moisture at the meter, a changed setting, another lot of the product, a drive that slips.",
  };
}

function falseAlarmSentence({ falseAlarms, verdict, power }: Drift, format: Format): string | null {
  if (verdict === "not asked") return null;
  const { fills, season, alike } = falseAlarms;
  const basis =
    power === null
      ? ""
      : ` What would have shown by now rests on a typical spread of ${format.percent(power.relativeSpread)} between this meter's fills.`;
  return `Asked after every fill, a steady meter is called moved or different once in ${Math.round(1 / season)} seasons of ${fills} fills; more often if fills drift slowly by themselves (one in ${Math.round(1 / alike.season)} at a likeness of ${format.plain(alike.correlation)} from fill to fill).${basis}`;
}

/** A percentage that somebody chose, without digits that nobody gave it: 5 %, 2.5 %. */
function rounded(fraction: number, format: Format): string {
  const isWhole = Math.abs(100 * fraction - Math.round(100 * fraction)) < 1e-9;
  return format.percent(fraction, isWhole ? 0 : 1);
}

/** "5.2 % less". */
function change(relative: number, format: Format): string {
  return `${format.percent(Math.abs(relative))} ${relative < 0 ? "less" : "more"}`;
}

function signedRange(interval: Interval | null, format: Format): string | null {
  if (interval?.lower == null || interval.upper === null) return null;
  return `${format.signedPercent(interval.lower)} to ${format.signedPercent(interval.upper)}`;
}
