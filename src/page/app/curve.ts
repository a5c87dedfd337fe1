import { max, min } from "simple-statistics";
import type { CurvePoint, NextCatchCurve } from "../../model/next-catch-curve.ts";
import { powerOfTen } from "../../units/power-of-ten.ts";

/** A point of the curve on the drawing. */
export interface DrawnPoint {
  readonly x: number;
  readonly y: number;
  readonly point: CurvePoint;
}

/** The next-catch curve in the coordinates of its drawing; y grows downwards, as drawings have it. */
export interface DrawnCurve {
  readonly made: readonly DrawnPoint[];
  readonly planned: readonly DrawnPoint[];
  /** Line through the expected half-widths, from where the fill stands on. */
  readonly line: string;
  /** Line through those that are not exceeded with the chance wanted. */
  readonly assured: string;
  readonly toleranceY: number;
  readonly xTicks: readonly { readonly x: number; readonly catches: number }[];
  readonly yTicks: readonly { readonly y: number; readonly halfWidth: number }[];
  readonly x: (catches: number) => number;
}

export const size = { width: 360, height: 230, left: 44, right: 12, top: 14, bottom: 34 } as const;

/** Wider ones than so many tolerances, or so many times the narrowest, are left out: they would flatten the others. */
const tolerancesShown = 4;
const narrowestShown = 2;
const room = 1.15;
/** Catches that the drawing has room for at least. */
const fewestShown = 3;

/** Null: no half-width is known. */
export function drawnCurve({ points }: NextCatchCurve, tolerance: number): DrawnCurve | null {
  const all = points.flatMap((point) =>
    point.halfWidth === null ? [] : [{ point, halfWidth: point.halfWidth }],
  );
  if (all.length === 0) return null;
  const narrowest = min(all.map(({ halfWidth }) => halfWidth));
  const widest = Math.max(tolerancesShown * tolerance, narrowestShown * narrowest);
  const known = all.filter(({ halfWidth }) => halfWidth <= widest);
  const most = max([fewestShown, ...points.map(({ catches }) => catches)]);
  const top =
    room * known.reduce((widest, { halfWidth }) => Math.max(widest, halfWidth), tolerance);
  const x = (catches: number) =>
    size.left + (catches / most) * (size.width - size.left - size.right);
  const y = (halfWidth: number) =>
    size.height - size.bottom - (halfWidth / top) * (size.height - size.top - size.bottom);
  const drawn = known.map(({ point, halfWidth }) => ({
    point,
    x: x(point.catches),
    y: y(halfWidth),
  }));
  const made = drawn.filter(({ point }) => point.basis !== "planned");
  const planned = drawn.filter(({ point }) => point.basis === "planned");
  const fromNow = drawn.filter(({ point }) => point.basis !== "earlier fills");
  const assured = points.flatMap(({ catches, basis, halfWidthAssured }) =>
    halfWidthAssured === null || basis === "earlier fills" || halfWidthAssured > top
      ? []
      : [{ x: x(catches), y: y(halfWidthAssured) }],
  );
  return {
    made,
    planned,
    line: pathOf(fromNow),
    assured: pathOf(assured),
    toleranceY: y(tolerance),
    xTicks: Array.from({ length: most + 1 }, (_, catches) => ({ catches, x: x(catches) })),
    yTicks: ticksUpTo(top).map((halfWidth) => ({ halfWidth, y: y(halfWidth) })),
    x,
  };
}

function pathOf(points: readonly { readonly x: number; readonly y: number }[]): string {
  return points
    .map(({ x, y }, i) => `${i === 0 ? "M" : "L"}${x.toFixed(1)} ${y.toFixed(1)}`)
    .join("");
}

const mostTicks = 5;

/** From 0 in steps of 1, 2 or 5 times a power of ten. */
function ticksUpTo(top: number): readonly number[] {
  const rough = top / mostTicks;
  const power = powerOfTen(Math.floor(Math.log10(rough)));
  const step = [1, 2, 5, 10].map((times) => times * power).find((one) => one >= rough) ?? rough;
  return Array.from({ length: Math.floor(top / step) + 1 }, (_, i) => i * step);
}
