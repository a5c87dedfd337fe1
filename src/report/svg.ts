import type { Loader, LoggerInterface, View } from "vega";
import type { ChartSpec } from "../charts/chart-spec.ts";
import { DrawingError } from "../errors/errors.ts";
import { headingOf } from "./chart-heading.ts";
import type { CompiledCharts } from "./svg/chart-shapes.ts";
import { cleanSvg } from "./svg/clean-svg.ts";
import { viewOf } from "./svg/compiled-charts.ts";
import { type Fit, fitSpec } from "./svg/fit-spec.ts";
import { fittingView, refittedView } from "./svg/fitting-view.ts";

export interface SvgOptions extends Fit {
  /** Begins every id inside the drawing, so it must be unique in the page. */
  readonly id: string;
  /** Called for each warning of vega or vega-lite. Default: none is heard. */
  readonly onWarning?: (message: string) => void;
}

/**
 * Draws a Vega-Lite spec as SVG text, without canvas, browser or network: `viewBox` and full width, ids
 * prefixed by `options.id`, no style attribute, the spec's title and description as name and description for
 * screen readers. The same spec and options give the same text.
 *
 * vega is loaded at the first call, so that importing this module costs nothing.
 *
 * @param spec     plain Vega-Lite; data inline. Not changed
 * @throws         DrawingError `drawing` when the spec does not compile, is not valid, or asks for a file or address
 */
export async function renderSvg(spec: ChartSpec, options: SvgOptions): Promise<string> {
  const [drawing = ""] = await renderSvgs(spec, options, []);
  return drawing;
}

/** One more drawing of the same chart. */
export interface FurtherSvg {
  readonly id: string;
  readonly width: number;
}

/**
 * As `renderSvg`, and then the same chart at further widths. A chart that is only made narrower is laid out anew, not
 * compiled anew, which is most of the work.
 *
 * @param compiled  what charts before this one compiled to; this one is added. Default: none is known
 * @returns         one drawing for `options`, then one for each of `further`
 */
export async function renderSvgs(
  spec: ChartSpec,
  options: SvgOptions,
  further: readonly FurtherSvg[],
  compiled: CompiledCharts = new Map(),
): Promise<readonly string[]> {
  const [{ compile }, vega] = await Promise.all([import("vega-lite"), import("vega")]);
  const logger = listeningLogger(options.onWarning);
  const loader = closedLoader();
  const makeView = (wanted: ChartSpec) =>
    viewOf(wanted, compiled, { compile, vega, loader, logger });
  try {
    let fitted = fitSpec(spec, options);
    let view = await fittingView(fitted, makeView);
    const drawings = [await drawn(view, options.id, spec)];
    for (const { id, width } of further) {
      const wanted = fitSpec(spec, { ...options, width });
      view = await refittedView(view, fitted, wanted, makeView);
      fitted = wanted;
      drawings.push(await drawn(view, id, spec));
    }
    view.finalize();
    loader.check();
    return drawings;
  } catch (error) {
    throw new DrawingError(options.id, error);
  }
}

async function drawn(view: View, id: string, spec: ChartSpec): Promise<string> {
  return cleanSvg(await view.toSVG(), { id, ...naming(spec) });
}

function naming(spec: ChartSpec): { title: string; description: string } {
  const { title, remark } = headingOf(spec);
  const said = typeof spec.description === "string" ? spec.description : "";
  return { title, description: remark === null ? said : `${said} ${remark}` };
}

/**
 * Data are inline; anything else would be a request, which no chart of ours may make. Vega draws on without what it
 * could not load, so a refusal has to be asked for afterwards.
 */
function closedLoader(): Loader & { check(): void } {
  const refused: string[] = [];
  const refuse = (uri: string): Promise<never> => {
    refused.push(uri);
    return Promise.reject(new Error("refused"));
  };
  return {
    load: refuse,
    sanitize: refuse,
    http: refuse,
    file: refuse,
    check() {
      if (refused.length === 0) return;
      throw new Error(`charts carry their data; "${refused.join(", ")}" was not loaded`);
    },
  };
}

function listeningLogger(onWarning: SvgOptions["onWarning"]): LoggerInterface {
  const logger: LoggerInterface = {
    level: () => logger,
    error: (...messages) => {
      throw messages[0] instanceof Error ? messages[0] : new Error(messages.join(" "));
    },
    warn: (...messages) => {
      onWarning?.(messages.join(" "));
      return logger;
    },
    info: () => logger,
    debug: () => logger,
  };
  return logger;
}
