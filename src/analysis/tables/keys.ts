import type { PlainRow } from "../../data/write-csv.ts";
import type { Fill } from "../../model/meters.ts";
import type { MeterModel, Model } from "../../model/model.ts";

/**
 * Tells rows their keys as the file of catches has them: farm, machine and season in columns of their own, bin and fill without
 * them, so that every table joins with the catches by the same columns. Results call a bin "1/north" and a fill "3/2026" where a
 * log holds several machines or seasons. A key that no catch has makes no column.
 */
export function fileKeysOf({ meters }: Model): (row: PlainRow) => PlainRow {
  const byBin = new Map(meters.map((meter) => [meter.bin, meter]));
  const byProduct = new Map(meters.map((meter) => [keyOf(meter.bin, meter.product), meter]));
  const fills = new Map(
    meters.flatMap((meter) =>
      // One all of whose catches are set aside is in the screening only.
      [...meter.screening.findings.map(({ fill }) => fill), ...meter.fills].map(
        (fill): [string, Fill] => [keyOf(meter.bin, meter.product, fill.fill), fill],
      ),
    ),
  );
  const machines = (["farm", "machine"] as const).filter((key) =>
    meters.some(({ place }) => place[key] !== null),
  );
  const hasSeasons = [...fills.values()].some(({ season }) => season !== null);

  return (row) => {
    if (!("bin" in row)) return row;
    const { farm, machine, bin = null, ...rest } = row;
    const meter: MeterModel | undefined =
      row.product == null
        ? byBin.get(String(bin))
        : byProduct.get(keyOf(String(bin), String(row.product)));
    const fill = fills.get(keyOf(String(bin), String(row.product), rest.fill ?? null));
    return {
      ...Object.fromEntries(machines.map((key) => [key, meter?.place[key] ?? null])),
      bin: meter?.place.bin ?? bin,
      ...Object.fromEntries(
        Object.entries(rest).flatMap(([name, cell]) =>
          name === "fill"
            ? [
                ...(hasSeasons ? [["season", fill?.season ?? null]] : []),
                ["fill", fill?.number ?? cell],
              ]
            : [[name, cell]],
        ),
      ),
    };
  };
}

/** Several parts as one key of a map. */
export function keyOf(...parts: readonly (string | number | boolean | null)[]): string {
  return JSON.stringify(parts);
}
