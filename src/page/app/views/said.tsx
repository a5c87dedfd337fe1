import type { DecidedBin } from "../../../analysis/decided-bin.ts";
import type { Cost } from "../../../questions/cost.ts";
import type { DecisionLines } from "../../../report/sections/decision.ts";
import type { PageWords } from "../../../wording/words.ts";
import type { SaidAnswer } from "../answering.ts";
import type { Session } from "../session.ts";

/** Every sentence about the fill, folded. */
export function Said({
  session,
  said: { answer, lines },
}: {
  readonly session: Session;
  readonly said: SaidAnswer;
}) {
  const { answers } = answer;
  const words = session.words.value;
  if (answers === null || lines === null) return null;
  const said = sentencesOf(answers, lines, session.costOf(answer), words);
  return (
    <details class="said">
      <summary>{words.page.said}</summary>
      {said.map((sentence) => (
        <p key={sentence}>{sentence}</p>
      ))}
    </details>
  );
}

/** Each sentence once. */
export function sentencesOf(
  { delivery, catchesNeeded, setting, decision }: DecidedBin,
  { why }: DecisionLines,
  cost: Cost | null,
  words: PageWords,
): readonly string[] {
  const said = [
    ...why.slice(1),
    words.delivery.sentence(delivery),
    words.delivery.hull(delivery),
    words.delivery.scatter(delivery),
    setting === null ? null : words.setting.sentence(setting),
    catchesNeeded === null ? null : words.catchesNeeded.sentence(catchesNeeded, decision?.action),
    catchesNeeded === null ? null : words.catchesNeeded.rule(catchesNeeded),
    cost === null || cost.cheapest === null ? null : words.cost.sentence(cost),
  ];
  return [...new Set(said)].filter((sentence) => sentence !== null);
}
