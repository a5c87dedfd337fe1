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

/** The same chart with its data beside the marks, where tests look for them. */
export function inlined(spec: ChartSpec): ChartSpec {
  const datasets = (spec.datasets ?? {}) as Readonly<Record<string, unknown>>;
  const inView = (view: ChartSpec): ChartSpec => ({
    ...view,
    ...(Array.isArray(view.vconcat) ? { vconcat: view.vconcat.map(inView) } : {}),
    ...(Array.isArray(view.layer)
      ? {
          layer: view.layer.map((layer) => {
            const name = layer.data?.name;
            return name === undefined ? layer : { ...layer, data: { values: datasets[name] } };
          }),
        }
      : {}),
  });
  const { datasets: _, ...whole } = inView(spec);
  return whole;
}

/** A colour of a chart as its theme gives it. */
export function colorIn({ config }: ChartSpec, color: unknown): string {
  if (typeof color === "string") return color;
  const { expr } = color as { readonly expr: string };
  const { params } = (config ?? { params: [] }) as {
    readonly params: readonly { readonly name: string; readonly value: unknown }[];
  };
  const looks = params.find(({ name }) => name === "looks")?.value as
    | (Readonly<Record<string, string>> & { readonly series: readonly string[] })
    | undefined;
  const place = /series\[(\d+)/.exec(expr)?.[1];
  const name = /\["(.*)"\]/.exec(expr)?.[1] ?? "";
  const found = place === undefined ? looks?.[name] : looks?.series[Number(place)];
  if (found === undefined) throw new Error(`the theme has no ${expr}`);
  return found;
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
  return allLayers(inlined(spec)).filter((layer) => !isKey(layer));
}

export function keyOf(spec: ChartSpec): readonly KeyRow[] {
  return allLayers(spec)
    .filter(isKey)
    .flatMap(({ encoding }) => {
      const range = <T>(name: string) => (encoding[name] as Channel<T>).scale.range;
      const [shape, fill, stroke] = ["shape", "fill", "stroke"].map((name) => range<unknown>(name));
      const dash = range<readonly number[]>("strokeDash");
      return (encoding.shape as Channel<string>).scale.domain.map((words, i) => ({
        words,
        shape: String(shape?.[i] ?? ""),
        fill: colorIn(spec, fill?.[i] ?? ""),
        stroke: colorIn(spec, stroke?.[i] ?? ""),
        dash: dash[i] ?? [],
      }));
    });
}

export function keyWords(spec: ChartSpec): readonly string[] {
  return keyOf(spec).map(({ words }) => words);
}
