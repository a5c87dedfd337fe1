import { describe, expect, it } from "vitest";
import { checkCatches } from "../../src/data/read-catches.ts";
import { csv, problemsOf } from "../support/catch-files.ts";

const header =
  "bin,product,fill,catch,turns,net_kg,gross_kg,tare_kg,taken_at,exclude,reason,meter_rpm";

function problems(...rows: readonly string[]): Promise<string[]> {
  return problemsOf(csv(header, ...rows));
}

describe("turns that cannot be", () => {
  it("refuses negative turns", async () => {
    expect(await problems("1,wheat,1,1,-20,5.89")).toMatchInlineSnapshot(`
      [
        "catches.csv, row 2, column turns: found "-20"; needed a number from 0.001 to 1000000, in turns. Correct the figure, or delete the row.",
      ]
    `);
  });

  it("refuses zero turns", async () => {
    expect(await problems("1,wheat,1,1,0,5.89")).toMatchInlineSnapshot(`
      [
        "catches.csv, row 2, column turns: found "0"; needed a number from 0.001 to 1000000, in turns. Correct the figure, or delete the row.",
      ]
    `);
  });

  it("refuses missing turns", async () => {
    expect(await problems("1,wheat,1,1,,5.89")).toMatchInlineSnapshot(`
      [
        "catches.csv, row 2, column turns: found nothing; needed a number from 0.001 to 1000000, in turns. Fill the cell in, or delete the row.",
      ]
    `);
  });

  it("refuses text in a number", async () => {
    expect(await problems("1,wheat,1,1,20 turns,5.89")).toMatchInlineSnapshot(`
      [
        "catches.csv, row 2, column turns: found "20 turns"; needed a number from 0.001 to 1000000, in turns. Write the figure alone, without unit, spaces or thousands separators, or delete the row.",
      ]
    `);
  });

  it("refuses thousands separators", async () => {
    expect(await problems('1,wheat,1,1,"1,234,567",5.89')).toMatchInlineSnapshot(`
      [
        "catches.csv, row 2, column turns: found "1,234,567"; needed a number from 0.001 to 1000000, in turns. Write the figure alone, without unit, spaces or thousands separators, or delete the row.",
      ]
    `);
  });

  it.each(["NaN", "Infinity", "-inf", "1e999"])("refuses %s", async (text) => {
    expect(await problems(`1,wheat,1,1,${text},5.89`)).toEqual([
      `catches.csv, row 2, column turns: found "${text}"; needed a number from 0.001 to 1000000, in turns. Write the figure itself, or delete the row if it is not known.`,
    ]);
  });

  it.each(["0x10", "1_000", "١٢", "1 000", "1e", ".", "--1", "5.8.9"])(
    "does not take %j for a number",
    async (text) => {
      const check = await checkCatches(csv(header, `1,wheat,1,1,${text},5.89`));
      expect(check.ok ? [] : check.issues.map(({ code }) => code)).toEqual(["not-a-number"]);
    },
  );
});

describe("names and numbers of catches", () => {
  it("refuses a missing bin, product, fill and catch at once", async () => {
    expect(await problems(",,,,20,5.89")).toMatchInlineSnapshot(`
      [
        "catches.csv, row 2, column bin: found nothing; needed a text. Fill the cell in, or delete the row.",
        "catches.csv, row 2, column product: found nothing; needed a text. Fill the cell in, or delete the row.",
        "catches.csv, row 2, column fill: found nothing; needed a whole number from 1 to 1000000. Fill the cell in, or delete the row.",
        "catches.csv, row 2, column catch: found nothing; needed a whole number from 1 to 1000000. Fill the cell in, or delete the row.",
      ]
    `);
  });

  it("refuses parts of a fill and a catch before the first", async () => {
    expect(await problems("1,wheat,1.5,0,20,5.89")).toMatchInlineSnapshot(`
      [
        "catches.csv, row 2, column fill: found "1.5"; needed a whole number from 1 to 1000000. Number fills and catches 1, 2, 3 and so on.",
        "catches.csv, row 2, column catch: found "0"; needed a whole number from 1 to 1000000. Correct the figure, or delete the row.",
      ]
    `);
  });

  it("refuses the same catch twice", async () => {
    expect(
      await problems("1,wheat,1,1,20,5.89", "1,wheat,1,2,20,5.89", "1,wheat,1,1,20,5.93"),
    ).toMatchInlineSnapshot(`
      [
        "catches.csv, row 4, column catch: found catch 1 of bin 1, wheat, fill 1 again, first in row 2; needed each catch once. Two machines, or two seasons? Name them in a column machine or season. Otherwise give the catch a number of its own.",
      ]
    `);
  });

  it("refuses the same catch twice from one outlet, and allows it from two", async () => {
    const columns = "bin,product,fill,catch,turns,net_g,outlet";
    expect(
      await problemsOf(
        csv(columns, "1,wheat,1,1,20,90,a", "1,wheat,1,1,20,91,b", "1,wheat,1,1,20,92,b"),
      ),
    ).toMatchInlineSnapshot(`
      [
        "catches.csv, row 4, column catch: found catch 1 of bin 1, wheat, fill 1, outlet b again, first in row 3; needed each catch once. Two machines, or two seasons? Name them in a column machine or season. Otherwise give the catch a number of its own.",
      ]
    `);
  });

  it("sees a catch twice even where the rest of the row is wrong", async () => {
    const check = await checkCatches(csv(header, "1,wheat,1,1,20,5.89", "1,wheat,1,1,-20,5.93"));
    expect(check.ok ? [] : check.issues.map(({ code }) => code)).toEqual([
      "out-of-range",
      "duplicate-catch",
    ]);
  });

  it("refuses two products in one fill of a bin", async () => {
    expect(await problems("1,wheat,1,1,20,5.89", "1,canola,1,2,20,5.89")).toMatchInlineSnapshot(`
      [
        "catches.csv, row 3, column product: found "canola" in bin 1, fill 1; needed "wheat" as in row 2, since a fill holds one product. Correct the product or the bin, or number the new filling as the next fill.",
      ]
    `);
  });

  it("refuses a product spelled in two ways", async () => {
    expect(await problems("1,wheat,1,1,20,5.89", "1,Wheat,2,1,20,5.89")).toMatchInlineSnapshot(`
      [
        "catches.csv, row 3, column product: found "Wheat"; needed "wheat" as in row 2, or a name that differs in more than capitals. Spell each product in one way throughout.",
      ]
    `);
  });
});

describe("the other columns", () => {
  it("refuses a date that is none", async () => {
    expect(await problems("1,wheat,1,1,20,5.89,,,12/04/2026")).toMatchInlineSnapshot(`
      [
        "catches.csv, row 2, column taken_at: found "12/04/2026"; needed a date that exists, year first: 2026-04-12 or 2026-04-12T07:30. Write it so, or leave the cell empty. In a spreadsheet, format the cell as a date.",
      ]
    `);
  });

  it("refuses a date that does not exist", async () => {
    expect(await problems("1,wheat,1,1,20,5.89,,,2026-02-30")).toMatchInlineSnapshot(`
      [
        "catches.csv, row 2, column taken_at: found "2026-02-30"; needed a date that exists, year first: 2026-04-12 or 2026-04-12T07:30. Write it so, or leave the cell empty. In a spreadsheet, format the cell as a date.",
      ]
    `);
  });

  it("refuses leaving a catch out without a reason", async () => {
    expect(await problems("1,wheat,1,1,20,5.89,,,,yes,")).toMatchInlineSnapshot(`
      [
        "catches.csv, row 2, column reason: found nothing; needed the reason why this catch is left out. Write the reason, such as bag slipped, or let exclude be no.",
      ]
    `);
  });

  it("refuses a reason without a word on leaving out", async () => {
    expect(await problems("1,wheat,1,1,20,5.89,,,,,bag tore")).toMatchInlineSnapshot(`
      [
        "catches.csv, row 2, column exclude: found nothing; needed yes or no beside the reason. Write yes to leave the catch out, or no to keep it.",
      ]
    `);
  });

  it("refuses an answer that is neither yes nor no", async () => {
    expect(await problems("1,wheat,1,1,20,5.89,,,,perhaps,bag tore")).toMatchInlineSnapshot(`
      [
        "catches.csv, row 2, column exclude: found "perhaps"; needed yes, no, true, false, 1, 0, x or nothing. Write yes to leave the catch out, with the reason beside it; otherwise no.",
      ]
    `);
  });

  it("refuses a figure out of its range and says that the cell may stay empty", async () => {
    expect(await problems("1,wheat,1,1,20,5.89,,,,,,-3")).toMatchInlineSnapshot(`
      [
        "catches.csv, row 2, column meter_rpm: found "-3"; needed a number from 0.001 to 10000, in turns/min. Correct the figure, or leave the cell empty.",
      ]
    `);
  });
});

describe("a catch that nobody looked at", () => {
  const looked = `${header},checked`;

  it.each(["no", "No", "0", "false"])("is not said to be checked by %s", async (text) => {
    expect(await problemsOf(csv(looked, `1,wheat,1,1,20,5.89,,,,,,,${text}`))).toEqual([
      `catches.csv, row 2, column checked: found "${text}"; needed what was looked at, in words, or nothing. Write it, such as weighed again, bag empty; leave the cell empty where nobody looked.`,
    ]);
  });

  it("has an empty cell, and one that was looked at says what", async () => {
    const check = await checkCatches(
      csv(looked, "1,wheat,1,1,20,5.89,,,,,,,", "1,wheat,1,2,20,6.89,,,,,,,weighed again"),
    );
    expect(check.ok && check.log.catches.map(({ checked }) => checked)).toEqual([
      null,
      "weighed again",
    ]);
  });
});
