import type { DemoSet } from "./demo-set.ts";
import { firstMorning } from "./first-morning.ts";
import { herbstmorgen } from "./herbstmorgen.ts";
import { plannedTrial } from "./planned-trial.ts";
import { productTrial } from "./product-trial.ts";
import { season } from "./season.ts";
import { threeBins } from "./three-bins.ts";

/** Every demo set with its own seed. */
export function demoSets(): readonly DemoSet[] {
  return [season(), firstMorning(), productTrial(), plannedTrial(), threeBins(), herbstmorgen()];
}
