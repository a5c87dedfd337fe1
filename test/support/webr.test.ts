import { describe, expect, it } from "vitest";
import { evalR } from "./webr.ts";

describe("the R session of the tests", () => {
  it("is the version whose values the tests were written against", async () => {
    expect(await evalR("c(as.numeric(R.version$major), as.numeric(R.version$minor))")).toEqual([
      4, 6,
    ]);
  });

  it("gives numbers to the last bit", async () => {
    expect(await evalR("c(0.1 + 0.2, pi, 2^-1074)")).toEqual([
      0.1 + 0.2,
      Math.PI,
      Number.MIN_VALUE,
    ]);
  });

  it("takes variables, also infinite ones", async () => {
    const [mean, tail] = await evalR("c(mean(x), pt(2, df))", {
      x: [1, 2, 4],
      df: Number.POSITIVE_INFINITY,
    });
    expect(mean).toBeCloseTo(7 / 3, 14);
    expect(tail).toBeCloseTo(0.977249868, 9);
  });

  it("forgets what earlier code assigned", async () => {
    await evalR("leftover <- 1; leftover");
    expect(await evalR("exists('leftover')")).toEqual([0]);
  });

  it("forgets variables that earlier code was given", async () => {
    await evalR("given", { given: 1 });
    expect(await evalR("exists('given')")).toEqual([0]);
  });

  it("reports R's own message when the code fails", async () => {
    await expect(evalR("stop('no such thing')")).rejects.toThrow("no such thing");
  });
});
