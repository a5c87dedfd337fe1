import { type RandomStream, randomStream } from "../../numeric/random.ts";
import type { SheetRow, TrialPlanOptions } from "./result.ts";

/** What is done at one catch. */
interface Treatment {
  readonly turns: number;
  readonly speed: number | null;
}

/**
 * The catches in the order of work: in every block each product is filled once, in random order; in every fill each turn
 * level, speed and repeat comes once, in random order. So what changes over a day or a fill falls on all alike.
 */
export function sheetRows(options: TrialPlanOptions): readonly SheetRow[] {
  const random = randomStream(options.seed);
  const treatments = treatmentsOf(options);
  return Array.from({ length: options.fills }, (_, block) =>
    random
      .shuffle(options.products)
      .flatMap((product, place) => fillRows(product, block, place, treatments, random, options)),
  ).flat();
}

/** Every combination of turns and speed, repeated. */
export function treatmentsOf(options: TrialPlanOptions): readonly Treatment[] {
  const speeds = options.meterSpeeds.length === 0 ? [null] : options.meterSpeeds;
  return options.turnLevels.flatMap((turns) =>
    speeds.flatMap((speed) =>
      Array.from({ length: options.catchesPerLevel }, () => ({ turns, speed })),
    ),
  );
}

function fillRows(
  product: string,
  block: number,
  place: number,
  treatments: readonly Treatment[],
  random: RandomStream,
  { bin, products, massUnit, meterSpeeds }: TrialPlanOptions,
): readonly SheetRow[] {
  // Fills are numbered through the bin, whatever is in it: their order is the order of time.
  const fill = block * products.length + place + 1;
  return random.shuffle(treatments).map(({ turns, speed }, i) => ({
    bin,
    product,
    fill,
    catch: i + 1,
    turns,
    [`gross_${massUnit}`]: null,
    [`tare_${massUnit}`]: null,
    taken_at: null,
    ...(meterSpeeds.length === 0 ? {} : { meter_rpm: speed }),
    bulk_density_kg_m3: null,
    moisture_pct: null,
    note: null,
    block: block + 1,
  }));
}
