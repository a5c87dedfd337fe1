/** The sheet the report stands on: type, measure, masthead, contents. */
export const page = `
*, *::before, *::after { box-sizing: border-box; }
html { font-size: 100%; -webkit-text-size-adjust: 100%; scroll-padding-top: 1.5rem; }
body {
  margin: 0; background: var(--page); color: var(--ink);
  font-family: -apple-system, "Segoe UI", "Noto Sans", "Liberation Sans", system-ui, sans-serif;
  font-size: 1.0625rem; line-height: 1.6; overflow-wrap: break-word;
}
h1, h2, h3, h4, h5, h6 { line-height: 1.25; font-weight: 650; text-wrap: balance; margin: 0; }
h2 { font-size: 1.625rem; letter-spacing: -0.012em; margin-bottom: 1rem; }
h3 { font-size: 1.25rem; margin: 2.25rem 0 0.75rem; }
h4, h5, h6 { font-size: 1.0625rem; margin: 1.75rem 0 0.5rem; }
p, ul, ol, dl { margin: 0 0 1rem; }
p { text-wrap: pretty; max-width: 42rem; }
li { margin-bottom: 0.35rem; }
ul, ol { padding-inline-start: 1.35rem; max-width: 42rem; }
a { color: var(--accent); text-underline-offset: 0.18em; text-decoration-thickness: 0.06em; }
a:hover { text-decoration-thickness: 0.14em; }
code { font-family: ui-monospace, "Liberation Mono", monospace; font-size: 0.9em; background: var(--neutral-soft); padding: 0.1em 0.35em; border-radius: 0.25rem; }
:focus-visible { outline: 3px solid var(--accent); outline-offset: 3px; border-radius: 3px; }
main:focus { outline: none; }
#safety-strip h2 { font-size: 1.1875rem; margin-bottom: 0.5rem; }
#safety-strip li { font-size: 0.9375rem; line-height: 1.45; margin-bottom: 0.15rem; }
.lead { font-size: 1.25rem; line-height: 1.5; }
.small { font-size: 0.9375rem; color: var(--muted); }

.skip { position: absolute; inset-inline-start: 1rem; top: -4rem; z-index: 2; background: var(--panel); color: var(--ink); padding: 0.6rem 1rem; border-radius: 0.4rem; }
.skip:focus { top: 1rem; }

.masthead, .page, footer { max-width: 70rem; margin-inline: auto; padding-inline: clamp(1.1rem, 4vw, 2.5rem); }
.masthead { padding-top: clamp(2rem, 6vw, 4rem); }
.masthead h1 { font-size: clamp(1.9rem, 1.3rem + 2.6vw, 2.9rem); letter-spacing: -0.022em; font-weight: 700; }
.masthead .subtitle { font-size: 1.2rem; color: var(--muted); margin: 0.6rem 0 0; }
.masthead dl { display: flex; flex-wrap: wrap; gap: 0.25rem 2rem; margin: 1.4rem 0 0; font-size: 0.9375rem; }
.masthead dl div { display: flex; gap: 0.5rem; min-width: 0; }
.masthead dt { color: var(--muted); }
.masthead dd { margin: 0; min-width: 0; }
/* The graduation of a balance: every fifth mark is longer. */
.masthead::after {
  content: ""; display: block; height: 14px; margin-top: 1.6rem;
  background:
    repeating-linear-gradient(90deg, var(--accent) 0 1.5px, transparent 1.5px 60px) 0 0 / 100% 14px no-repeat,
    repeating-linear-gradient(90deg, var(--accent) 0 1px, transparent 1px 12px) 0 0 / 100% 7px no-repeat;
  border-top: 1.5px solid var(--accent);
}

.page { padding-block: 2.25rem 3rem; }
.contents ol { list-style: none; padding: 0; margin: 0 0 2.5rem; display: flex; flex-wrap: wrap; gap: 0.25rem 1.5rem; max-width: none; font-size: 0.9375rem; }
.contents li { margin: 0; }
.contents a { color: var(--muted); text-decoration: none; display: inline-block; padding-block: 0.2rem; }
.contents a:hover { color: var(--ink); text-decoration: underline; }
main > section { margin-top: 3.75rem; }
main > section:first-child { margin-top: 0; }
section > :last-child { margin-bottom: 0; }

@media screen and (max-width: 40rem) {
  main > section { margin-top: 2.25rem; }
  .page { padding-block: 1.5rem 2rem; }
  .masthead::after { margin-top: 1rem; }
  /* What to do must end on the first screen below it. */
  #safety-strip h2 { font-size: 1.0625rem; margin-bottom: 0.25rem; }
  #safety-strip li { line-height: 1.35; margin-bottom: 0; }
  #safety-strip ul { padding-inline-start: 1.1rem; }
  #safety-strip + section { margin-top: 1.25rem; }
}

@media screen and (min-width: 68rem) {
  .page:has(> .contents) { display: grid; grid-template-columns: 11rem minmax(0, 1fr); gap: 0 3rem; }
  .contents ol { position: sticky; top: 2rem; flex-direction: column; gap: 0.1rem; border-inline-start: 1.5px solid var(--rule); padding-inline-start: 1rem; }
}

footer { padding-bottom: 3rem; color: var(--muted); font-size: 0.9375rem; }
footer p { margin: 0; max-width: none; border-top: 1px solid var(--rule); padding-top: 1.25rem; }
`;
