/** The answer, which stays in sight, and what is typed under it. */
export const answer = `
.where { margin-block: -0.6rem; display: flex; align-items: center; justify-content: space-between; gap: 0.5rem; color: var(--muted); font-size: 0.9375rem; }
.link { border: 0; background: none; padding-inline: 0.6rem; color: var(--accent); text-decoration: underline; text-underline-offset: 0.2em; }
.now {
  position: sticky; top: 0; z-index: 2; display: grid; gap: 0.6rem; padding: 0.75rem 0.9rem; border-radius: 0.7rem;
  border-inline-start: 8px solid currentColor; box-shadow: 0 2px 10px rgb(0 0 0 / 0.12);
}
.now.fine { background: var(--fine-soft); color: var(--fine); }
.now.attention { background: var(--attention-soft); color: var(--attention); }
.now.problem { background: var(--problem-soft); color: var(--problem); }
.now.neutral { background: var(--neutral-soft); color: var(--neutral); }
.action { display: flex; gap: 0.6rem; font-size: clamp(1.4rem, 6.2vw, 1.9rem); line-height: 1.2; font-weight: 700; letter-spacing: -0.01em; overflow-wrap: break-word; }
.problem .action { font-size: clamp(1.25rem, 5.4vw, 1.75rem); }
.action .mark { color: inherit; width: 1.25em; height: 1.25em; }
.figures { display: grid; grid-template-columns: minmax(0, max-content) repeat(2, minmax(0, 1fr)); gap: 1rem; color: var(--ink); }
.figures div { display: flex; flex-direction: column; justify-content: space-between; }
.figures dt { font-size: 0.8125rem; color: var(--ink); line-height: 1.2; }
.figures dd { font-size: clamp(1rem, 4.4vw, 1.25rem); font-weight: 650; line-height: 1.25; font-variant-numeric: tabular-nums; overflow-wrap: normal; }
.reason { border: 0; background: none; padding: 0.2rem 0; text-align: start; border-radius: 0.3rem; user-select: text; -webkit-user-select: text; }
.reason.short span { display: -webkit-box; -webkit-box-orient: vertical; -webkit-line-clamp: 2; line-clamp: 2; overflow: hidden; }
.told { display: grid; gap: 0.4rem; }

.entry { display: grid; gap: 0.5rem; }
.fields { display: grid; grid-auto-flow: column; grid-auto-columns: minmax(0, 1fr); gap: 0.5rem; align-items: end; }
.fields label span { display: block; font-size: 0.9375rem; color: var(--muted); }
.fields input { width: 100%; font-size: 1.6rem; font-weight: 650; font-variant-numeric: tabular-nums; }
input[type="text"] { width: 100%; min-width: 0; background: var(--panel); color: var(--ink); border: 2px solid var(--muted); border-radius: 0.6rem; padding: 0.3rem 0.7rem; }
input[aria-invalid="true"] { border-color: var(--problem); }
.fields .active input { border-color: var(--accent); box-shadow: inset 0 0 0 1px var(--accent); }
.keys { display: grid; grid-template-columns: repeat(3, minmax(0, 1fr)) minmax(0, 1.35fr); grid-auto-rows: 3.5rem; gap: 0.35rem; }
.keys button { font-size: 1.6rem; font-weight: 600; padding: 0; }
.keys button:nth-child(n+1):nth-child(-n+3) { grid-row: 1; } .keys button:nth-child(n+4):nth-child(-n+6) { grid-row: 2; }
.keys button:nth-child(n+7):nth-child(-n+9) { grid-row: 3; } .keys button:nth-child(10) { grid-row: 4; grid-column: 1; }
.keys button:nth-child(11) { grid-row: 4; grid-column: 2 / 4; }
.keys .erase { grid-row: 1; grid-column: 4; }
.keys .strong { grid-row: 2 / 5; grid-column: 4; font-size: 1.05rem; overflow-wrap: break-word; hyphens: auto; }

.catches ul { display: grid; gap: 0.4rem; margin-top: 0.4rem; }
.catches li button { width: 100%; display: grid; grid-template-columns: auto auto 1fr auto auto; gap: 0.6rem; align-items: center; text-align: start; }
@media (min-width: 48rem) { .reason.short span { -webkit-line-clamp: 12; line-clamp: 12; } }
.catches .mass { text-align: end; font-weight: 650; font-variant-numeric: tabular-nums; }
.catches em { font-style: normal; font-size: 0.875rem; color: var(--attention); }
.catches .flagged { border: 2px solid var(--attention); background: var(--attention-soft); }
.catches .out { color: var(--muted); }
.catches .out .mass { text-decoration: line-through; font-weight: 400; }
.catches .out em { color: inherit; }
@media (max-height: 32rem) { .now position: static; }
`;
