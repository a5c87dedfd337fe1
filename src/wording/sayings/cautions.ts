import type { CautionFacts } from "../../results/caution.ts";
import type * as templates from "../en/cautions.ts";
import type { Format } from "../format.ts";
import type { CautionSentences } from "./caution-sentences.ts";
import { cautionsAcrossFillsSayings } from "./cautions-across-fills.ts";
import { cautionsCatchesSayings } from "./cautions-catches.ts";
import { cautionsDriftSayings } from "./cautions-drift.ts";
import { cautionsFieldSayings } from "./cautions-field.ts";
import { cautionsFileSayings } from "./cautions-file.ts";
import { cautionsOneFillSayings } from "./cautions-one-fill.ts";
import { cautionsPlanningSayings } from "./cautions-planning.ts";
import { cautionsProductsSayings } from "./cautions-products.ts";
import { cautionsSuspectedSayings } from "./cautions-suspected.ts";

/** Words for every caution: a code without them does not compile. */
export type CautionWords = CautionSentences<CautionFacts>;

/** Which sentences are said of every caution, topic by topic. */
export function cautionsSayings(format: Format, say: typeof templates): CautionWords {
  return {
    ...cautionsFileSayings(format, say.file),
    ...cautionsSuspectedSayings(format, say.suspected),
    ...cautionsOneFillSayings(format, say.oneFill),
    ...cautionsAcrossFillsSayings(format, say.acrossFills),
    ...cautionsDriftSayings(format, say.drift),
    ...cautionsPlanningSayings(format, say.planning),
    ...cautionsCatchesSayings(format, say.catches),
    ...cautionsProductsSayings(format, say.products),
    ...cautionsFieldSayings(format, say.field),
  };
}
