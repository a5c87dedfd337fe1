import { describe, expect, test } from "vitest";
import { swappedReadings, writtenReading } from "../../../src/questions/outliers/written-digits.ts";
import { aCatch } from "../../support/catches.ts";

const row = (netKg: number, grossKg: number | null = null) => aCatch({ turns: 20, netKg, grossKg });

describe("a reading as it was written", () => {
  test("has the decimals that the readings beside it show", () => {
    expect(writtenReading(row(6.4), [row(6.38), row(6.4)], "kg").text).toBe("6.40");
    expect(writtenReading(row(6.4), [], "kg").text).toBe("6.4");
    expect(writtenReading(row(6), [], "kg").text).toBe("6");
  });

  test("is the gross mass where the file has it, in the file's own unit", () => {
    expect(writtenReading(row(6, 6.42), [], "kg").text).toBe("6.42");
    expect(writtenReading(row(6.42), [], "g").text).toBe("6420");
    expect(writtenReading(row(13.25 * 0.45359237), [], "lb").text).toBe("13.25");
  });
});

describe("two digits that changed places", () => {
  test("are neighbours, across the decimal mark too, and never make a leading zero", () => {
    expect(swappedReadings({ text: "12.34", kg: 12.34, unit: "kg" })).toEqual([
      21.34, 13.24, 12.43,
    ]);
    expect(swappedReadings({ text: "10.5", kg: 10.5, unit: "kg" })).toEqual([15]);
  });

  test("equal digits make no other number", () => {
    expect(swappedReadings({ text: "6.66", kg: 6.66, unit: "kg" })).toEqual([]);
  });
});
