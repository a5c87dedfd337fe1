import type { CautionFacts } from "../../results/caution.ts";
import type { DriftCautionFacts } from "../../results/caution-facts/drift.ts";
import type { PlanningCautionFacts } from "../../results/caution-facts/planning.ts";
import type { cautions as templates } from "../en/cautions.ts";
import type { Format } from "../format.ts";
import type { CautionSentences } from "./caution-sentences.ts";
import { cautionsAcrossFillsSayings } from "./cautions-across-fills.ts";
import { cautionsCatchesSayings } from "./cautions-catches.ts";
import { cautionsFieldSayings } from "./cautions-field.ts";
import { cautionsFileSayings } from "./cautions-file.ts";
import { cautionsOneFillSayings } from "./cautions-one-fill.ts";
import { cautionsProductsSayings } from "./cautions-products.ts";

/** Words for every caution: a code without them does not compile. */
export type CautionWords = CautionSentences<CautionFacts>;

/** Which sentences are said of every caution, topic by topic. */
export function cautionsSayings(
  format: Format,
  say: typeof templates,
  driftAndPlanning: CautionSentences<DriftCautionFacts & PlanningCautionFacts>,
): CautionWords {
  return {
    ...cautionsFileSayings(format, say.file),
    ...cautionsOneFillSayings(format, say.oneFill),
    ...cautionsAcrossFillsSayings(format, say.acrossFills),
    ...driftAndPlanning,
    ...cautionsCatchesSayings(format, say.catches),
    ...cautionsProductsSayings(format, say.products),
    ...cautionsFieldSayings(format, say.field),
  };
}
