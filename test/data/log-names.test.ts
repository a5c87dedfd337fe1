import { describe, expect, it } from "vitest";
import { logNames } from "../../src/data/log-names.ts";

const keys = (
  machine: string | null = null,
  season: string | null = null,
  farm: string | null = null,
) => ({ farm, machine, season });
const place = { farm: "Hill", machine: "north", bin: "1" };

describe("what bins and fills of a log are called", () => {
  it("is bin and number alone where the log holds one of each, named or not", () => {
    const logs = [[keys()], [keys("north", "2026", "Hill"), keys("north", "2026", "Hill")], []];
    for (const log of logs) {
      const names = logNames(log);
      expect(names.bin(place)).toBe("1");
      expect(names.fill({ season: "2026", fill: 3 })).toBe(3);
    }
  });

  it("has what the log holds several of, and nothing else", () => {
    expect(logNames([keys("north"), keys("south")]).bin(place)).toBe("1/north");
    const farms = [keys("north", null, "Hill"), keys("north", null, "Dale")];
    expect(logNames(farms).bin(place)).toBe("1/Hill");
    expect(logNames([...farms, keys("south", null, "Dale")]).bin(place)).toBe("1/north/Hill");
    const seasons = logNames([keys("north", "2025"), keys("north", "2026")]);
    expect(seasons.bin(place)).toBe("1");
    expect(seasons.fill({ season: "2026", fill: 3 })).toBe("3/2026");
  });
});

describe("the order of seasons", () => {
  const order = (...seasons: (string | null)[]) => {
    const { seasonRank } = logNames(seasons.map((season) => keys(null, season)));
    return [...new Set(seasons)].sort((a, b) => seasonRank(a) - seasonRank(b));
  };

  it("is by the year in their names, however the file puts them", () => {
    expect(order("2026", "2024", "2025", "2024")).toEqual(["2024", "2025", "2026"]);
    expect(order("spring 2026", "autumn 2025")).toEqual(["autumn 2025", "spring 2026"]);
  });

  it("is that of the file where years do not tell them apart, or one has none", () => {
    expect(order("spring 2026", "autumn 2026", "autumn 2025")).toEqual([
      "spring 2026",
      "autumn 2026",
      "autumn 2025",
    ]);
    expect(order("first", "2025")).toEqual(["first", "2025"]);
  });

  it("puts catches without a season before all others", () => {
    expect(order("2025", null)).toEqual([null, "2025"]);
  });
});
