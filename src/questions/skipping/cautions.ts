import { stillMoving } from "../../model/history-cautions.ts";
import type { MeterModel } from "../../model/model.ts";
import type { AssumedSetting, AssumedValue, NextFillError } from "../../model/rate-error.ts";
import {
  type Caution,
  type CautionCode,
  type CautionFacts,
  caution,
} from "../../results/caution.ts";

export interface SkippingFindings {
  /** What fills say of the next one; null: nothing. */
  readonly error: NextFillError | null;
  /** The same where it is good enough for chances. */
  readonly priced: NextFillError | null;
  readonly setting: AssumedSetting;
  readonly assumed: AssumedValue;
}

/** Five fills of one level. */
const comfortableDf = 4;

/** Everything about skipping that a person should know before relying on it. */
export function skippingCautions(
  meter: MeterModel,
  { error, priced, setting, assumed }: SkippingFindings,
): readonly Caution[] {
  const { across, bin, product } = meter;
  const { fills, spread, nextFill } = across;
  const found: Caution[] = [...stillMoving(meter)];
  const say = <C extends CautionCode>(code: C, facts: CautionFacts[C]) =>
    found.push(caution(code, { bin, product }, facts));

  if (spread.lentBy !== null) say("spread-lent", { ...spread.lentBy, df: spread.df });
  if (fills === 1 && spread.source === "none") say("one-fill", { borrowed: false });
  if (spread.source === "own" && error === null)
    say("fills-agree-exactly", { fills: spread.fills });
  else if (priced === null) say("skip-not-priced", { fills, df: spread.df });
  else if (spread.source === "own" && spread.df < comfortableDf)
    say("few-fills", { fills: spread.fills });
  if (priced?.catchScatter?.isMost)
    say("spread-mostly-catch-scatter", { share: priced.catchScatter.share });
  const { interval } = nextFill;
  const book = setting.nextKgPerTurn;
  if (assumed.source === "book value" && interval?.lower != null && interval.upper !== null)
    if (book < interval.lower || book > interval.upper)
      say("book-value-outside", {
        bookKgPerTurn: book,
        lowerKgPerTurn: interval.lower,
        upperKgPerTurn: interval.upper,
      });
  return found;
}
