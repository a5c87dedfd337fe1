import { mean, median } from "simple-statistics";
import { type Caution, caution, type Where } from "../results/caution.ts";
import { groupsOf } from "./groups.ts";
import { fillKey, meterKey } from "./identity.ts";
import { type LogNames, logNames } from "./log-names.ts";
import type { Catch, MassUnit } from "./types.ts";

/**
 * What is possible in a file of catches but rarely meant: a catch far from its fellows, a delivery that no meter has,
 * turns that never vary. Catches that are left out are not looked at. Nothing is changed.
 */
export function suspicions(catches: readonly Catch[], massUnit: MassUnit): readonly Caution[] {
  const names = logNames(catches);
  const meters = groupsOf(
    catches.filter(({ leftOut }) => leftOut === null),
    meterKey,
  );
  return meters.flatMap((meter) => {
    const where = meterOf(meter, names);
    return [
      ...farFromFellows(meter, names),
      ...unitLooksWrong(meter, massUnit, where),
      ...turnsAllEqual(meter, where),
    ];
  });
}

/**
 * Five times its fellows, or a fifth of them: real scatter between catches is a few percent, so this is a slip such as a
 * lost digit, a wrong unit, or a miscounted turn.
 */
const farFactor = 5;
/** A little less, so that rounding hides none. */
const surelyNear = 0.9 * farFactor;

/** A catch is held against its fill, then against its bin and product, for a whole fill may be wrong. */
function farFromFellows(meter: readonly Catch[], names: LogNames): readonly Caution[] {
  if (allNear(meter)) return [];
  const inMeter = timesMedianIn(meter);
  return groupsOf(meter, fillKey).flatMap((fill) => {
    const inFill = timesMedianIn(fill);
    return fill.flatMap((row) => {
      const found = [inFill(row), inMeter(row)].find(isFar);
      return found === undefined
        ? []
        : caution("catch-far-from-fellows", whereIs(row, names), { timesMedian: found });
    });
  });
}

/** Whether no catch can be far from any middle, because none is from any other; so it is with nearly every meter. */
function allNear(meter: readonly Catch[]): boolean {
  let [least, most] = [Number.POSITIVE_INFINITY, 0];
  for (const row of meter) {
    const delivery = deliveryOf(row);
    if (delivery < least) least = delivery;
    if (delivery > most) most = delivery;
  }
  return most < surelyNear * least;
}

/**
 * Delivery of a catch as a multiple of the median of its group. In a pair the median lies between the two and would
 * make the smaller look small even when the larger is wrong, so there each is held against the other.
 */
function timesMedianIn(group: readonly Catch[]): (row: Catch) => number {
  const middle = median(group.map(deliveryOf));
  const [one, other, third] = group;
  if (one === undefined || other === undefined || third !== undefined) {
    return (row) => deliveryOf(row) / middle;
  }
  return (row) => deliveryOf(row) / deliveryOf(row === one ? other : one);
}

function isFar(times: number): boolean {
  return times >= farFactor || times <= 1 / farFactor;
}

/**
 * Rates from 2 to 500 kg/ha on 3 to 24 m at 5 to 10 km/h, through a meter that turns 20 to 60 times a minute, need from 1 g
 * to 10 kg a turn. Twice that to either side is let pass. One outlet of a meter gives a small share of this, taken as
 * a hundredth. Grams entered as kilograms, or the reverse, shift the delivery a thousandfold and mostly fall outside.
 */
const plausibleKgPerTurn = { wholeMeter: 0.0005, oneOutlet: 0.000005, most: 20 } as const;

function unitLooksWrong(
  meter: readonly Catch[],
  unit: MassUnit,
  where: Partial<Where>,
): readonly Caution[] {
  const medianKgPerTurn = median(meter.map(deliveryOf));
  const byOutlet = meter.some(({ outlet }) => outlet !== null);
  const least = byOutlet ? plausibleKgPerTurn.oneOutlet : plausibleKgPerTurn.wholeMeter;
  if (medianKgPerTurn >= least && medianKgPerTurn <= plausibleKgPerTurn.most) return [];
  return [caution("unit-looks-wrong", where, { unit, medianKgPerTurn })];
}

/** With one number of turns throughout, a tare left in every catch cannot be told from delivery. */
function turnsAllEqual(meter: readonly Catch[], where: Partial<Where>): readonly Caution[] {
  const turns = meter[0]?.turns;
  if (turns === undefined || meter.length < 2 || meter.some((row) => row.turns !== turns))
    return [];
  const tares = meter.flatMap(({ tareKg }) => tareKg ?? []);
  const tareShare = tares.length === 0 ? null : mean(tares) / mean(meter.map((row) => row.netKg));
  return [caution("turns-all-equal", where, { turns, tareShare })];
}

function deliveryOf({ netKg, turns }: Catch): number {
  return netKg / turns;
}

function meterOf([first]: readonly Catch[], names: LogNames): Partial<Where> {
  return first === undefined ? {} : { bin: names.bin(first), product: first.product };
}

function whereIs(row: Catch, names: LogNames): Partial<Where> {
  const { product, catch: number } = row;
  return { bin: names.bin(row), product, fill: names.fill(row), catches: [number] };
}
