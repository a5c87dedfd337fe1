import type { KnownState, Scatter } from "../../../src/model/known-width.ts";
import type { RandomStream } from "../../../src/numeric/random.ts";
import type { ErrorLaw } from "../../../src/statistics/expected-loss.ts";
import { drawStandardDeviation, type Lent, middle, turns } from "./lent.ts";

/** What is known before a fill, and what each catch of it would add. */
export interface Season {
  /** Earlier fills, three catches each. */
  readonly fills: number;
  /** True standard deviation of a catch, relative. */
  readonly catchError: number;
  /** True standard deviation of a fill about the mean of those before it, which would be the error of leaving it. */
  readonly leftError: number;
  /** The same as the fills tell it; null: they do not. */
  readonly left: ErrorLaw | null;
  /** The fill after 0, 1, 2, … catches. */
  readonly states: readonly KnownState[];
}

export const mostCatches = 8;
const catchesPerFill = 3;

/** Draws a meter, its earlier fills, and the catches that the fill to come would have. */
export function drawSeason(fills: number, lent: Lent, stream: RandomStream): Season {
  const catchError = drawStandardDeviation(middle.catches, stream);
  const spread = drawStandardDeviation(middle.fills, stream);
  const ofFill = Math.hypot(spread, catchError / Math.sqrt(catchesPerFill));
  const before = scatterBefore(fills, catchError, lent, stream);
  return {
    fills,
    catchError,
    leftError: Math.hypot(spread, ofFill / Math.sqrt(Math.max(1, fills))),
    left: leftLaw(fills, ofFill, lent, stream),
    states: statesOf(before, catchError, stream),
  };
}

/** Earlier fills speak for the scatter of catches where there are any, else the other bins. */
function scatterBefore(
  fills: number,
  catchError: number,
  lent: Lent,
  stream: RandomStream,
): Scatter | null {
  if (fills === 0) return lent.catches(stream);
  const nu = fills * (catchesPerFill - 1);
  return { q: (turns * catchError ** 2 * stream.chiSquared(nu)) / nu, nu, own: false };
}

function leftLaw(fills: number, ofFill: number, lent: Lent, stream: RandomStream): ErrorLaw | null {
  if (fills < 2) return null;
  const own = ofFill ** 2 * stream.chiSquared(fills - 1);
  const prior = lent.fills(stream);
  const df = (prior?.nu ?? 0) + fills - 1;
  const variance = ((prior?.nu ?? 0) * (prior?.q ?? 0) + own) / df;
  return { location: 0, scale: Math.sqrt(variance * (1 + 1 / fills)), df };
}

function statesOf(
  before: Scatter | null,
  catchError: number,
  stream: RandomStream,
): readonly KnownState[] {
  let squares = before === null ? 0 : before.nu * before.q;
  return Array.from({ length: mostCatches + 1 }, (_, catches) => {
    if (catches > 1) squares += turns * (catchError * stream.normal()) ** 2;
    const nu = (before?.nu ?? 0) + Math.max(0, catches - 1);
    return {
      catches,
      turns: catches * turns,
      scatter: { q: nu === 0 ? 0 : squares / nu, nu, own: before === null },
      divisionInTurns: 0,
    };
  });
}
