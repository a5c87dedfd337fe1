import { caution } from "../../results/caution.ts";
import { catchesRunOn, fillsThatMayRunOn } from "./running-on.ts";
import { placeOfFill, type Suspicion } from "./suspect.ts";

/** Masses that add up from catch to catch: a bag that was not emptied between them. */
export const bagNotEmptied: Suspicion = (log) =>
  log.meters.flatMap((meter) =>
    fillsThatMayRunOn(meter).flatMap((fill) => {
      const countedOn = catchesRunOn(fill, "netKg");
      if (countedOn === 0) return [];
      const massesKg = fill.map(({ netKg }) => netKg);
      const facts = { catches: fill.length, countedOn, massesKg };
      return caution("bag-not-emptied", placeOfFill(fill, log), facts);
    }),
  );
