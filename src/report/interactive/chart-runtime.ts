/*
 * Entry of the script that the interactive edition carries: draws every chart of the page from the specification
 * beside it, at the width it has, with hints. Bundled by test/tools/bundle-chart-runtime.ts; runs only in a browser.
 *
 * Specs are run as syntax trees by an interpreter, never as compiled code, so that the page's policy can forbid
 * eval. Where anything fails, the static drawing stays.
 */
import { parse, View, Warn } from "vega";
import { expressionInterpreter } from "vega-interpreter";
import { compile, type TopLevelSpec } from "vega-lite";
import type { ChartSpec } from "../../charts/chart-spec.ts";
import { fitSpec } from "../svg/fit-spec.ts";
import { fittingView } from "../svg/fitting-view.ts";
import { createHint, type Hint } from "./hint.ts";

function bringToLife(figure: HTMLElement, hint: Hint): void {
  const source = figure.querySelector('script[type="application/json"]')?.textContent;
  if (!source) return;
  const spec = JSON.parse(source) as ChartSpec;
  const place = document.createElement("div");
  place.className = "drawing live";
  figure.append(place);
  let view: View | null = null;
  let drawnWidth = 0;
  const draw = async (): Promise<void> => {
    const width = Math.floor(place.clientWidth);
    if (width === 0 || width === drawnWidth) return;
    drawnWidth = width;
    const next = await drawInto(place, spec, width, hint);
    view?.finalize();
    view = next;
    figure.classList.add("alive");
  };
  const drawOrStay = (): void => {
    draw().catch(() => {
      figure.classList.remove("alive");
      place.remove();
    });
  };
  new ResizeObserver(drawOrStay).observe(place);
}

async function drawInto(
  place: HTMLElement,
  spec: ChartSpec,
  width: number,
  hint: Hint,
): Promise<View> {
  const view = await fittingView(fitSpec(spec, { width, title: false }), (fitted) => {
    const compiled = compile(fitted as unknown as TopLevelSpec);
    return new View(parse(compiled.spec, undefined, { ast: true }), {
      expr: expressionInterpreter,
      renderer: "svg",
      container: document.createElement("div"),
      hover: true,
      logLevel: Warn,
      tooltip: (_, event, __, value) => showHint(hint, event, value),
    });
  });
  place.replaceChildren(view.container() ?? "");
  return view;
}

function showHint(hint: Hint, event: unknown, value: unknown): void {
  if (value === null || value === undefined || value === "") hint.hide();
  else if (event instanceof MouseEvent) hint.show(value, event.clientX, event.clientY);
}

const hint = createHint(document);
for (const figure of document.querySelectorAll<HTMLElement>("figure.chart")) {
  bringToLife(figure, hint);
}
