import { sum } from "simple-statistics";
import type { Catch } from "../data/types.ts";
import type { Fill, Meter } from "../model/meters.ts";
import { deliveryOf, type FillTotals, totalsOf } from "../model/totals.ts";
import { groupBy } from "../numeric/group-by.ts";
import { type Caution, type CautionCode, type CautionFacts, caution } from "../results/caution.ts";
import type { Estimate } from "../results/estimate.ts";
import type { FillName } from "../results/fill-name.ts";
import { requireModelOptions } from "../results/options.ts";
import { coefficientOfVariation } from "../statistics/coefficient-of-variation.ts";
import { mean, median } from "../statistics/summary.ts";
import type { Outlet, Outlets, OutletsOptions } from "./outlets/result.ts";

export type { Outlet, Outlets, OutletsOptions } from "./outlets/result.ts";

interface OutletTotals extends FillTotals {
  readonly outlet: string;
}

const fewestOutlets = 2;
const comfortableOutlets = 5;

/**
 * How evenly do the outlets of a bin deliver, and which of them are outside the band that the user gives?
 *
 * Delivery of each outlet is Σm/Σt of its catches; coefficient of variation over outlets with Vangel's interval, one value
 * an outlet. The catch scatter of one outlet is another thing and is given apart, where outlets were caught more than once.
 *
 * @param meter   one bin × product; the newest fill in which two or more outlets were caught counts
 * @param options band (default ± 5 %) and the target of an outlet (default the mean of the outlets)
 * @returns       null when no fill names two outlets: nothing was asked. Fractions, and kg/turn
 * Null when      outlets agree exactly: interval (caution outlets-agree-exactly)
 * Assumes        outlets near-normal about their mean
 * Source         Vangel 1996, The American Statistician 50, 21–26
 */
export function outlets(meter: Meter, options: OutletsOptions): Outlets | null {
  requireModelOptions(options);
  const caught = newestWithOutlets(meter.fills);
  if (caught === null) return null;
  const { fill, groups } = caught;
  const deliveries = groups.map(deliveryOf);
  const center = mean(deliveries);
  const variation = variationOf(deliveries, options.level);
  const band = bandOf(center, options);
  const result = {
    kind: "outlets",
    bin: meter.bin,
    product: meter.product,
    fill,
    options,
    input: { outlets: groups.length, catches: sum(groups.map(({ catches }) => catches)) },
    outlets: groups.map((group) => outletOf(group, band)),
    meanKgPerTurn: center,
    coefficientOfVariation: variation,
    band,
    catchScatter: scatterWithin(groups, center),
  } as const;
  return { ...result, cautions: cautionsOf(result) };
}

function newestWithOutlets(
  fills: readonly Fill[],
): { readonly fill: FillName; readonly groups: readonly OutletTotals[] } | null {
  const asked = fills
    .map(({ fill, weighings }) => ({ fill, groups: groupsOf(weighings) }))
    .filter(({ groups }) => groups.length >= fewestOutlets);
  return asked.at(-1) ?? null;
}

function groupsOf(catches: readonly Catch[]): readonly OutletTotals[] {
  return [...groupBy(catches, ({ outlet }) => outlet)].flatMap(([outlet, own]) =>
    outlet === null ? [] : [{ outlet, ...totalsOf(own) }],
  );
}

function variationOf(deliveries: readonly number[], level: number): Estimate<"fraction"> {
  const { value, df, lower, upper } = coefficientOfVariation(deliveries, level);
  return {
    value,
    unit: "fraction",
    standardError: null,
    df,
    interval: lower === null ? null : { lower, upper, level, about: "outlet to outlet" },
  };
}

function bandOf(center: number, { band, targetKgPerTurn }: OutletsOptions): Outlets["band"] {
  const middle = targetKgPerTurn ?? center;
  return {
    about: targetKgPerTurn === null ? "mean of outlets" : "target",
    centreKgPerTurn: middle,
    lowerKgPerTurn: middle * (1 - band),
    upperKgPerTurn: middle * (1 + band),
  };
}

function outletOf(totals: OutletTotals, band: Outlets["band"]): Outlet {
  const delivery = deliveryOf(totals);
  return {
    outlet: totals.outlet,
    catches: totals.catches,
    turns: totals.turns,
    massKg: totals.massKg,
    deliveryKgPerTurn: delivery,
    relative: delivery / band.centreKgPerTurn - 1,
    insideBand: delivery >= band.lowerKgPerTurn && delivery <= band.upperKgPerTurn,
  };
}

/** Scatter of catches about their own outlet, pooled over outlets, relative to a catch of the usual turns. */
function scatterWithin(groups: readonly OutletTotals[], center: number): Outlets["catchScatter"] {
  const df = sum(groups.map(({ catches }) => catches - 1));
  if (df === 0) return null;
  const variance = sum(groups.map(({ scatterSum }) => scatterSum)) / df;
  const turns = median(groups.map((group) => group.turns / group.catches));
  return { relative: Math.sqrt(variance / turns) / center, turns, df };
}

function cautionsOf(result: Omit<Outlets, "cautions">): readonly Caution[] {
  const {
    bin,
    product,
    fill,
    input,
    coefficientOfVariation: variation,
    catchScatter,
    options,
  } = result;
  const found: Caution[] = [];
  const say = <C extends CautionCode>(code: C, facts: CautionFacts[C]) =>
    found.push(caution(code, { bin, product, fill }, facts));
  if (input.outlets < comfortableOutlets) say("few-outlets", { outlets: input.outlets });
  if (variation.interval === null) say("outlets-agree-exactly", { outlets: input.outlets });
  if (catchScatter === null) say("outlets-caught-once", {});
  const outside = result.outlets.filter(({ insideBand }) => !insideBand);
  if (outside.length > 0)
    say("outlets-outside-band", {
      outlets: outside.map(({ outlet }) => outlet),
      band: options.band,
    });
  return found;
}
