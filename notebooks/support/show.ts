import { collect } from "./collect.ts";
import { Markdown, mimeBundle } from "./mime-bundle.ts";
import type { MimeBundle } from "./notebook-file.ts";

/**
 * Shows a value below the cell: a chart (Vega-Lite spec), a table (list of rows, or a data frame), text made with
 * `markdown`, a sentence, or any other value as JSON. End every cell that has an output with `await show(…)`.
 *
 * In Jupyter the value goes to the viewer; when the notebook is run as a test it is kept for comparison; anywhere
 * else its text is printed.
 */
export async function show(value: unknown): Promise<void> {
  const bundle = await mimeBundle(value);
  const display = jupyterDisplay();
  if (display !== null) {
    await display(bundle, { raw: true });
    await settled();
  } else if (!collect(bundle)) {
    console.log(bundle["text/plain"]);
  }
}

/** Text to be shown as Markdown. */
export function markdown(text: string): Markdown {
  return new Markdown(text);
}

type Display = (bundle: MimeBundle, options: { readonly raw: true }) => Promise<void>;

function jupyterDisplay(): Display | null {
  const { Deno: deno } = globalThis as {
    Deno?: { readonly jupyter: { readonly display: Display } };
  };
  return deno === undefined ? null : (bundle, options) => deno.jupyter.display(bundle, options);
}

/** The kernel may tell that the cell is done before its output has arrived, and the output is then lost. */
function settled(): Promise<void> {
  return new Promise((resolve) => setTimeout(resolve, 50));
}
