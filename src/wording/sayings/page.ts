import type { CurvePoint, NextCatchCurve } from "../../model/next-catch-curve.ts";
import type { page as templates } from "../en/page.ts";
import type { Format } from "../format.ts";

/** What the page at the drill says around the answers. */
export function pageSayings(format: Format, { labels, ...say }: typeof templates) {
  const { plusMinus, chance } = format;
  const point = ({ catches, basis, halfWidth, halfWidthAssured }: CurvePoint): string | null => {
    if (halfWidth === null) return null;
    const facts = { count: catches, halfWidth: plusMinus(halfWidth) };
    if (basis === "earlier fills") return say.pointEarlier(facts);
    return basis === "made"
      ? say.pointMade(facts)
      : say.pointPlanned({
          ...facts,
          assured: halfWidthAssured === null ? null : plusMinus(halfWidthAssured),
        });
  };
  return {
    ...labels,
    weighed: {
      net: (unit: string) => say.weight({ unit }),
      gross: (unit: string) => say.gross({ unit }),
      tare: (unit: string) => say.tare({ unit }),
    },
    tab: say.tab,
    fill: (product: string, fill: number) => say.fill({ product, fill: format.count(fill) }),
    catchOf: (number: string) => say.catchOf({ number }),
    catchTurns: (turns: string) => say.catchTurns({ turns }),
    refused: say.refused,
    undo: (kind: string | null): string =>
      kind !== null && Object.hasOwn(say.undo, kind)
        ? say.undo[kind as keyof typeof say.undo]
        : say.nothingToUndo,
    needed: {
      ...say.needed,
      number: (low: number, high: number) =>
        say.needed.number({ low: format.plain(low), high: format.plain(high) }),
    },
    assumed: say.assumed,
    divisionRead: say.divisionRead,
    point,
    pointsOf: ({ points }: NextCatchCurve): string =>
      say.curveOf({ points: points.flatMap((one) => point(one) ?? []).join(" ") }),
    assured: (share: number) => say.assured({ chance: chance(share) }),
    logOf: (date: string, count: number) => say.logOf({ date: format.date(date), count }),
    sheetOf: (date: string) => say.sheetOf({ date: format.date(date) }),
  };
}

export type PageSayings = ReturnType<typeof pageSayings>;
