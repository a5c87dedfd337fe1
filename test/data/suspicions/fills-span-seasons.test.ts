import { describe, expect, it } from "vitest";
import { fillsSpanSeasons } from "../../../src/data/suspicions/fills-span-seasons.ts";
import { countedLog } from "../../../src/data/suspicions/suspect.ts";
import { aCatch } from "../../support/catches.ts";

const asked = (...dates: readonly string[]) =>
  fillsSpanSeasons(
    countedLog(
      dates.map((takenAt, i) => aCatch({ turns: 20, netKg: 6, catch: i + 1, takenAt })),
      "kg",
      [],
    ),
  ).map(({ facts }) => facts);

describe("catches of one fill", () => {
  it("are asked about where more than 90 days lie between them", () => {
    expect(asked("2026-04-01", "2025-04-01T08:00")).toEqual([
      { first: "2025-04-01", last: "2026-04-01", days: 365 },
    ]);
    expect(asked("2026-01-01", "2026-04-01")).toEqual([]);
    expect(asked("2026-01-01", "2026-04-02")).toHaveLength(1);
  });

  it("are not by a year that is mistyped, which is asked about by itself", () => {
    expect(asked("2026-04-01", "2062-04-01")).toEqual([]);
  });
});
