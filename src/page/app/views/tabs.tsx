import { useEffect, useRef } from "preact/hooks";
import { goTo } from "../route.ts";
import type { Session } from "../session.ts";
import { Mark, markOf } from "./mark.tsx";

/** The bins by name, each with its mark; a dot where the answer of one that is not shown has changed. */
export function Tabs({ session }: { readonly session: Session }) {
  const { page } = session.words.value;
  const open = session.bin.value?.bin.bin;
  const seen = useRef(new Map<string, string>());
  // Bins are there at once, and their marks when they are known; the one in sight is known first.
  const shown = session.bin.value;
  const lines = session.log.value.bins.map(({ bin, product }) => {
    const answer =
      shown?.bin.bin === bin ? shown : session.all.value.find((one) => one.bin.bin === bin);
    const line = answer === undefined ? null : (session.linesOf(answer)?.action ?? "");
    return { bin, product, answer, line };
  });
  useEffect(() => {
    for (const { bin, line } of lines)
      if (line !== null && (bin === open || !seen.current.has(bin))) seen.current.set(bin, line);
  });
  return (
    <nav class="tabs" aria-label={page.bins}>
      {lines.map(({ bin, product, answer, line }) => {
        const is = markOf(session, answer);
        const isNew = bin !== open && line !== null && (seen.current.get(bin) ?? line) !== line;
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
