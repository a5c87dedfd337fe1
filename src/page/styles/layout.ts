/** One column for a hand, two for a table. Nothing that is touched is smaller than a finger in a glove. */
export const layout = `
*, *::before, *::after { box-sizing: border-box; }
html { font-size: 100%; -webkit-text-size-adjust: 100%; scroll-padding: 9rem 0 6rem; }
body {
  margin: 0; background: var(--page); color: var(--ink); overflow-wrap: anywhere;
  font-family: -apple-system, "Segoe UI", "Noto Sans", "Liberation Sans", system-ui, sans-serif;
  font-size: 1.0625rem; line-height: 1.45;
}
h1, h2, p, ul, dl, dd, fieldset { margin: 0; }
h2 { font-size: 1.0625rem; font-weight: 650; }
ul { list-style: none; padding: 0; }
button, input, summary, .choices label, .file { font: inherit; min-height: 3.5rem; touch-action: manipulation; }
button {
  color: var(--ink); background: var(--panel); border: 1px solid var(--rule); border-radius: 0.6rem;
  padding: 0.5rem 0.9rem; cursor: pointer; -webkit-tap-highlight-color: transparent; user-select: none; -webkit-user-select: none;
}
button:active { background: var(--accent-soft); }
button:disabled { color: var(--muted); background: var(--page); cursor: default; }
button.strong { background: var(--accent); border-color: var(--accent); color: var(--panel); font-weight: 650; }
button.strong:active { filter: brightness(0.9); }
:focus-visible { outline: 3px solid var(--accent); outline-offset: 2px; }
h1:focus-visible { outline: none; }
.unseen { position: absolute; width: 1px; height: 1px; margin: -1px; overflow: hidden; clip-path: inset(50%); white-space: nowrap; }
.quiet, .hint { color: var(--muted); font-size: 0.9375rem; }
.error { color: var(--problem); font-size: 0.9375rem; }
.warning { background: var(--attention-soft); color: var(--attention); border-radius: 0.6rem; padding: 0.8rem 1rem; }
.prose { max-width: 42rem; }
.prose li { padding-block: 0.5rem; border-bottom: 1px solid var(--rule); }

.screen { padding-bottom: calc(4.75rem + env(safe-area-inset-bottom)); }
main, .safety { max-width: 34rem; margin-inline: auto; padding-inline: 0.75rem; }
main { display: grid; gap: 0.75rem; }
main > *, .hand > *, .eye > * { min-width: 0; }
.columns, .hand, .eye { display: grid; gap: 0.75rem; min-width: 0; align-content: start; }

.safety { display: grid; gap: 0.6rem; padding-block: 0.8rem; }
.safety ul { display: grid; gap: 0.45rem; border-inline-start: 6px solid var(--attention); padding-inline-start: 0.8rem; font-weight: 550; }
.pair { display: grid; grid-template-columns: 1fr 1fr; gap: 0.6rem; }
.safety.folded {
  display: flex; align-items: center; gap: 0.6rem; width: 100%; padding-block: 0; border: 0; border-radius: 0; background: none;
  font-size: 0.9375rem; text-align: start; color: var(--attention);
}
.safety.folded .more { margin-inline-start: auto; text-decoration: underline; text-underline-offset: 0.2em; white-space: nowrap; }
.sign { flex: none; fill: none; stroke: currentColor; stroke-width: 2; stroke-linejoin: round; stroke-linecap: round; }

.tabs { display: flex; gap: 0.4rem; overflow-x: auto; scrollbar-width: none; margin-inline: -0.75rem; padding: 3px 0.75rem; }
.tab { flex: none; display: flex; align-items: center; gap: 0.4rem; min-width: 3.5rem; max-width: 11rem; justify-content: center; position: relative; }
.tab[aria-current] { background: var(--ink); border-color: var(--ink); color: var(--panel); font-weight: 650; }
.tab[aria-current] .mark { color: inherit; }
.tab-name { overflow: hidden; text-overflow: ellipsis; white-space: nowrap; }
.dot { position: absolute; top: 0.35rem; inset-inline-end: 0.35rem; width: 0.7rem; height: 0.7rem; border-radius: 50%; background: var(--accent); }
.mark { flex: none; fill: none; stroke: currentColor; stroke-width: 3; stroke-linecap: round; stroke-linejoin: round; }
.mark.fine { color: var(--fine); } .mark.attention { color: var(--attention); } .mark.problem { color: var(--problem); } .mark.neutral { color: var(--muted); }

.bar {
  position: fixed; inset: auto 0 0; z-index: 3; display: grid; grid-template-columns: repeat(3, 1fr); gap: 0.4rem;
  padding: 0.4rem 0.75rem calc(0.4rem + env(safe-area-inset-bottom)); background: var(--page); border-top: 1px solid var(--rule);
}
.bar button { padding-inline: 0.3rem; font-size: 0.9375rem; }

@media (min-width: 48rem) {
  main:not(.panel) { max-width: 72rem; padding-inline: 1.5rem; }
  .safety { max-width: 72rem; padding-inline: 1.5rem; }
  .columns { grid-template-columns: repeat(2, minmax(0, 1fr)); gap: clamp(1rem, 3vw, 2.5rem); }
  .bar { justify-content: center; grid-template-columns: repeat(3, minmax(8rem, 12rem)); }
}
`;
