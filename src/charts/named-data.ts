import type { ChartSpec } from "./chart-spec.ts";

interface Layer {
  readonly data?: { readonly values?: readonly unknown[] };
  readonly mark?: { readonly type?: string; readonly style?: string };
}

/**
 * The same chart with every table of its data once, under a name, in `datasets`: whoever edits it changes a figure in one
 * place, and feeds new ones by name. A name is the role or kind of mark that shows the table first.
 */
export function withNamedData(spec: ChartSpec): ChartSpec {
  const named = new Map<string, { readonly name: string; readonly values: readonly unknown[] }>();
  const taken = new Set<string>();
  const nameFor = (wanted: string): string => {
    let name = wanted;
    for (let i = 2; taken.has(name); i++) name = `${wanted}-${i}`;
    taken.add(name);
    return name;
  };
  const inLayer = (layer: Layer): Layer => {
    const values = layer.data?.values;
    if (values === undefined) return layer;
    const text = JSON.stringify(values);
    const known = named.get(text) ?? { name: nameFor(wantedName(layer, values)), values };
    named.set(text, known);
    return { ...layer, data: { name: known.name } as object };
  };
  const inView = (view: ChartSpec): ChartSpec => ({
    ...view,
    ...(Array.isArray(view.layer) ? { layer: view.layer.map(inLayer) } : {}),
    ...(Array.isArray(view.vconcat) ? { vconcat: view.vconcat.map(inView) } : {}),
  });
  const drawn = inView(spec);
  const datasets = Object.fromEntries(
    [...named.values()].map(({ name, values }) => [name, values]),
  );
  return { ...drawn, datasets };
}

function wantedName({ mark }: Layer, values: readonly unknown[]): string {
  return values.length === 0 ? "key" : (mark?.style ?? mark?.type ?? "data");
}
