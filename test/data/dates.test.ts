import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { readDate } from "../../src/data/dates.ts";

describe("readDate", () => {
  it.each([
    "2026-04-12",
    "2024-02-29",
    "2000-02-29",
    "2026-04-12T07:30",
    "2026-04-12T07:30:15.5Z",
    "2026-04-12T07:30+02:00",
    "2026-04-12T07:30-0330",
    "2026-04-12T07:30+14:59",
  ])("keeps %s as it is", (text) => {
    expect(readDate(text)).toBe(text);
  });

  it("writes T between date and time", () => {
    expect(readDate("2026-04-12 07:30")).toBe("2026-04-12T07:30");
  });

  it.each([
    "2026-02-30",
    "2026-02-29",
    "1900-02-29",
    "2026-04-31",
    "2026-13-01",
    "2026-00-10",
    "2026-04-00",
    "2026-04-12T24:00",
    "2026-04-12T07:60",
    "2026-04-12T07:30:60",
    "2026-04-12T07:30+15:00",
    "2026-04-12T07:30+02:60",
    "2026-04-12T07:30-0360",
    "12/04/2026",
    "12.4.2026",
    "20260412",
    "2026-4-12",
    "April 12",
    "46124",
    "",
  ])("refuses %j", (text) => {
    expect(readDate(text)).toBeNull();
  });

  it("accepts each day the calendar has, and no other", () => {
    const part = (max: number) => fc.integer({ min: 0, max });
    fc.assert(
      fc.property(fc.integer({ min: 1000, max: 9999 }), part(14), part(33), (year, month, day) => {
        const two = (value: number) => String(value).padStart(2, "0");
        const text = `${year}-${two(month)}-${two(day)}`;
        const date = new Date(`${text}T00:00:00Z`);
        const exists = !Number.isNaN(date.getTime()) && date.toISOString().startsWith(text);
        expect(readDate(text)).toBe(exists ? text : null);
      }),
    );
  });
});
