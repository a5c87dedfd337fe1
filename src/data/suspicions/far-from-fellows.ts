import { median } from "simple-statistics";
import { type Caution, caution, type Where } from "../../results/caution.ts";
import { groupsOf } from "../groups.ts";
import { fillKey } from "../identity.ts";
import type { LogNames } from "../log-names.ts";
import type { Catch } from "../types.ts";
import { deliveryOf, type Suspicion } from "./suspect.ts";

/** A catch far from its fellows. */
export const farFromFellows: Suspicion = ({ meters, names }) =>
  meters.flatMap(({ catches, span }) =>
    // Then none can be far from any middle, because none is from any other.
    span < surelyNear ? [] : inMeterFar(catches, names),
  );

/**
 * Five times its fellows, or a fifth of them: real scatter between catches is a few percent, so this is a slip such as a
 * lost digit, a wrong unit, or a miscounted turn.
 */
const farFactor = 5;
/** A little less, so that rounding hides none. */
const surelyNear = 0.9 * farFactor;

/** A catch is held against its fill, then against its bin and product, for a whole fill may be wrong. */
function inMeterFar(meter: readonly Catch[], names: LogNames): readonly Caution[] {
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

function whereIs(row: Catch, names: LogNames): Partial<Where> {
  const { product, catch: number } = row;
  return { bin: names.bin(row), product, fill: names.fill(row), catches: [number] };
}
