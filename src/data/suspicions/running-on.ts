import { at } from "../../errors/at.ts";
import type { Catch } from "../types.ts";
import { type CountedMeter, deliveryOf, spanOf } from "./suspect.ts";

/**
 * Catches of one fill scatter by a few percent: a largest delivery of half as much again as the least is none of that, and
 * deliveries within a quarter of one another are the same, seen through differences that scatter more than a catch does.
 */
const apart = 1.5;
const alike = 1.25;

/** The fills of a meter, none where no two of its catches differ as much as those of a fill that ran on. */
export function fillsThatMayRunOn({ fills, span }: CountedMeter): CountedMeter["fills"] {
  return span < apart ? [] : fills;
}

/**
 * How many catches of a fill hold what the one before held too, if one figure ran on from catch to catch; 0: it did not, or
 * nobody can tell. The first catch began from nothing and shows what a catch gives; each later one must give the same as it
 * stands, or with the one before taken off. One of many that ran on is a catch that stands out, and is asked about as such.
 *
 * @param figure  the figure that may have run on
 */
export function catchesRunOn(fill: readonly Catch[], figure: "netKg" | "turns"): number {
  const [first] = fill;
  if (first === undefined || spanOf(fill.map(deliveryOf)) < apart) return 0;
  const likeFirst = (row: Pick<Catch, "netKg" | "turns">) =>
    spanOf([deliveryOf(row), deliveryOf(first)]) <= alike;
  let ran = 0;
  for (let i = 1; i < fill.length; i++) {
    const row = at(fill, i);
    if (likeFirst(row)) continue;
    const added = row[figure] - at(fill, i - 1)[figure];
    if (added <= 0 || !likeFirst({ netKg: row.netKg, turns: row.turns, [figure]: added })) return 0;
    ran += 1;
  }
  return ran >= Math.min(2, fill.length - 1) ? ran : 0;
}
