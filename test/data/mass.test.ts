import { describe, expect, it } from "vitest";
import { csv, logOf, problemsOf } from "../support/catch-files.ts";

const header = "bin,product,fill,catch,turns,net_kg,gross_kg,tare_kg";

function problems(row: string): Promise<string[]> {
  return problemsOf(csv(header, row));
}

describe("masses that cannot be", () => {
  it("refuses a negative mass", async () => {
    expect(await problems("1,wheat,1,1,20,-5.89")).toMatchInlineSnapshot(`
      [
        "catches.csv, row 2, column net_kg: found "-5.89"; needed a number from 0 to 1000000, in kg. Correct the figure, or delete the row.",
      ]
    `);
  });

  it("refuses a row without any mass", async () => {
    expect(await problems("1,wheat,1,1,20,")).toMatchInlineSnapshot(`
      [
        "catches.csv, row 2, column net_kg: found nothing; needed a net mass, or gross and tare. Fill in the mass, or delete the row.",
      ]
    `);
  });

  it("refuses a net mass of zero in a catch that counts", async () => {
    expect(await problems("1,wheat,1,1,20,0.00")).toMatchInlineSnapshot(`
      [
        "catches.csv, row 2, column net_kg: found a net mass of 0.00; needed a net mass above 0. Fill in the mass, or delete the row, or write yes under exclude with the reason.",
      ]
    `);
  });

  it("refuses gross equal to tare", async () => {
    expect(await problems("1,wheat,1,1,20,,0.42,0.42")).toMatchInlineSnapshot(`
      [
        "catches.csv, row 2, column gross_kg: found gross 0.42, which leaves a net mass of 0; needed a net mass above 0. Fill in the mass, or delete the row, or write yes under exclude with the reason.",
      ]
    `);
  });

  it("refuses gross without tare", async () => {
    expect(await problems("1,wheat,1,1,20,,6.31,")).toMatchInlineSnapshot(`
      [
        "catches.csv, row 2, column tare_kg: found nothing; needed the tare mass in kg beside the gross mass, or the net mass. Write the mass of the empty container; 0 if the scale was set to zero with it.",
      ]
    `);
  });

  it("refuses tare without gross", async () => {
    expect(await problems("1,wheat,1,1,20,,,0.42")).toMatchInlineSnapshot(`
      [
        "catches.csv, row 2, column gross_kg: found nothing; needed the gross mass in kg beside the tare mass, or the net mass. Write the mass with the container, or the net mass.",
      ]
    `);
  });

  it("refuses gross below tare", async () => {
    expect(await problems("1,wheat,1,1,20,,0.42,6.31")).toMatchInlineSnapshot(`
      [
        "catches.csv, row 2, column gross_kg: found "0.42"; needed at least the tare, 6.31 kg. Gross is weighed with the container, tare without product: look whether the two were swapped.",
      ]
    `);
  });

  it("refuses a net mass that disagrees with gross and tare", async () => {
    expect(await problems("1,wheat,1,1,20,5.98,6.31,0.42")).toMatchInlineSnapshot(`
      [
        "catches.csv, row 2, column net_kg: found "5.98"; needed 5.89 kg, which is gross 6.31 less tare 0.42, give or take 0.015 for rounding. Compare the three with what was written down; if net is right, empty gross and tare.",
      ]
    `);
  });

  it("refuses net in one unit beside net in another", async () => {
    const file = csv("bin,product,fill,catch,turns,net_kg,net_lb", "1,wheat,1,1,20,5.89,12.99");
    expect(await problemsOf(file)).toMatchInlineSnapshot(`
      [
        "catches.csv, row 2, column net_kg, net_lb: found figures in kg and lb; needed all masses of a catch in one unit. Keep what was read off the scale, and empty the cells in the other unit.",
      ]
    `);
  });

  it("refuses gross in one unit with tare in another", async () => {
    const file = csv("bin,product,fill,catch,turns,gross_kg,tare_lb", "1,wheat,1,1,20,6.31,0.93");
    expect(await problemsOf(file)).toMatchInlineSnapshot(`
      [
        "catches.csv, row 2, column gross_kg, tare_lb: found figures in kg and lb; needed all masses of a catch in one unit. Keep what was read off the scale, and empty the cells in the other unit.",
      ]
    `);
  });

  it("refuses two scale divisions", async () => {
    const file = csv(
      "bin,product,fill,catch,turns,net_kg,division_kg,division_g",
      "1,wheat,1,1,20,5.89,0.01,10",
    );
    expect(await problemsOf(file)).toMatchInlineSnapshot(`
      [
        "catches.csv, row 2, column division_kg, division_g: found figures in kg and g; needed one scale division. Keep what was read off the scale, and empty the cells in the other unit.",
      ]
    `);
  });
});

describe("net against gross and tare", () => {
  const file = (net: string, gross: string, tare: string) =>
    csv(
      "bin,product,fill,catch,turns,net_kg,gross_kg,tare_kg",
      `1,wheat,1,1,20,${net},${gross},${tare}`,
    );

  it("is worked out as on paper", async () => {
    const log = await logOf(file("", "6.01", "0.44"));
    expect(6.01 - 0.44).not.toBe(5.57);
    expect(log.catches[0]?.netKg).toBe(5.57);
  });

  // Half a unit in the last digit of each: 0.005 + 0.005 + 0.005 where all have two decimals.
  it.each([
    ["5.90", "6.31", "0.42"],
    ["5.88", "6.31", "0.42"],
    ["5.9", "6.31", "0.42"],
    ["5.880", "6.31", "0.42"],
    ["6", "6.31", "0.42"],
  ])("may be %s beside %s less %s, and is kept as written", async (net, gross, tare) => {
    expect((await logOf(file(net, gross, tare))).catches[0]?.netKg).toBe(Number(net));
  });

  it.each([
    ["5.91", "6.31", "0.42"],
    ["5.87", "6.31", "0.42"],
    ["6.0", "6.31", "0.42"],
    ["5.875", "6.31", "0.42"],
    ["5.891", "6.310", "0.421"],
  ])("may not be %s beside %s less %s", async (net, gross, tare) => {
    expect(await problemsOf(file(net, gross, tare))).toHaveLength(1);
  });
});
