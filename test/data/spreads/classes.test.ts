import { describe, expect, it } from "vitest";
import { readProductClasses, sameName } from "../../../src/data/spreads/classes.ts";
import { DataError } from "../../../src/errors/errors.ts";

const read = (text: string, name = "classes.csv") => readProductClasses({ name, text });

describe("classes of products", () => {
  it("are read by name, whatever the capitals, the separator or the order of columns", () => {
    const classes = read("Class;Product;note\ncereals;Wheat  AC;a\nlegumes;Peas;b\ncereals;oats;c");
    expect(classes.get(sameName(" wheat ac"))).toBe("cereals");
    expect(classes.get(sameName("PEAS"))).toBe("legumes");
    expect(classes.get("barley")).toBeUndefined();
  });

  it("may be told in JSON, and twice if they agree", () => {
    const text = JSON.stringify([
      { product: "wheat", class: "cereals" },
      { product: "Wheat", class: "cereals" },
    ]);
    expect([...read(text, "classes.json")]).toEqual([["wheat", "cereals"]]);
  });

  it("are refused where a column or a cell is missing, or a product has two classes", () => {
    const refused = (text: string) => () => read(text);
    expect(refused("product,kind\nwheat,cereals")).toThrow(
      "classes.csv: found nothing; needed a column named class. A table of classes has two columns, product and class.",
    );
    expect(refused("product,class\nwheat,")).toThrow("row 2, column class: found nothing");
    expect(refused("product,class\nwheat,cereals\nwheat,grain")).toThrow(
      'row 3, column class: found "grain"; needed one class for a product, as "cereals" was given before.',
    );
    expect(refused("")).toThrow(DataError);
  });
});
