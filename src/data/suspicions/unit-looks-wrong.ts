import { median } from "simple-statistics";
import { caution } from "../../results/caution.ts";
import { deliveryOf, medianDelivery, type Suspicion } from "./suspect.ts";

/**
 * Rates from 2 to 500 kg/ha on 3 to 24 m at 5 to 10 km/h, through a meter that turns 20 to 60 times a minute, need from 1 g
 * to 10 kg a turn. Twice that to either side is let pass. One outlet of a meter gives a small share of this, taken as
 * a hundredth. Grams entered as kilograms, or the reverse, shift the delivery a thousandfold and mostly fall outside.
 */
const plausibleKgPerTurn = { wholeMeter: 0.0005, oneOutlet: 0.000005, most: 20 } as const;

/**
 * A catch hangs on a scale and is carried there: more than 80 kg nobody lifts, and less than 30 g is no catch of a whole meter but
 * on a scale for letters. Kilograms under a header that says grams, and grams under kilograms, mostly fall outside.
 */
const plausibleCatchKg = { wholeMeter: 0.03, oneOutlet: 0.0003, most: 80 } as const;

/** A delivery or a catch such as no meter gives, which another unit would explain. */
export const unitLooksWrong: Suspicion = ({ meters, massUnit: unit }) =>
  meters.flatMap(({ catches, where }) => {
    const byOutlet = catches.some(({ outlet }) => outlet !== null);
    const plausible = (
      value: number,
      limits: typeof plausibleKgPerTurn | typeof plausibleCatchKg,
    ) => value >= (byOutlet ? limits.oneOutlet : limits.wholeMeter) && value <= limits.most;
    // Then their middles are too, and most need not be put in order.
    const allPlausible = catches.every(
      (row) =>
        plausible(deliveryOf(row), plausibleKgPerTurn) && plausible(row.netKg, plausibleCatchKg),
    );
    if (allPlausible) return [];
    const medianKgPerTurn = medianDelivery(catches);
    const medianCatchKg = median(catches.map(({ netKg }) => netKg));
    return plausible(medianKgPerTurn, plausibleKgPerTurn) &&
      plausible(medianCatchKg, plausibleCatchKg)
      ? []
      : caution("unit-looks-wrong", where, { unit, medianKgPerTurn, medianCatchKg });
  });
