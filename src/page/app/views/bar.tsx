import { goTo } from "../route.ts";
import type { Session } from "../session.ts";

/** What is wanted now and then, where a thumb reaches it. */
export function Bar({ session }: { readonly session: Session }) {
  const { page } = session.words.value;
  const last = session.undoable.value;
  return (
    <footer class="bar">
      <button
        type="button"
        disabled={last === null}
        aria-label={page.undo(last?.action.kind ?? null)}
        onClick={session.undo}
      >
        {page.bar.undo}
      </button>
      <button type="button" onClick={() => goTo({ is: "log" })}>
        {page.bar.log}
      </button>
      <button type="button" onClick={() => goTo({ is: "settings" })}>
        {page.bar.settings}
      </button>
    </footer>
  );
}
