import type { PlainRow } from "../../data/write-csv.ts";
import type { Estimate } from "../../results/estimate.ts";
import type { FillName } from "../../results/fill-name.ts";
import { known } from "../../results/options.ts";
import type { Analysis, MeterAnswers } from "../analyse.ts";
import { estimateCells } from "./cells.ts";
import { type NamesOption, namedAs } from "./table-names.ts";

/**
 * Every estimate of an analysis: one row an estimate. Of every bin and product the mean over fills, the next fill and the
 * fill-to-fill spread, and of each fill its delivery. `about` says what the interval is about; Student's t on `df`, the
 * spread's by χ². Where the fills could not be looked at together, the newest alone.
 *
 * @param options  names: "broom" for those of R's package broom (term, estimate, std.error, conf.low …); default "own"
 * @returns        plain rows: texts, numbers, null; null where nothing can be known
 */
export function tidy({ meters }: Analysis, { names }: NamesOption = {}): readonly PlainRow[] {
  return namedAs(meters.flatMap(ofMeter), names);
}

function ofMeter({ farm, machine, bin, product, acrossFills, delivery }: MeterAnswers) {
  const row = (quantity: string, fill: FillName | null, estimate: Estimate, about: string) => ({
    quantity,
    ...known({ farm, machine }),
    bin,
    product,
    fill,
    ...estimateCells(estimate),
    about,
  });
  const ofFill = (fill: FillName, estimate: Estimate) =>
    row("delivery", fill, estimate, "this fill's delivery");
  if (acrossFills === null) return [ofFill(delivery.fill, delivery.estimate)];
  const { mean, nextFill, spread, points } = acrossFills;
  return [
    row("delivery", null, mean, "mean over fills"),
    row("delivery", null, nextFill, "next fill"),
    ...(spread.standardDeviation === null
      ? []
      : [
          row("standard deviation of fills", null, spread.standardDeviation, "fill-to-fill spread"),
        ]),
    ...points.map(({ fill, estimate }) => ofFill(fill, estimate)),
  ];
}
