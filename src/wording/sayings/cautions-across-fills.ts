import type { AcrossFillsCautionFacts } from "../../results/caution-facts/across-fills.ts";
import { studied } from "../../results/studied.ts";
import type { cautionsAcrossFills as templates } from "../en/cautions-across-fills.ts";
import type { Format } from "../format.ts";
import type { CautionSentences } from "./caution-sentences.ts";
import { otherMeters } from "./lenders.ts";
import { numbered } from "./numbered.ts";
import { studiedRange } from "./studied-range.ts";

/** About several fills and the one that follows. A code that is not here carries no figures: its facts go to the sentence as they are. */
export function cautionsAcrossFillsSayings(
  format: Format,
  { labels, ...say }: typeof templates,
): CautionSentences<AcrossFillsCautionFacts> {
  return {
    ...say,
    "one-fill": ({ borrowed }) => (borrowed ? labels.oneFillAndOthers : say["one-fill"]()),
    "two-fills": ({ bandInDifferences }) => say["two-fills"](format.plain(bandInDifferences, 2)),
    "spread-at-boundary": ({ upperKgPerTurn }) =>
      say["spread-at-boundary"]({
        upper: upperKgPerTurn === null ? null : format.value(upperKgPerTurn, "delivery"),
      }),
    "spread-lent": ({ from, sameProduct, df, ...lent }) =>
      from === "assumption"
        ? labels.spreadAssumed
        : say["spread-lent"]({ ...otherMeters(lent), sameProduct, df: numbered(df, format) }),
    "fills-wilder-than-bins": ({ pValue }) => say["fills-wilder-than-bins"](format.pValue(pValue)),
    "fills-calmer-than-bins": ({ pValue }) => say["fills-calmer-than-bins"](format.pValue(pValue)),
    "fills-are-not-catches": ({ timesTooNarrow }) =>
      say["fills-are-not-catches"]({
        times: format.plain(timesTooNarrow, 2),
        held: studiedRange(studied.catchesAsFills, format),
      }),
    "fills-since-change": ({ sinceFill, fills, spreadFills }) =>
      say["fills-since-change"]({
        sinceFill,
        fills,
        spreadFills: spreadFills > fills ? spreadFills : null,
      }),
    "first-catch-tells-less": ({ skipHalfWidth, firstHalfWidth }) =>
      say["first-catch-tells-less"]({
        oneCatch: format.plusMinus(firstHalfWidth),
        earlierFills: format.plusMinus(skipHalfWidth),
      }),
  };
}
