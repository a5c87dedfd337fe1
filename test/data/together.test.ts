import { describe, expect, it } from "vitest";
import { checkText } from "../../src/data/read-text.ts";
import { dataError } from "../../src/errors/data-error.ts";

const header = "machine,season,bin,product,fill,catch,turns,net_kg";

function problemsIn(...rows: readonly string[]) {
  const checked = checkText({ name: "catches.csv", text: [header, ...rows].join("\n") });
  return checked.ok ? [] : checked.issues.map(({ row, problem }) => [row, problem]);
}

describe("rows beside one another", () => {
  it("are right where fills follow one another, and where they are mixed up", () => {
    expect(problemsIn("a,1,b,oats,1,1,20,5", "a,1,b,oats,1,2,20,5", "a,1,b,oats,2,1,20,5")).toEqual(
      [],
    );
    expect(problemsIn("a,1,b,oats,2,1,20,5", "a,1,b,oats,1,2,20,5", "a,1,b,oats,1,1,20,5")).toEqual(
      [],
    );
  });

  it.each([
    ["right after it", ["a,1,b,oats,1,1,20,5", "a,1,b,oats,1,1,20,5"]],
    ["after a later catch", ["a,1,b,oats,1,1,20,5", "a,1,b,oats,1,2,20,5", "a,1,b,oats,1,1,20,6"]],
    ["after another fill", ["a,1,b,oats,1,1,20,5", "a,1,b,oats,2,1,20,5", "a,1,b,oats,1,1,20,5"]],
  ])("are refused where a catch is there again %s", (_, rows) => {
    expect(problemsIn(...rows)).toEqual([[rows.length + 1, "catch-repeated"]]);
  });

  it("are those of other catches on another machine or in another season", () => {
    expect(problemsIn("a,1,b,oats,1,1,20,5", "c,1,b,oats,1,1,20,5", "a,2,b,oats,1,1,20,5")).toEqual(
      [],
    );
  });

  it("are refused where a fill holds two products, side by side or apart", () => {
    const mixed = [[3, "two-products-in-fill"]];
    expect(problemsIn("a,1,b,oats,1,1,20,5", "a,1,b,rye,1,2,20,5")).toEqual(mixed);
    expect(problemsIn("a,1,b,oats,1,1,20,5", "a,1,b,rye,1,2,20,5", "a,1,c,rye,1,2,20,5")).toEqual(
      mixed,
    );
  });

  it("are refused where only some name the machine", () => {
    expect(problemsIn("a,1,b,oats,1,1,20,5", ",1,b,oats,2,1,20,5")).toEqual([[3, "key-missing"]]);
  });

  it("are refused where a name is spelt in two ways", () => {
    expect(problemsIn("a,1,b,oats,1,1,20,5", "a,1,B,oats,2,1,20,5")).toEqual([
      [3, "bin-spelt-twice"],
    ]);
    expect(problemsIn("a,1,b,oats,1,1,20,5", "A,1,b,oats,2,1,20,5")).toEqual([
      [3, "key-spelt-twice"],
    ]);
  });

  it("are named up to as many problems of a kind as of any file, the first standing for the rest", () => {
    const rows = Array.from({ length: 3_000 }, (_, i) => `,1,b,oats,${i + 2},1,20,5`);
    const checked = checkText({
      name: "catches.csv",
      text: [header, "a,1,b,oats,1,1,20,5", ...rows].join("\n"),
    });
    const issues = checked.ok ? [] : checked.issues;
    expect(issues).toHaveLength(1_000);
    expect(issues[0]?.alike).toBe(2_000);
    expect(dataError("catches.csv", issues).message).toMatch(
      /3000 problems[\s\S]*The same is wrong in 2000 more rows/,
    );
  });
});
