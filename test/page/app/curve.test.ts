import { describe, expect, it } from "vitest";
import type { CurvePoint } from "../../../src/model/next-catch-curve.ts";
import { drawnCurve } from "../../../src/page/app/curve.ts";

const point = (catches: number, halfWidth: number | null): CurvePoint => ({
  catches,
  further: 0,
  basis: "planned",
  halfWidth,
  halfWidthAssured: null,
  chance: null,
  chanceOffTolerance: null,
  leastChance: null,
});

const drawnOf = (tolerance: number, ...halfWidths: readonly (number | null)[]) =>
  drawnCurve(
    {
      kind: "next-catch-curve",
      turnsPerCatch: 20,
      points: halfWidths.map((halfWidth, catches) => point(catches, halfWidth)),
    },
    tolerance,
  )?.planned.map(({ point: { catches } }) => catches) ?? null;

describe("the curve on the page", () => {
  it("leaves out what would flatten the rest", () => {
    expect(drawnOf(0.05, null, null, 0.3, 0.19, 0.06)).toEqual([3, 4]);
  });

  it("is drawn however wide all of it is: many catches that disagree are no too few", () => {
    expect(drawnOf(0.05, null, null, 0.9, 0.4, 0.33, 0.3)).toEqual([3, 4, 5]);
  });

  it("is none where no half-width is known", () => {
    expect(drawnOf(0.05, null, null)).toBeNull();
  });
});
