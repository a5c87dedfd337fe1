import { useSignal } from "@preact/signals";
import type { BinAnswer } from "../answer.ts";
import { goTo } from "../route.ts";
import type { Session } from "../session.ts";
import { Mark } from "./mark.tsx";

interface Props {
  readonly session: Session;
  readonly answer: BinAnswer;
}

/** What to do now, the figure to set, how far off it may be, and the strongest reason: always in sight. */
export function Answer({ session, answer }: Props) {
  const { page } = session.words.value;
  const { bin } = answer;
  return (
    <>
      <p class="where">
        <span>{page.fill(bin.product, bin.fill)}</span>
        <button type="button" class="link" onClick={() => goTo({ is: "rename" })}>
          {page.ofBin}
        </button>
      </p>
      {answer.answers === null ? (
        <Planned session={session} answer={answer} />
      ) : (
        <Decided session={session} answer={answer} />
      )}
    </>
  );
}

function Planned({ session, answer: { plan, catches } }: Props) {
  const { page, catchesNeeded: say } = session.words.value;
  return (
    <>
      <div class="now neutral">
        <p class="action" aria-live="polite">
          <Mark tone="neutral" action={null} />
          <span>{catches.length > 0 ? page.nothingCounts : page.nothingTyped}</span>
        </p>
      </div>
      {plan === null ? null : (
        <Reason
          text={[say.sentence(plan), say.basis(plan)].filter((one) => one !== null).join(" ")}
        />
      )}
    </>
  );
}

function Decided({ session, answer }: Props) {
  const { answers } = answer;
  const lines = session.linesOf(answer);
  if (answers === null || lines === null) return null;
  const [first] = [...lines.why, lines.sure].filter((line) => line !== null);
  return (
    <>
      <div class={`now ${lines.tone}`}>
        <p class="action" aria-live="polite">
          <Mark tone={lines.tone} action={answers.decision?.action ?? null} />
          <span>{lines.action}</span>
        </p>
        <Figures session={session} answers={answers} />
      </div>
      {first === undefined ? null : <Reason key={first} text={first} />}
    </>
  );
}

/** The strongest reason: the beginning of it, so that the keys stay under the thumb, and all of it for a tap. */
function Reason({ text }: { readonly text: string }) {
  const open = useSignal(false);
  return (
    <button
      type="button"
      class={open.value ? "reason" : "reason short"}
      aria-expanded={open.value}
      onClick={() => {
        open.value = !open.value;
      }}
    >
      <span>{text}</span>
    </button>
  );
}

/** How sure it is and what lies behind it, under what is typed: the keys keep their place. */
export function Beneath({ session, answer }: Props) {
  const words = session.words.value;
  const { answers } = answer;
  const lines = session.linesOf(answer);
  if (answers === null || lines === null) return null;
  const said = [
    lines.why.length === 0 ? null : lines.sure,
    words.delivery.twoLines(answers.delivery),
    lines.doNotSkip,
  ].filter((line) => line !== null);
  if (said.length === 0) return null;
  return (
    <div class="told">
      {said.map((line) => (
        <p key={line}>{line}</p>
      ))}
    </div>
  );
}

/** The three numbers that are on the screen at any time. */
function Figures({
  session,
  answers: { delivery, catchesNeeded },
}: {
  readonly session: Session;
  readonly answers: NonNullable<BinAnswer["answers"]>;
}) {
  const words = session.words.value;
  const { page, format } = words;
  const next = catchesNeeded?.curve.points.find(({ further }) => further === 1)?.halfWidth ?? null;
  return (
    <dl class="figures">
      <div>
        <dt>{page.figures.delivery}</dt>
        <dd>{words.delivery.value(delivery)}</dd>
      </div>
      <div>
        <dt>{page.figures.error}</dt>
        <dd>{words.delivery.plusMinus(delivery) ?? <Unknown words={page.unknown} />}</dd>
      </div>
      <div>
        <dt>{page.figures.next}</dt>
        <dd>{next === null ? <Unknown words={page.unknown} /> : format.plusMinus(next)}</dd>
      </div>
    </dl>
  );
}

/** A stroke for the eye, which has little room; the words for who hears it. */
function Unknown({ words }: { readonly words: string }) {
  return (
    <>
      <span aria-hidden="true">–</span>
      <span class="unseen">{words}</span>
    </>
  );
}
