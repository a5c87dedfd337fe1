import type { ChartSpec } from "../charts/chart-spec.ts";
import { OptionError } from "../errors/errors.ts";
import { atWidth } from "./svg/fit-spec.ts";

/** How a chart is to look where it goes. */
export interface Restyling {
  /** In place of evencatch's own; null: none, for an embedder that is given one. Left out: as it is. */
  readonly theme?: ChartSpec | null;
  /** Outer width in pixels, or "container": as wide as what it stands in. Left out: as it is. */
  readonly width?: number | "container";
}

/**
 * The same chart in another theme or width. A specification's own config goes before an embedder's: with `theme: null` the
 * embedder's counts, as in `embed(place, restyled(chart, { theme: null }), { config: themeOf({ estimate: "navy" }) })`. A
 * theme must then be given, since keys take their colours from its signal `looks`.
 *
 * @throws OptionError for "container" where views stand one above the other, which Vega-Lite cannot stretch
 */
export function restyled(spec: ChartSpec, { theme, width }: Restyling): ChartSpec {
  return withWidth(theme === undefined ? spec : withTheme(spec, theme), width);
}

function withTheme({ config, ...spec }: ChartSpec, theme: ChartSpec | null): ChartSpec {
  const { locale } = (config ?? {}) as ChartSpec;
  // The decimal mark belongs to the words, not to the looks.
  const kept = { ...theme, ...(locale === undefined ? {} : { locale }) };
  return Object.keys(kept).length === 0 ? spec : { ...spec, config: kept };
}

function withWidth(spec: ChartSpec, width: Restyling["width"]): ChartSpec {
  if (width === undefined) return spec;
  if (width !== "container") return atWidth(spec, width);
  if (Array.isArray(spec.vconcat))
    throw new OptionError("width", width, "a number, for views one above the other");
  return { ...spec, width };
}
