import { describe, expect, it } from "vitest";
import { settingFigures } from "../../../src/wording/sayings/setting-figures.ts";
import { speedSpan } from "../../../src/wording/sayings/speed-span.ts";
import { english, german } from "../../support/words.ts";

const { format } = english("metric");

describe("from one speed to another", () => {
  it("has the decimals that somebody gave, and the same at both ends", () => {
    expect(speedSpan(40, 60, format)).toBe("40 to 60");
    expect(speedSpan(52, 66.8, format)).toBe("52.0 to 66.8");
    expect(speedSpan(0.1 + 0.2, 0.7, format)).toBe("0.3 to 0.7");
    expect(speedSpan(40, 40, format)).toBe("40");
  });

  it("has three digits of the larger where it was reckoned", () => {
    expect(speedSpan(2.9913, 17.934, format)).toBe("3.0 to 17.9");
    expect(speedSpan(2.9913, 17.934, german().format)).toBe("3,0 bis 17,9");
  });

  it("is of travel, too, in the unit of the reader", () => {
    expect(settingFigures(format).speeds(7, 9)).toBe("7 to 9");
    // 1 mph is 1.609 344 km/h exactly.
    expect(settingFigures(english("us").format).speeds(7, 9)).toBe("4.35 to 5.59");
  });
});
