import { median } from "simple-statistics";
import { type Caution, caution } from "../../results/caution.ts";
import { groupsOf } from "../groups.ts";
import type { Catch } from "../types.ts";
import {
  type CountedLog,
  type CountedMeter,
  medianDelivery,
  placeOfFill,
  type Suspicion,
} from "./suspect.ts";

/** Other fills of each bin that must say what it usually gives. */
const fewestOthers = 2;
/** Two bins whose usual deliveries lie closer, as a logarithm, cannot be told apart by a fill that varies by a few percent. */
const apart = 0.1;
/** A swapped fill lies this much closer, of the distance between the two, to the other bin than to its own. */
const nearOther = 0.25;

/**
 * Two bins of a product of which each gave in one fill what the other gives in its others. One such jump may be a changed meter;
 * two at once, each to the other's place, are names that were mistaken.
 */
export const binsSwapped: Suspicion = (log) =>
  groupsOf(log.meters, ({ where, catches: [first] }) =>
    JSON.stringify([where.product, first?.machine, first?.farm]),
  ).flatMap((ofProduct) => swappedAmong(ofProduct, log));

/** What a bin gave in a fill, and what it gives in its others, as logarithms. */
interface FillBesideOthers {
  readonly fill: readonly Catch[];
  readonly here: number;
  readonly usual: number;
}

function swappedAmong(meters: readonly CountedMeter[], log: CountedLog): readonly Caution[] {
  const strange = meters.flatMap(strangeFills);
  return groupsOf(strange, ({ fill: [row] }) => JSON.stringify([row?.season, row?.fill])).flatMap(
    (inFill) =>
      inFill.flatMap((one) => {
        const other = inFill.find((another) => areSwapped(one, another));
        return other === undefined ? [] : said(one, other, log);
      }),
  );
}

/** Fills far from the others of their bin; only they can be another's. */
function strangeFills({ fills, span }: CountedMeter): readonly FillBesideOthers[] {
  if (fills.length <= fewestOthers || Math.log(span) < apart) return [];
  const deliveries = fills.map((fill) => Math.log(medianDelivery(fill)));
  // One fill moves the middle of many by little; whether it is strange is asked of the others once it looks so.
  const middle = median(deliveries);
  return fills.flatMap((fill, i) => {
    const here = deliveries[i] ?? middle;
    if (Math.abs(here - middle) < apart / 2) return [];
    const usual = median(deliveries.filter((_, place) => place !== i));
    return Math.abs(here - usual) < apart ? [] : { fill, here, usual };
  });
}

function areSwapped(one: FillBesideOthers, other: FillBesideOthers): boolean {
  const distance = Math.abs(one.usual - other.usual);
  return (
    distance >= apart &&
    Math.abs(one.here - other.usual) <= nearOther * distance &&
    Math.abs(other.here - one.usual) <= nearOther * distance
  );
}

function said(one: FillBesideOthers, other: FillBesideOthers, log: CountedLog): readonly Caution[] {
  const facts = {
    other: placeOfFill(other.fill, log).bin ?? "",
    here: Math.exp(one.here),
    there: Math.exp(other.here),
    usual: Math.exp(one.usual),
  };
  return [caution("bins-swapped", placeOfFill(one.fill, log), facts)];
}
