import type { PlainRow } from "../../data/write-csv.ts";
import { known } from "../../results/options.ts";
import type { Analysis, MeterAnswers } from "../analyse.ts";
import type { FleetStanding } from "../fleet.ts";
import { endCells, estimateCells } from "./cells.ts";
import { keyOf } from "./keys.ts";
import { type NamesOption, namedAs } from "./table-names.ts";

/**
 * An analysis at a glance: one row a bin and product, in the order of the file. What its newest fill delivers with its interval,
 * what to do, how many more catches, since when it has moved, and how much its catches and fills scatter; from ten meters on
 * also how it stands among the others.
 *
 * Columns: `value`, `lower`, `upper` of the newest fill in `unit`; `half_width`, `catch_scatter`, `fill_spread` and
 * `ratio_to_product` are fractions, `catch_scatter` that of a catch of `catch_scatter_turns` turns; `moved_since` is a fill that a
 * finding in force names, `level_since` the first fill of the level in force where there was another. `p_…` are adjusted over
 * all tests of all meters by Benjamini and Hochberg; null, as `attention` is, below ten meters.
 *
 * @param options  names: "broom" for those of R's package broom (estimate, std.error, conf.low …); default "own"
 * @returns        plain rows: texts, numbers, null
 */
export function glance(
  { meters, fleet }: Analysis,
  { names }: NamesOption = {},
): readonly PlainRow[] {
  const standings = new Map(fleet?.meters.map((one) => [keyOf(one.bin, one.product), one]));
  return namedAs(
    meters.map((answers) => ({
      ...ownCells(answers),
      ...amongOthers(standings.get(keyOf(answers.bin, answers.product))),
    })),
    names,
  );
}

function ownCells(answers: MeterAnswers): PlainRow {
  const { farm, machine, bin, product, delivery, decision, drift, acrossFills } = answers;
  const { estimate, halfWidth, input, fill, options } = delivery;
  const found = drift?.moved?.since ?? drift?.trending?.from ?? drift?.differs ?? null;
  return {
    ...known({ farm, machine }),
    bin,
    product,
    fill,
    fills: acrossFills?.points.length ?? null,
    catches: input.catches,
    ...estimateCells(estimate),
    level: options.level,
    half_width: halfWidth,
    action: decision?.action ?? null,
    further_catches: decision?.catches?.further ?? null,
    turns_per_catch: decision?.catches?.turns ?? null,
    verdict: drift?.verdict ?? null,
    moved_since: found?.fill ?? null,
    level_since: acrossFills?.sinceFill ?? null,
    ...scatterCells(answers),
    ...spreadCells(answers),
  };
}

function scatterCells({ acrossFills }: MeterAnswers): PlainRow {
  const scatter = acrossFills?.catchScatter;
  const sd = scatter?.standardDeviation ?? null;
  const relative = scatter?.relative ?? null;
  return {
    catch_scatter: relative,
    ...endCells(
      "catch_scatter",
      sd?.interval ?? null,
      relative === null || sd === null ? null : relative / sd.value,
    ),
    catch_scatter_turns: scatter?.turns ?? null,
  };
}

function spreadCells({ acrossFills }: MeterAnswers): PlainRow {
  const spread = acrossFills?.spread;
  return {
    fill_spread: spread?.relative ?? null,
    ...endCells(
      "fill_spread",
      spread?.standardDeviation?.interval ?? null,
      acrossFills === null ? null : 1 / acrossFills.mean.value,
    ),
  };
}

function amongOthers(own: FleetStanding | undefined): PlainRow {
  return {
    ratio_to_product: own?.delivery?.ratio.value ?? null,
    p_delivery: own?.delivery?.adjusted ?? null,
    p_scatter: own?.scatter?.adjusted ?? null,
    p_spread: own?.spread?.adjusted ?? null,
    attention: own === undefined ? null : own.why.join(", "),
  };
}
