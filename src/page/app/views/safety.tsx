import { goTo } from "../route.ts";
import type { Session } from "../session.ts";
import { Panel } from "./panel.tsx";

/** Three lines before anything is touched; one line when they were read on the same day. */
export function SafetyStrip({ session }: { readonly session: Session }) {
  const { safety } = session.words.value.page;
  const open = () => goTo({ is: "safety" });
  if (isToday(session.safetyRead.value))
    return (
      <button type="button" class="safety folded" onClick={open}>
        <Sign />
        <span>{safety.folded}</span>
        <span class="more">{safety.all}</span>
      </button>
    );
  return (
    <section class="safety" aria-label={safety.all}>
      <ul>
        {safety.lines.map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
      <div class="pair">
        <button type="button" class="strong" onClick={session.readSafety}>
          {safety.read}
        </button>
        <button type="button" onClick={open}>
          {safety.all}
        </button>
      </div>
    </section>
  );
}

function Sign() {
  return (
    <svg class="sign" viewBox="0 0 24 24" width="22" height="22" aria-hidden="true">
      <path d="M12 2.5 23 21.5H1Z" />
      <path class="inner" d="M12 9v6M12 17.6v.8" />
    </svg>
  );
}

function isToday(at: string | null): boolean {
  return at !== null && new Date(at).toDateString() === new Date().toDateString();
}

/** The full list, and to whom all this gives way. */
export function Safety({ session }: { readonly session: Session }) {
  const { page, safety } = session.words.value;
  return (
    <Panel heading={safety.heading} back={page.back}>
      <ul class="prose">
        {[...page.safety.lines, ...safety.items].map((item) => (
          <li key={item}>{item}</li>
        ))}
      </ul>
      <p class="prose">{page.safety.deferral}</p>
    </Panel>
  );
}
