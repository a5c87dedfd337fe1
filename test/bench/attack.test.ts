import { describe, expect, it } from "vitest";
import { attacks } from "../../bench/attack/attacks.ts";
import { tallyOf, trustPage } from "../../bench/attack/trust.ts";

/** Of each attack a little: enough to see that it runs, and that nothing comes out wrong. */
const effort = 40;
const quick = attacks.filter(({ name }) => !/any size|cut off/.test(name));

describe("the attacks", () => {
  it.each(quick.map((attack) => [attack.name, attack] as const))(
    "find nothing wrong and nothing failed: %s",
    async (_, attack) => {
      const { counts, bad } = await tallyOf(attack, 1, effort);
      expect(bad).toEqual([]);
      expect(Object.values(counts).reduce((sum, one) => sum + one, 0)).toBe(effort);
    },
  );

  it("give the same page again", async () => {
    const page = async () =>
      trustPage([await tallyOf(quick[0] ?? attacks[0] ?? never(), 3, 20)], 3, 20);
    expect(await page()).toEqual(await page());
  });
});

function never(): never {
  throw new Error("there is no attack");
}
