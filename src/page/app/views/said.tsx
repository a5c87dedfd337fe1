import type { BinAnswer } from "../answer.ts";
import type { Session } from "../session.ts";

/** Every sentence about the fill, folded. */
export function Said({
  session,
  answer,
}: {
  readonly session: Session;
  readonly answer: BinAnswer;
}) {
  const { answers } = answer;
  const words = session.words.value;
  const lines = session.linesOf(answer);
  if (answers === null || lines === null) return null;
  const { delivery, catchesNeeded, setting } = answers;
  const cost = session.costOf(answer);
  const said = [
    ...lines.why.slice(1),
    words.delivery.sentence(delivery),
    words.delivery.hull(delivery),
    words.delivery.scatter(delivery),
    setting === null ? null : words.setting.sentence(setting),
    catchesNeeded === null
      ? null
      : words.catchesNeeded.sentence(catchesNeeded, answers.decision?.action),
    catchesNeeded === null ? null : words.catchesNeeded.rule(catchesNeeded),
    cost === null || cost.cheapest === null ? null : words.cost.sentence(cost),
  ];
  return (
    <details class="said">
      <summary>{words.page.said}</summary>
      {[...new Set(said)].map((sentence) =>
        sentence === null ? null : <p key={sentence}>{sentence}</p>,
      )}
    </details>
  );
}
