import { signal, useSignal } from "@preact/signals";
import { useEffect, useRef } from "preact/hooks";
import type { DataIssue } from "../../../errors/data-issue.ts";
import type { BinAnswer } from "../answer.ts";
import { type Cells, type MassKind, massHeader, massIn } from "../cells.ts";
import { plain, written } from "../decimal.ts";
import type { Session } from "../session.ts";
import { Keys } from "./keys.tsx";

type Name = "turns" | MassKind;

/** Where touch is coarse, fingers in gloves are expected until somebody says otherwise. */
const coarse = signal(matchMedia("(pointer: coarse)").matches);

/** Turns and weight of the next catch. Turns and tare stay; what is refused stays in its field, with the reason. */
export function Entry({
  session,
  answer: { bin },
}: {
  readonly session: Session;
  readonly answer: BinAnswer;
}) {
  const { page } = session.words.value;
  const machine = session.machine.value;
  const unit = session.massUnit.value;
  const names: readonly Name[] =
    machine.weighing?.text === "gross" ? ["turns", "gross", "tare"] : ["turns", "net"];
  const before = lastCells(session, bin.bin);
  const drafts = useSignal<Readonly<Partial<Record<Name, string>>>>({});
  const active = useSignal<Name>(before === null ? "turns" : (names[1] ?? "turns"));
  const issues = useSignal<readonly DataIssue[]>([]);
  const fields = useRef(new Map<Name, HTMLInputElement>());
  const big = machine.keys === undefined ? coarse.value : machine.keys.text === "big";

  // What is typed for one bin is not meant for another.
  useEffect(() => {
    drafts.value = {};
    issues.value = [];
  }, [bin.bin]);

  const textOf = (name: Name) =>
    drafts.value[name] ?? written(kept(name, before), session.mark.value);
  const write = (name: Name, text: string) => {
    drafts.value = { ...drafts.value, [name]: text };
    issues.value = [];
  };
  const focusOn = (name: Name) => {
    active.value = name;
    fields.current.get(name)?.focus({ preventScroll: true });
  };
  const add = () => {
    const found = session.putCatch(null, {
      bin: bin.bin,
      product: bin.product,
      fill: String(bin.fill),
      ...Object.fromEntries(
        names.map((name) => [
          name === "turns" ? name : massHeader(name, unit),
          plain(textOf(name)),
        ]),
      ),
      taken_at: now(),
    });
    issues.value = found;
    if (found.length > 0) return focusOn(fieldOf(found[0], names));
    const weight = names[1] ?? "turns";
    const { [weight]: _, ...others } = drafts.value;
    drafts.value = others;
    focusOn(weight);
  };

  return (
    <form
      class="entry"
      aria-label={page.entry}
      onSubmit={(event) => {
        event.preventDefault();
        add();
      }}
    >
      <div class="fields">
        {names.map((name) => (
          <label key={name} class={big && active.value === name ? "active" : ""}>
            <span>{name === "turns" ? page.turns : page.weighed[name](unit)}</span>
            <input
              ref={(input) => {
                if (input !== null) fields.current.set(name, input);
              }}
              type="text"
              autocomplete="off"
              inputMode={big ? "none" : "decimal"}
              enterkeyhint="done"
              value={textOf(name)}
              aria-invalid={issues.value.length > 0 && fieldOf(issues.value[0], names) === name}
              aria-describedby={issues.value.length > 0 ? "refused" : undefined}
              onFocus={() => {
                active.value = name;
              }}
              onInput={(event) => write(name, event.currentTarget.value)}
            />
          </label>
        ))}
        {big ? null : (
          <button type="submit" class="strong">
            {page.addCatch}
          </button>
        )}
      </div>
      {issues.value.length === 0 ? null : (
        <p id="refused" class="error" role="alert">
          {issues.value
            .map((issue) => page.refused(session.words.value.problems.parts(issue)))
            .join(" ")}
        </p>
      )}
      {big ? (
        <Keys
          page={page}
          mark={session.mark.value}
          press={(key) => write(active.value, `${textOf(active.value)}${key}`)}
          erase={() => write(active.value, textOf(active.value).slice(0, -1))}
        />
      ) : null}
    </form>
  );
}

/** This moment as a file of catches writes it: local, to the minute. */
export function now(date = new Date()): string {
  const local = new Date(date.getTime() - date.getTimezoneOffset() * 60_000);
  return local.toISOString().slice(0, 16);
}

function kept(name: Name, before: Cells | null): string {
  if (before === null) return "";
  if (name === "turns") return before.turns ?? "";
  return name === "tare" ? (massIn(before, "tare")?.text ?? "") : "";
}

/** The last catch of the bin, else of any: turns and tare are mostly those of the catch before. */
function lastCells(session: Session, bin: string): Cells | null {
  const { rows } = session.log.value;
  return (rows.findLast(({ cells }) => cells.bin === bin) ?? rows.at(-1))?.cells ?? null;
}

/** The field whose header the reader names. */
function fieldOf(issue: DataIssue | undefined, names: readonly Name[]): Name {
  const header = issue?.column ?? "";
  return names.find((name) => header.startsWith(name)) ?? names[1] ?? "turns";
}
