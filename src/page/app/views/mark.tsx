import type { Action } from "../../../analysis/decision.ts";
import type { Tone } from "../../../report/document.ts";
import type { SaidAnswer } from "../answering.ts";
import type { Session } from "../session.ts";

/** What a bin asks for, in a sign. */
export function markOf(session: Session, said: SaidAnswer | undefined): BinMark {
  const lines = said?.lines ?? null;
  return lines === null
    ? { tone: "neutral", words: session.words.value.page.noCatches, action: null }
    : {
        tone: lines.tone,
        words: lines.mark,
        action: said?.answer.answers?.decision?.action ?? null,
      };
}

interface BinMark {
  readonly tone: Tone;
  readonly words: string;
  readonly action: Action | null;
}

const signs: Readonly<Record<Action | "none", string>> = {
  set: "M5 12.5l4.5 4.5L19 7.5",
  "catch-more": "M12 5v14M5 12h14",
  "look-first": "M12 4.5v9.5M12 18.2v.9",
  none: "M7 12h10",
};

/** A sign of its own shape for each action, so that nothing rests on colour; words stand beside it or in the label. */
export function Mark({ tone, action }: { readonly tone: Tone; readonly action: Action | null }) {
  return (
    <svg class={`mark ${tone}`} viewBox="0 0 24 24" width="22" height="22" aria-hidden="true">
      <path d={signs[action ?? "none"]} />
    </svg>
  );
}
