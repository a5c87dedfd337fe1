import { describe, expect, it } from "vitest";
import { bySeasonAndNumber, instantOf, inTimeOrder } from "../../src/model/time-order.ts";

const fill = (number: number, takenAt: string | null = null, seasonRank = 0) => ({
  number,
  seasonRank,
  takenAt,
});

describe("the moment of a text", () => {
  it.each([
    ["2026-04-12", "2026-04-12T00:00:00Z"],
    ["2026-04-12T06:30", "2026-04-12T06:30:00Z"],
    ["2026-04-12T06:30:15", "2026-04-12T06:30:15Z"],
    ["2026-12-31T23:59:59Z", "2026-12-31T23:59:59Z"],
    ["2026-04-12T06:30:15.9Z", "2026-04-12T06:30:15Z"],
    ["2026-04-12T06:30,5", "2026-04-12T06:30:00Z"],
    ["2026-04-12T06:30+02:00", "2026-04-12T04:30:00Z"],
    ["2026-04-12T06:30-0545", "2026-04-12T12:15:00Z"],
    ["2026-04-12T06:30+03", "2026-04-12T03:30:00Z"],
  ])("%s is %s", (text, utc) => {
    expect(instantOf(text)).toBe(Date.parse(utc));
  });

  it("is none of no text, or of one that is no date of ISO 8601", () => {
    for (const text of [null, "", "12.4.2026", "2026-4-12", "2026-04-12 06:30", "2026-04-12T6"])
      expect(instantOf(text)).toBeNull();
  });
});

describe("the order of fills", () => {
  const numbers = (fills: readonly ReturnType<typeof fill>[]) =>
    inTimeOrder(fills).map(({ seasonRank, number }) => 10 * seasonRank + number);

  it("is by season, then by number, where one has no date", () => {
    expect(numbers([fill(2, null, 1), fill(3), fill(1, null, 1), fill(1)])).toEqual([1, 3, 11, 12]);
    expect(numbers([fill(2, "2026-01-01"), fill(1, "2026-02-01"), fill(3)])).toEqual([1, 2, 3]);
    expect(bySeasonAndNumber(fill(9), fill(1, null, 1))).toBeLessThan(0);
    expect(bySeasonAndNumber(fill(9), fill(1))).toBeGreaterThan(0);
    expect(bySeasonAndNumber(fill(2), fill(2))).toBe(0);
  });

  it("is by moment where all have one, and by number where two have the same", () => {
    const dated = [
      fill(1, "2026-03-03T08:00Z"),
      fill(3, "2026-03-01"),
      fill(2, "2026-03-01"),
      fill(4, "2026-03-03T08:30+02:00"),
    ];
    expect(numbers(dated)).toEqual([2, 3, 4, 1]);
  });
});
