import { lastOf } from "../../errors/at.ts";
import { OptionError } from "../../errors/errors.ts";
import type { Meter } from "../meters.ts";
import type { HistoryReading, MeterHistory, Stretch } from "./result.ts";

/** Reads meters of one fill each, of which nothing can have moved. Throws OptionError for a meter with more. */
export const ofOneFill: HistoryReading = {
  historyOf: (meter, _, { asked }): MeterHistory => {
    const isAsked = asked !== "never";
    const step = { settled: null, pValue: null, evidence: null, limit: null };
    return {
      status: isAsked ? "too few fills" : "not asked",
      stretches: onlyStretch(meter),
      stoodApart: [],
      changes: [],
      moved: null,
      differs: null,
      trending: null,
      steps: isAsked ? [{ fill: lastOf(meter.fills).fill, outcome: "too few", ...step }] : [],
      beforeNewest: [],
    };
  },
  stretchesOf: onlyStretch,
};

function onlyStretch({ fills }: Meter): readonly Stretch[] {
  if (fills.length > 1)
    throw new OptionError(
      "history",
      "not given",
      "`history` of evencatch/light, where a bin has several fills",
    );
  return [{ fills, begins: "log" }];
}
