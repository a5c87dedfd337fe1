import { caution } from "../../results/caution.ts";
import { catchesRunOn, fillsThatMayRunOn } from "./running-on.ts";
import { placeOfFill, type Suspicion } from "./suspect.ts";

/** Turns of 20, 40 and 60 for the same mass: a counter that was not set back between catches. */
export const counterNotReset: Suspicion = (log) =>
  log.meters.flatMap((meter) =>
    fillsThatMayRunOn(meter).flatMap((fill) => {
      const countedOn = catchesRunOn(fill, "turns");
      if (countedOn === 0) return [];
      const turnsWritten = fill.map((row) => row.turns);
      const facts = { catches: fill.length, countedOn, turnsWritten };
      return caution("counter-not-reset", placeOfFill(fill, log), facts);
    }),
  );
