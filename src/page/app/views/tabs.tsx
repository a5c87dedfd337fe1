import { useEffect, useRef } from "preact/hooks";
import { goTo } from "../route.ts";
import type { Session } from "../session.ts";
import { Mark, markOf } from "./mark.tsx";

/** The bins by name, each with its mark; a dot where the answer of one that is not shown has changed. */
export function Tabs({ session }: { readonly session: Session }) {
  const { page } = session.words.value;
  const open = session.bin.value?.bin.bin;
  const seen = useRef(new Map<string, string>());
  const lines = session.answers.value.bins.map((answer) => ({
    answer,
    line: session.linesOf(answer)?.action ?? "",
  }));
  useEffect(() => {
    for (const { answer, line } of lines)
      if (answer.bin.bin === open || !seen.current.has(answer.bin.bin))
        seen.current.set(answer.bin.bin, line);
  });
  return (
    <nav class="tabs" aria-label={page.bins}>
      {lines.map(({ answer, line }) => {
        const { bin, product } = answer.bin;
        const is = markOf(session, answer);
        const isNew = bin !== open && (seen.current.get(bin) ?? line) !== line;
        return (
          <button
            key={bin}
            type="button"
            class={`tab ${is.tone}`}
            aria-current={bin === open ? "true" : undefined}
            aria-label={page.tab({
              bin,
              product,
              mark: isNew ? `${is.words}, ${page.changed}` : is.words,
            })}
            onClick={() => {
              session.tab.value = bin;
            }}
          >
            <Mark tone={is.tone} action={is.action} />
            <span class="tab-name">{bin}</span>
            {isNew ? <span class="dot" /> : null}
          </button>
        );
      })}
      <button
        type="button"
        class="tab"
        aria-label={page.addBin}
        onClick={() => goTo({ is: "bin" })}
      >
        <Mark tone="neutral" action="catch-more" />
      </button>
    </nav>
  );
}
