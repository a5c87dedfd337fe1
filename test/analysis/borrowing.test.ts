import { describe, expect, it } from "vitest";
import { type AnalysisOptions, analyse, type MeterAnswers } from "../../src/index.ts";
import { command, demo as pathOf } from "../support/command.ts";
import { demo } from "../support/demo.ts";
import { present } from "../support/reference.ts";

/** Digits of what test/reference/generate/one-morning.R prints of these three bins. */
const digits = 9;

async function binA(options: Partial<AnalysisOptions> = {}): Promise<MeterAnswers> {
  const { log, setup } = await demo("three-bins");
  return present(analyse(log, setup, options).meters[0]);
}

describe("three bins on one morning", () => {
  it("know one of them better together than it knows itself", async () => {
    const { delivery } = await binA();
    expect(delivery.halfWidth).toBeCloseTo(0.02228213247, digits);
    expect(delivery.byItself?.halfWidth).toBeCloseTo(0.03951936341, digits);
    expect(delivery.scatter).toMatchObject({ source: "lent", lentBy: { fills: 0, meters: 2 } });
    expect(delivery.scatter.df).toBeCloseTo(3.589712306, digits);
    expect(delivery.estimate.value).toBeCloseTo(18.03 / 60, 14);
  });

  it("leave a bin with itself where nobody is to lend", async () => {
    const { delivery, acrossFills } = await binA({ borrow: "none" });
    expect(delivery.halfWidth).toBeCloseTo(0.03951936341, digits);
    expect(delivery.byItself).toBeNull();
    expect(delivery.scatter.source).toBe("own");
    expect(acrossFills?.byItself).toBeNull();
  });

  it("are answered likewise by setup, option and flag", async () => {
    const { log, setup } = await demo("three-bins");
    const bySetup = analyse(log, { ...setup, borrow: "none" });
    expect(bySetup.meters).toEqual(analyse(log, setup, { borrow: "none" }).meters);
    const catches = pathOf("three-bins/catches.csv");
    const { out } = await command("enough", catches, "--borrow", "none", "--json");
    const { answers } = JSON.parse(out);
    expect(answers[0].catchesNeeded.halfWidth).toBeCloseTo(0.03951936341, digits);
  });

  it("say both lines, in both languages", async () => {
    const catches = pathOf("three-bins/catches.csv");
    const told = await command("enough", catches);
    expect(told.out).toContain(
      "By itself ±\u00a04.0\u00a0%. If it scatters like your other bins, ±\u00a02.2\u00a0%.",
    );
    const german = await command("enough", catches, "--language", "de");
    expect(german.out).toContain(
      "Für sich allein ±\u00a04,0\u00a0%. Wenn dieser Tank streut wie Ihre anderen Tanks: ±\u00a02,2\u00a0%.",
    );
  });

  it("plan two more catches with the chance that the widened width leaves", async () => {
    const { catchesNeeded } = await binA();
    expect(catchesNeeded?.needed).toMatchObject({ further: 2, turns: 20 });
    // At φ = 1 the chance would be .8459957149, at the 1.05 of other bins it is .816.
    expect(catchesNeeded?.needed?.chance).toBeCloseTo(0.816, 3);
    const asItIs = await binA({ planning: { phi: 1 } });
    expect(asItIs.catchesNeeded?.needed?.chance).toBeCloseTo(0.8459957149, digits);
    expect(asItIs.catchesNeeded?.needed?.typically).toBeCloseTo(0.0149279594, digits);
  });

  it("make nothing of an assumption but a line beside, unless the setup states it", async () => {
    const alone = await binA({ borrow: "none" });
    const typical = present(alone.delivery.ifTypical?.halfWidth);
    expect(typical).toBeLessThan(present(alone.delivery.halfWidth));
    const stated = await binA({ borrow: "none", assumedScatter: 0.015 });
    expect(stated.delivery.halfWidth).toBeCloseTo(typical, 12);
    expect(stated.delivery.scatter.lentBy.assumed).toBe(true);
    expect(stated.delivery.byItself?.halfWidth).toBeCloseTo(present(alone.delivery.halfWidth), 12);
  });
});
