import { mean } from "simple-statistics";
import { caution } from "../../results/caution.ts";
import type { Suspicion } from "./suspect.ts";

/** With one number of turns throughout, a tare left in every catch cannot be told from delivery. */
export const turnsAllEqual: Suspicion = ({ meters }) =>
  meters.flatMap(({ catches, where }) => {
    const turns = catches[0]?.turns;
    if (turns === undefined || catches.length < 2 || catches.some((row) => row.turns !== turns))
      return [];
    const tares = catches.flatMap(({ tareKg }) => tareKg ?? []);
    const tareShare =
      tares.length === 0 ? null : mean(tares) / mean(catches.map((row) => row.netKg));
    return caution("turns-all-equal", where, { turns, tareShare });
  });
