import { formatFor, type UnitSystem } from "../format.ts";
import type { Words } from "../words.ts";
import { englishAcrossFills } from "./across-fills.ts";
import { englishCautions } from "./cautions.ts";
import { englishDelivery } from "./delivery.ts";
import { englishReport } from "./report.ts";

/** evencatch in English. */
export function english(units: UnitSystem = "metric"): Words {
  const format = formatFor("en", units, {
    to: "to",
    unboundedBelow: "no lower limit",
    unboundedAbove: "no upper limit",
    percentSpace: "\u00a0",
  });
  return {
    format,
    cautions: englishCautions(format),
    delivery: englishDelivery(format),
    acrossFills: englishAcrossFills(format),
    report: englishReport(format),
  };
}
