import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { now } from "../../../bench/study/then-and-now/library.ts";
import { job, morning } from "../../../bench/study/then-and-now/mornings.ts";
import { thenAndNowPage } from "../../../bench/study/then-and-now/page.ts";
import { looks, season } from "../../../bench/study/then-and-now/seasons.ts";
import { type Study, setupWithPrices } from "../../../bench/study/then-and-now/study.ts";
import { readSetup } from "../../../src/data/read-setup.ts";
import { present } from "../../support/reference.ts";

const kept = (ending: string) =>
  readFileSync(new URL(`../../../reports/then-and-now-study.${ending}`, import.meta.url), "utf8");
const study: Study = JSON.parse(kept("json"));
const of = (library: string, name: string) =>
  present(study.seasons.find((one) => one.library === library && one.name === name));

describe("then and now", () => {
  it("is told as it was found", () => {
    expect(`${thenAndNowPage(study).join("\n")}\n`).toBe(kept("md"));
  });

  it("alarms in steady seasons as rarely as meant, where it did in nearly half of them", () => {
    expect(of("now", "steady").alarmed).toBeLessThan(0.055);
    expect(of("first", "steady").alarmed).toBeGreaterThan(0.4);
  });

  it("has narrower bands that hold as much", () => {
    const [before, after] = [of("first", "steady"), of("now", "steady")];
    for (const [i, fills] of looks.entries()) {
      const next = present(after.nextFill[i]);
      if (fills > 1) {
        expect(next.medianHalfWidth).toBeLessThan(present(before.nextFill[i]?.medianHalfWidth));
        expect(next.coverage).toBeGreaterThan(0.93);
      }
      expect(present(after.today[i]).coverage).toBeGreaterThan(0.93);
    }
  });

  it("plays a season and a morning again to the digit from the same random start", () => {
    const change = { by: 0.3, fromFill: 5 };
    const one = season(now, change, 1, 1);
    expect(one).toEqual(season(now, change, 1, 1));
    expect(one.alarms).not.toEqual([]);
    const found = morning(now, readSetup(setupWithPrices), 0, 1, 1);
    expect(found).toEqual(morning(now, readSetup(setupWithPrices), 0, 1, 1));
    const { hectares, perPercent, toSetUp, perCatch } = job;
    expect(found.cost).toBeCloseTo(
      100 * hectares * perPercent * found.error + toSetUp + perCatch * found.catches,
      10,
    );
  });
});
