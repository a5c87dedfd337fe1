import { useSignal } from "@preact/signals";
import type { DataIssue } from "../../../errors/data-issue.ts";
import { cautionSentence } from "../../../report/sections/cautions.ts";
import type { Cells } from "../cells.ts";
import { plain, written } from "../decimal.ts";
import { close } from "../route.ts";
import type { Session } from "../session.ts";
import { Field } from "./field.tsx";
import { findingsAt } from "./findings.ts";
import { Panel } from "./panel.tsx";

const figures = /^(turns|net_|gross_|tare_)/;

/** One catch: its figures, why it is left out, what was looked at, a note; and what was found of it. */
export function CatchForm({
  session,
  row: id,
}: {
  readonly session: Session;
  readonly row: string;
}) {
  const words = session.words.value;
  const { page } = words;
  const row = session.log.value.rows.find((one) => one.id === id);
  const cells: Cells = row?.cells ?? {};
  const drafts = useSignal<Cells>({});
  const issues = useSignal<readonly DataIssue[]>([]);
  if (row === undefined)
    return (
      <Panel heading={page.catches} back={page.back}>
        <p>{page.noCatches}</p>
      </Panel>
    );
  const answer = session.all.value.find(({ answer: { catches } }) =>
    catches.some((one) => one.id === id),
  )?.answer;
  const found = answer === undefined ? [] : findingsAt(answer, row);
  const value = (name: string) =>
    drafts.value[name] ??
    (figures.test(name) ? written(cells[name] ?? "", session.mark.value) : (cells[name] ?? ""));
  const write = (name: string) => (text: string) => {
    drafts.value = { ...drafts.value, [name]: text };
  };
  const errorOf = (name: string) => {
    const issue = issues.value.find(({ column }) => column === name);
    return issue === undefined ? null : page.refused(words.problems.parts(issue));
  };
  const save = () => {
    const typed = Object.entries(drafts.value).map(([name, text]) => [
      name,
      figures.test(name) ? plain(text) : text.trim(),
    ]);
    const reason = (drafts.value.reason ?? cells.reason ?? "").trim();
    const changes: Cells = {
      ...Object.fromEntries(typed),
      exclude: reason === "" ? "" : "yes",
    };
    issues.value = session.putCatch(id, changes);
    if (issues.value.length === 0) close();
  };
  return (
    <Panel heading={page.catchOf(cells.catch ?? "")} back={page.back}>
      {found.length === 0 ? null : (
        <section class="found">
          <h2>{page.catch.found}</h2>
          {found.map((one) => (
            <p key={one.code}>{cautionSentence(one, words)}</p>
          ))}
        </section>
      )}
      <form
        class="form"
        onSubmit={(event) => {
          event.preventDefault();
          save();
        }}
      >
        {Object.keys(cells)
          .filter((name) => figures.test(name))
          .map((name) => (
            <Field
              key={name}
              decimal
              label={labelOf(name, session)}
              value={value(name)}
              error={errorOf(name)}
              change={write(name)}
            />
          ))}
        <Field
          label={page.catch.reason}
          hint={page.catch.reasonHint}
          value={value("reason")}
          error={errorOf("reason")}
          change={write("reason")}
        />
        <Field
          label={page.catch.checked}
          hint={page.catch.checkedHint}
          value={value("checked")}
          error={errorOf("checked")}
          change={write("checked")}
        />
        <Field label={page.catch.note} value={value("note")} change={write("note")} />
        {issues.value
          .filter(
            ({ column }) =>
              cells[column ?? ""] === undefined && column !== "reason" && column !== "checked",
          )
          .map((issue) => (
            <p key={issue.text} class="error" role="alert">
              {page.refused(words.problems.parts(issue))}
            </p>
          ))}
        <button type="submit" class="strong">
          {page.catch.save}
        </button>
        <button
          type="button"
          onClick={() => {
            session.act({ kind: "catch-deleted", row: id });
            close();
          }}
        >
          {page.catch.delete}
        </button>
      </form>
    </Panel>
  );
}

function labelOf(name: string, session: Session): string {
  const { page } = session.words.value;
  const [, kind, unit = ""] = /^(net|gross|tare)_(.+)$/.exec(name) ?? [];
  return kind === "net" || kind === "gross" || kind === "tare"
    ? page.weighed[kind](unit)
    : page.turns;
}
