import type { ChartSpec } from "../../src/charts/chart-spec.ts";

/** A layer of a chart, as far as tests look at it. */
export interface DrawnLayer {
  readonly data: { readonly values: readonly Readonly<Record<string, unknown>>[] };
  readonly mark: Readonly<Record<string, unknown>> & { readonly type: string };
  readonly encoding: Readonly<Record<string, unknown>>;
}

/** What a key says, and how it shows it. */
export interface KeyRow {
  readonly words: string;
  readonly shape: string;
  readonly fill: string;
  readonly stroke: string;
  readonly dash: readonly number[];
}

interface Channel<T> {
  readonly scale: { readonly domain: readonly string[]; readonly range: readonly T[] };
}

function allLayers({ vconcat, layer }: ChartSpec): readonly DrawnLayer[] {
  return Array.isArray(vconcat) ? vconcat.flatMap(allLayers) : (layer as readonly DrawnLayer[]);
}

const isKey = ({ encoding }: DrawnLayer) =>
  (encoding.shape as { readonly field?: unknown } | undefined)?.field === "key";

/** Every layer that draws something, through all views. */
export function layersIn(spec: ChartSpec): readonly DrawnLayer[] {
  return allLayers(spec).filter((layer) => !isKey(layer));
}

export function keyOf(spec: ChartSpec): readonly KeyRow[] {
  return allLayers(spec)
    .filter(isKey)
    .flatMap(({ encoding }) => {
      const range = <T>(name: string) => (encoding[name] as Channel<T>).scale.range;
      const [shape, fill, stroke] = ["shape", "fill", "stroke"].map((name) => range<string>(name));
      const dash = range<readonly number[]>("strokeDash");
      return (encoding.shape as Channel<string>).scale.domain.map((words, i) => ({
        words,
        shape: shape?.[i] ?? "",
        fill: fill?.[i] ?? "",
        stroke: stroke?.[i] ?? "",
        dash: dash[i] ?? [],
      }));
    });
}

export function keyWords(spec: ChartSpec): readonly string[] {
  return keyOf(spec).map(({ words }) => words);
}
