/** The curve, folded sentences, and the parts that open over the drill. */
export const parts = `
.curve svg { display: block; width: 100%; max-width: 34rem; height: auto; background: var(--panel); border: 1px solid var(--rule); border-radius: 0.7rem; margin-top: 0.4rem; touch-action: pan-y; cursor: crosshair; }
.curve text { fill: var(--muted); font-size: 12px; }
.curve path { fill: none; }
.axes path { stroke: var(--rule); }
.reference path { stroke: var(--bracket); stroke-width: 2; stroke-dasharray: 6 4; }
.reference text { fill: var(--bracket); font-weight: 650; }
.price path { stroke: var(--attention); stroke-width: 2; stroke-dasharray: 2 4; }
.price text { fill: var(--attention); font-weight: 650; }
path.expected { stroke: var(--accent); stroke-width: 2.5; }
path.assured { stroke: var(--accent); stroke-width: 1.5; stroke-dasharray: 4 3; }
path.picked { stroke: var(--ink); stroke-width: 1; }
circle.made { fill: var(--accent); }
circle.planned { fill: var(--panel); stroke: var(--accent); stroke-width: 2; }
.key { display: flex; flex-wrap: wrap; gap: 0.2rem 1rem; font-size: 0.875rem; color: var(--muted); padding-top: 0.4rem; }
.key span::before { content: ""; display: inline-block; vertical-align: middle; margin-inline-end: 0.4rem; width: 1.3rem; border-top: 2.5px solid var(--accent); }
.key .made::before { width: 0.7rem; height: 0.7rem; border: 0; border-radius: 50%; background: var(--accent); }
.key .assured::before { border-top: 1.5px dashed var(--accent); }
input[type="range"] { width: 100%; min-height: 3.5rem; accent-color: var(--accent); margin: 0; }
.readout { font-weight: 600; }

.said { border: 1px solid var(--rule); border-radius: 0.7rem; background: var(--panel); }
.said summary { display: flex; align-items: center; padding: 0.5rem 1rem; cursor: pointer; font-weight: 600; }
.said summary::before { content: "▸"; margin-inline-end: 0.6rem; }
.said[open] summary::before { content: "▾"; }
.said p { padding: 0.5rem 1rem; border-top: 1px solid var(--rule); }

.panel { padding-bottom: 1rem; }
.panel-head { display: grid; gap: 0.5rem; padding-block: 0.5rem; position: sticky; top: 0; background: var(--page); z-index: 2; grid-template-columns: auto 1fr; align-items: center; }
.panel-head h1 { font-size: 1.3rem; line-height: 1.2; }
.form, .stack { display: grid; gap: 0.9rem; }
.first { display: grid; gap: 0.9rem; }
.first h2 { font-size: 1.5rem; line-height: 1.2; }
.field { display: grid; gap: 0.25rem; }
.field > label, .field .label { font-weight: 600; }
.found { background: var(--attention-soft); color: var(--attention); border-radius: 0.7rem; padding: 0.8rem 1rem; display: grid; gap: 0.5rem; }
fieldset { display: grid; gap: 0.9rem; min-width: 0; border: 1px solid var(--rule); border-radius: 0.7rem; padding: 0.6rem 0.9rem 0.9rem; background: var(--panel); }
legend { font-weight: 650; padding-inline: 0.4rem; }
.choices { display: grid; grid-template-columns: repeat(auto-fit, minmax(5.5rem, 1fr)); gap: 0.4rem; }
.choices label { display: flex; align-items: center; gap: 0.4rem; border: 2px solid var(--rule); border-radius: 0.6rem; padding: 0.3rem 0.6rem; cursor: pointer; font-size: 0.9375rem; line-height: 1.2; }
.choices .chosen { border-color: var(--accent); background: var(--accent-soft); }
.choices input { min-height: 0; width: 1.25rem; height: 1.25rem; flex: none; margin: 0; accent-color: var(--accent); }
.choices label:focus-within, .file:focus-within { outline: 3px solid var(--accent); outline-offset: 2px; }
.file { position: relative; display: flex; align-items: center; justify-content: center; border: 1px solid var(--rule); border-radius: 0.6rem; background: var(--panel); cursor: pointer; padding: 0.5rem 0.9rem; }
.file input { position: absolute; inset: 0; opacity: 0; width: 100%; cursor: pointer; }
`;
