import type { AcrossFillsWords } from "./english/across-fills.ts";
import type { CautionWords } from "./english/cautions.ts";
import type { DeliveryWords } from "./english/delivery.ts";
import type { ReportWords } from "./english/report.ts";
import type { Format } from "./format.ts";

/**
 * Everything evencatch says, in one language and one system of units. English sets the shape; another language fills
 * the same shape, and the compiler names what is missing.
 */
export interface Words {
  readonly format: Format;
  readonly cautions: CautionWords;
  readonly delivery: DeliveryWords;
  readonly acrossFills: AcrossFillsWords;
  readonly report: ReportWords;
}
