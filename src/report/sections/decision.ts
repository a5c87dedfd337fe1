import type { Analysis, DecidedBin } from "../../analysis/analyse.ts";
import { causesToFind, type Decision, reasonsEnough } from "../../analysis/decision.ts";
import { type Caution, type CautionCode, endingsOf, isAbout } from "../../results/caution.ts";
import type { DecisionWords } from "../../wording/sayings/decision.ts";
import type { PageWords } from "../../wording/words.ts";
import type { Tone } from "../document.ts";
import { cautionSentence } from "./cautions.ts";

/** The decision about one bin in words: every surface takes its lines from here. */
export interface DecisionLines {
  /** One or two words: set, catch more, look first. */
  readonly mark: string;
  readonly tone: Tone;
  /** The one line to act on. */
  readonly action: string;
  /** How sure it is. */
  readonly sure: string | null;
  /** Why, and what ends it; the serious findings in full. */
  readonly why: readonly string[];
  /** What label or law sets, wherever somebody might skip or set; null: nothing. */
  readonly doNotSkip: string | null;
}

/**
 * What the decision about one bin is in words: the mark, the line to act on, how sure it is, and why.
 *
 * @param answers   of one bin and product, from an analysis
 * @param analysis  for findings about the file, and where the tolerance comes from
 */
export function decisionLines(
  answers: DecidedBin,
  analysis: Pick<Analysis, "cautions" | "toleranceFrom">,
  words: Pick<PageWords, "cautions" | "catchesNeeded" | "decision" | "delivery" | "lawful">,
): DecisionLines {
  const say = words.decision;
  const { decision, setting } = answers;
  if (decision === null)
    return {
      mark: say.notInTheBin,
      tone: "neutral",
      action: say.notInTheBin,
      sure: null,
      why: [say.notInTheBinSentence],
      doNotSkip: null,
    };
  const findings = findingsOf(decision, answers, analysis.cautions);
  const isLook = decision.action === "look-first";
  const isOne = findings.filter((found) => catchOf(found) !== null).length === 1;
  const told = isLook && isOne ? findings[0] : null;
  return {
    mark: say.marks[decision.action],
    tone: toneOf(decision, findings),
    action: actionWords(decision, findings, words.delivery.value(answers.delivery), say),
    sure: sureWords(answers, decision, analysis.toleranceFrom, words),
    why: [
      ...worthWords(answers, decision, words),
      // One finding may come from several questions.
      ...new Set(findings.map((found) => whyWords(found, isLook, found === told, words))),
      ...answers.answered.flatMap((one) =>
        answeredWords(one, hereOf(answers, analysis.cautions), words),
      ),
    ],
    doNotSkip: setting === null ? null : words.lawful.doNotSkip(setting),
  };
}

/** The findings that made the decision, and the serious ones beside it, each with its sentence once. */
function findingsOf(
  { reasons, also }: Decision,
  answers: DecidedBin,
  ofFile: readonly Caution[],
): readonly Caution[] {
  const here = hereOf(answers, ofFile);
  const of = (codes: readonly CautionCode[], grave: boolean) =>
    codes.flatMap((code) =>
      here.filter((found) => found.code === code && (!grave || found.severity === "serious")),
    );
  const told = of(reasons, false).filter(({ code }) => !reasonsEnough.includes(code));
  return [...told, ...of(also, true)];
}

/** What was found of the fill in the bin, by its answers and in the file. */
function hereOf(
  { cautions, delivery }: DecidedBin,
  ofFile: readonly Caution[],
): readonly Caution[] {
  return [...ofFile, ...cautions].filter((found) => isAbout(found, delivery));
}

/** Green only where nothing is left to say against it. */
function toneOf({ action, reasons }: Decision, findings: readonly Caution[]): Tone {
  if (action === "look-first") return "problem";
  const clean = reasons.every((code) => reasonsEnough.includes(code)) && findings.length === 0;
  return action === "set" && clean ? "fine" : "attention";
}

function actionWords(
  { action, catches, setting, reasons }: Decision,
  findings: readonly Caution[],
  delivery: string,
  say: DecisionWords,
): string {
  if (action === "look-first") return say.lookFirst(lookWords(findings, say));
  if (action === "catch-more" && catches !== null) return say.catchMore(catches);
  if (setting === null) return say.marks[action];
  const toSet = say.set(setting, delivery);
  return reasons.some((code) => causesToFind.includes(code))
    ? `${toSet}. ${say.lookForCause}`
    : toSet;
}

function lookWords([first]: readonly Caution[], { looks, lookAtCatches }: DecisionWords): string {
  if (first === undefined || !(lookedAtAs(first) in looks)) return lookAtCatches;
  const look = looks[lookedAtAs(first) as keyof typeof looks] as (
    facts: Caution["facts"],
    where: Caution["where"],
  ) => string;
  return look(first.facts, first.where);
}

/** A catch that may be wrong is asked about as one that is, where no further catch may show it. */
function lookedAtAs({ code }: Caution): CautionCode {
  return code === "catch-stands-out" ? "suspect-catch" : code;
}

function sureWords(
  { delivery, catchesNeeded }: DecidedBin,
  { action, catches }: Decision,
  toleranceFrom: Analysis["toleranceFrom"],
  words: Pick<PageWords, "decision" | "delivery">,
): string | null {
  const say = words.decision;
  const value = words.delivery.value(delivery);
  const { halfWidth, options } = delivery;
  if (halfWidth === null) return say.noBand(value);
  if (action !== "set" && catches !== null && catchesNeeded?.needed != null)
    return `${say.soFar(value, halfWidth)} ${say.number(catchesNeeded.needed, catchesNeeded.decides)}`;
  if (action !== "set") return say.soFar(value, halfWidth);
  const stated = catchesNeeded?.statedHalfWidth ?? null;
  if (stated !== null && stated > options.tolerance)
    return say.goodToBeyondDefault(value, stated, options.tolerance);
  if (stated !== null)
    return toleranceFrom === "default"
      ? say.withinDefault(value, stated, halfWidth)
      : say.within(value, stated, halfWidth);
  return halfWidth > options.tolerance
    ? say.goodTo(value, halfWidth, options.tolerance)
    : say.goodToBand(value, halfWidth);
}

/** What another catch is worth, where it bears on what is to be done; as a reason of its own it is told with the others. */
function worthWords(
  { catchesNeeded }: DecidedBin,
  { action }: Decision,
  words: Pick<PageWords, "catchesNeeded" | "decision">,
): readonly string[] {
  if (catchesNeeded === null) return [];
  const { decides, standing } = catchesNeeded;
  if (action !== (standing === "short" ? "catch-more" : "set")) return [];
  if (decides === "tolerance")
    return [words.catchesNeeded.worth(catchesNeeded)].flatMap((one) => one ?? []);
  const spared = words.catchesNeeded.inMoney(catchesNeeded);
  return action === "set" && spared !== null ? [words.decision.go(spared)] : [];
}

/** @param isTold  whether the line to act on has said which catch it is */
function whyWords(
  found: Caution,
  isLook: boolean,
  isTold: boolean,
  words: Pick<PageWords, "cautions" | "decision">,
): string {
  const sentence = cautionSentence(found, words);
  const number = isTold ? null : catchOf(found);
  const named = number === null ? sentence : words.decision.ofCatch(number, sentence);
  const endings = endingsOf(isLook ? lookedAtAs(found) : found.code);
  return endings.length === 0 ? named : `${named} ${words.decision.ends(endings)}`;
}

/** The one catch that a finding is about; null: more than one, none, or the fill as a whole. */
function catchOf({ code, where: { catches } }: Caution): number | null {
  const [first = null, ...others] = catches;
  return others.length === 0 && code !== "more-than-can-be-told" ? first : null;
}

function answeredWords(
  one: DecidedBin["answered"][number],
  here: readonly Caution[],
  words: Pick<PageWords, "cautions" | "decision">,
): readonly string[] {
  const found = here.find(({ code }) => code === one.code);
  return found === undefined ? [] : [words.decision.answered(one, cautionSentence(found, words))];
}
