import type { MeterAnswers } from "../../../src/analysis/analyse.ts";
import type { Decision } from "../../../src/analysis/decision.ts";
import type { Caution } from "../../../src/results/caution.ts";
import type { Said, Surfaces } from "./surfaces.ts";

/** Everything in which the surfaces of one bin do not speak with one voice; empty when they do. */
export function disagreements({ answers, said }: Surfaces): readonly string[] {
  return [
    ...said.flatMap((one) => [
      ...inLines(one),
      ...inCounts(one, answers.decision),
      ...inOrders(one, answers.decision),
    ]),
    ...inAction(answers),
    ...inCaps(answers),
    ...inFigures(answers),
  ];
}

/** The action is the same line on terminal, table, card and section. */
function inLines({ language, terminal, table, card, section }: Said): string[] {
  const [action = ""] = card.split("\n");
  const wrong = [
    ...(terminal.split("\n")[0]?.endsWith(action) ? [] : ["terminal"]),
    ...(table.includes(action) ? [] : ["table"]),
    ...(section.startsWith(action) ? [] : ["section"]),
    ...(card
      .split("\n")
      .slice(1)
      .every((line) => terminal.includes(line))
      ? []
      : ["reasons"]),
  ];
  return wrong.map((surface) => `${language}: ${surface} does not say "${action}"`);
}

const advice = {
  en: /(\d+|One) more catch(?:es)? of ([\d.,]+) turns/g,
  de: /(?:(\d+) weitere Proben?|Noch (eine) Probe) mit ([\d.,]+) Umdrehung/g,
} as const;

/** Every count of further catches, wherever it stands, is the decision's. */
function inCounts(said: Said, decision: Decision | null): string[] {
  const texts = [said.terminal, said.card, said.section, said.everything];
  return texts.flatMap((text) =>
    countsIn(text, said.language)
      .filter(
        ({ further, turns }) =>
          further !== decision?.catches?.further || turns !== round(decision.catches.turns),
      )
      .map(({ further, turns }) => `${said.language}: advises ${further} of ${turns} turns`),
  );
}

const orderToSet = { en: /Set the drive/, de: /Stellen Sie den Antrieb/ } as const;

/** No sentence orders the drive to be set while the decision asks for something else first. */
function inOrders({ language, everything }: Said, decision: Decision | null): string[] {
  if (decision === null || decision.action === "set") return [];
  return orderToSet[language].test(everything)
    ? [`${language}: orders to set over ${decision.action}`]
    : [];
}

function countsIn(text: string, language: Said["language"]) {
  return [...text.replaceAll("\u00a0", " ").matchAll(advice[language])].map((match) => {
    const [count, turns] =
      language === "en" ? [match[1], match[2]] : [match[1] ?? match[2], match[3]];
    return {
      further: count === "One" || count === "eine" ? 1 : Number(count),
      turns: Number(turns?.replace(",", ".")),
    };
  });
}

/** Turns are said with three digits. */
function round(turns: number): number {
  return Number(turns.toPrecision(3));
}

const strength = { "look-first": 2, "catch-more": 1, set: 0 } as const;

/** The action is never milder than the strongest open ask. */
function inAction({ decision, delivery, cautions, answered }: MeterAnswers): string[] {
  if (decision === null) return [];
  const open = cautions.filter(
    (found) => isHere(found, delivery) && !answered.some(({ code }) => code === found.code),
  );
  return open
    .filter(({ asks }) => asks === "look-first" || asks === "catch-more")
    .filter(({ asks }) => strength[asks as "look-first"] > strength[decision.action])
    .map(({ code }) => `${decision.action} over ${code}`);
}

function isHere({ where }: Caution, { fill }: MeterAnswers["delivery"]): boolean {
  return where.fill === null || where.fill === fill;
}

const mostCatches = 8;
const usualHeaviestKg = 20;

/** No advice beyond eight catches of a fill, or heavier than 20 kg and the heaviest of the log. */
function inCaps({ decision, delivery, catchesNeeded }: MeterAnswers): string[] {
  if (decision?.catches == null || catchesNeeded === null) return [];
  const { further, turns } = decision.catches;
  const made = catchesNeeded.input.catches;
  const heaviest = Math.max(usualHeaviestKg, catchesNeeded.basis.heaviestCatch.kg);
  return [
    ...(made + further > mostCatches ? [`${made} + ${further} catches`] : []),
    ...(turns > 1 && turns * delivery.estimate.value > heaviest * 1.0001
      ? [`a catch of ${turns} turns is too heavy`]
      : []),
  ];
}

/** No delivery below zero, no figure that is no number, and one half-width for one fill. */
function inFigures(answers: MeterAnswers): string[] {
  const { delivery, catchesNeeded, decision } = answers;
  const { interval } = delivery.estimate;
  const wrong: string[] = [];
  if ((interval?.lower ?? 0) < 0) wrong.push(`delivery from ${interval?.lower}`);
  if (
    catchesNeeded !== null &&
    catchesNeeded.fill === delivery.fill &&
    catchesNeeded.halfWidth !== delivery.halfWidth
  )
    wrong.push(`half-width ${catchesNeeded.halfWidth} beside ${delivery.halfWidth}`);
  if (decision?.action === "set" && delivery.halfWidth === null) wrong.push("set without a band");
  const text = JSON.stringify(answers);
  if (/NaN|Infinity/.test(text)) wrong.push("a figure that is no number");
  return wrong;
}
