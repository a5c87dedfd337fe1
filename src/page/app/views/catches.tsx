import type { BinAnswer } from "../answer.ts";
import { massIn, type PageRow } from "../cells.ts";
import { written } from "../decimal.ts";
import { goTo } from "../route.ts";
import type { Session } from "../session.ts";
import { findingsAt } from "./findings.ts";

/** The catches of the fill, the last one first; each opens to be changed. A flag stands at the catch. */
export function Catches({
  session,
  answer,
}: {
  readonly session: Session;
  readonly answer: BinAnswer;
}) {
  const { page } = session.words.value;
  return (
    <section class="catches">
      <h2>{page.catches}</h2>
      {answer.catches.length === 0 ? <p class="quiet">{page.noCatches}</p> : null}
      <ul>
        {[...answer.catches].reverse().map((row) => (
          <li key={row.id}>
            <CatchLine session={session} answer={answer} row={row} />
          </li>
        ))}
      </ul>
    </section>
  );
}

function CatchLine({
  session,
  answer,
  row,
}: {
  readonly session: Session;
  readonly answer: BinAnswer;
  readonly row: PageRow;
}) {
  const { page } = session.words.value;
  const { cells } = row;
  const figure = (text: string) => written(text, session.mark.value);
  const mass = massIn(cells, "gross") ?? massIn(cells, "net");
  const out = cells.exclude !== undefined;
  const flagged = findingsAt(answer, row).some(({ asks }) => asks === "look-first");
  return (
    <button
      type="button"
      class={out ? "out" : flagged ? "flagged" : ""}
      onClick={() => goTo({ is: "catch", row: row.id })}
    >
      <strong>{page.catchOf(cells.catch ?? "")}</strong>
      <span>{page.catchTurns(figure(cells.turns ?? ""))}</span>
      <span class="mass">{mass === null ? "" : `${figure(mass.text)}\u00a0${mass.unit}`}</span>
      {out ? <em>{page.leftOut}</em> : flagged ? <em>{page.look}</em> : <em />}
      <span aria-hidden="true">›</span>
    </button>
  );
}
