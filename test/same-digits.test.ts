import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { type Expression, parseSync, Visitor } from "oxc-parser";
import { describe, expect, it } from "vitest";
import { realPower, wholePower } from "../src/numeric/powers.ts";
import { powerOfTen } from "../src/units/power-of-ten.ts";
import { root } from "./support/compiler.ts";

/** Functions whose last digit an engine may choose, and that Node 20, 22 and 24 choose differently. */
const differing = new Set(["pow"]);
const isTwo = (node: Expression) => node.type === "Literal" && node.value === 2;
const isBig = (node: Expression) => node.type === "Literal" && typeof node.value === "bigint";

describe("figures of one engine and another", () => {
  const source = join(root, "src");
  const files = readdirSync(source, { recursive: true, encoding: "utf8" }).filter((name) =>
    /\.tsx?$/.test(name),
  );

  it("are the same, as no power is taken by the engine but squares and those of two", () => {
    const found: string[] = [];
    for (const file of files) {
      const text = readFileSync(join(source, file), "utf8");
      new Visitor({
        BinaryExpression: ({ operator, left, right, start, end }) => {
          if (operator !== "**" || isTwo(right) || isBig(left as Expression)) return;
          if (left.type === "Literal" && left.value === 2) return;
          found.push(`${file}: ${text.slice(start, end)}`);
        },
        MemberExpression: ({ object, property, start, end }) => {
          if (object.type !== "Identifier" || object.name !== "Math") return;
          if (property.type === "Identifier" && differing.has(property.name))
            found.push(`${file}: ${text.slice(start, end)}`);
        },
      }).visit(parseSync(file, text).program);
    }
    expect(files.length).toBeGreaterThan(300);
    expect(found).toEqual([]);
  });
});

describe("powers", () => {
  it("are those of arithmetic", () => {
    expect([0, 1, 2, 5].map((n) => wholePower(3, n))).toEqual([1, 3, 9, 243]);
    expect(wholePower(-0.5, 3)).toBe(-0.125);
    expect(realPower(0, 3)).toBe(0);
    expect(realPower(0, 0)).toBe(1);
    expect(realPower(9, 0.5)).toBeCloseTo(3, 14);
    expect(wholePower(4, -1)).toBe(0.25);
    expect(realPower(0.97, 199) / wholePower(0.97, 199) - 1).toBeCloseTo(0, 13);
  });

  it("of ten are the numbers so written", () => {
    for (let k = -22; k <= 22; k++) expect(powerOfTen(k)).toBe(Number(`1e${k}`));
    expect(powerOfTen(-4)).toBe(0.0001);
  });
});
