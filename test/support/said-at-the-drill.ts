import type { Setup } from "../../src/data/setup.ts";
import { answersOf, costOf } from "../../src/page/app/answer.ts";
import type { PageLog } from "../../src/page/app/log.ts";
import { sentencesOf } from "../../src/page/app/views/said.tsx";
import { cautionSentence } from "../../src/report/sections/cautions.ts";
import { decisionLines } from "../../src/report/sections/decision.ts";
import { type PageLanguage, pageWordsIn } from "../../src/wording/words.ts";

/** Whatever a log and a setup bring a page to say, bin by bin, in the words it carries. */
export function saidAtTheDrill(
  log: PageLog,
  setup: Setup | null,
  language: PageLanguage,
): readonly unknown[] {
  const words = pageWordsIn(language, "metric");
  const answers = answersOf(log, setup);
  const { grounds } = answers;
  return log.bins.map((bin) => {
    const { answers: decided, plan } = answers.of(bin);
    if (decided === null || grounds === null)
      return plan === null
        ? null
        : [words.catchesNeeded.sentence(plan), words.catchesNeeded.basis(plan)];
    const lines = decisionLines(decided, grounds, words);
    return [
      lines,
      words.delivery.twoLines(decided.delivery),
      words.delivery.value(decided.delivery),
      words.delivery.plusMinus(decided.delivery),
      sentencesOf(decided, lines, costOf(bin, answers), words),
      [...grounds.cautions, ...decided.cautions].map((one) => cautionSentence(one, words)),
    ];
  });
}
