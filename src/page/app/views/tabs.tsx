import { useEffect, useRef } from "preact/hooks";
import type { SaidAnswer } from "../answering.ts";
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
    const said =
      shown?.bin.bin === bin
        ? { answer: shown, lines: session.linesOf(shown) }
        : session.all.value.find(({ answer }) => answer.bin.bin === bin);
    return { bin, product, said };
  });
  useEffect(() => {
    for (const { bin, said } of lines)
      if (said !== undefined && (bin === open || !seen.current.has(bin)))
        seen.current.set(bin, lineOf(said));
  });
  return (
    <nav class="tabs" aria-label={page.bins}>
      {lines.map(({ bin, product, said }) => {
        const is = markOf(session, said);
        const isNew =
          bin !== open &&
          said !== undefined &&
          (seen.current.get(bin) ?? lineOf(said)) !== lineOf(said);
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

function lineOf({ lines }: SaidAnswer): string {
  return lines?.action ?? "";
}
