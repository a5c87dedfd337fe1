import { describe, expect, it } from "vitest";
import { countedLog } from "../../../src/data/suspicions/suspect.ts";
import { yearsLookWrong } from "../../../src/data/suspicions/years-look-wrong.ts";
import { aCatch } from "../../support/catches.ts";

const asked = (...dates: readonly (string | null)[]) =>
  yearsLookWrong(
    countedLog(
      dates.map((takenAt, i) => aCatch({ turns: 20, netKg: 6, fill: i + 1, takenAt })),
      "kg",
      [],
    ),
  ).map(({ facts }) => facts);

describe("a year that looks wrong", () => {
  it("is none for a catch, even where it is the only one", () => {
    expect(asked("2062-04-01")).toEqual([{ year: 2062, fill: 1 }]);
    expect(asked("2026-04-01", "0000-04-02", "9999-04-03")).toEqual([
      { year: 0, fill: 2 },
      { year: 9999, fill: 3 },
    ]);
  });

  it("stands alone ten years from the others", () => {
    expect(asked("2026-04-01", "2016-04-02", "2026-04-03")).toEqual([{ year: 2016, fill: 2 }]);
    expect(asked("2026-04-01", "2017-04-02", "2026-04-03")).toEqual([]);
  });

  it("is none of a log over many seasons, nor of one without dates", () => {
    expect(asked("2010-04-01", "2015-04-01", "2020-04-01", "2026-04-01")).toEqual([]);
    expect(asked(null, null)).toEqual([]);
  });
});
