import { mean, median, sampleVariance, sum } from "simple-statistics";
import { expect, it } from "vitest";
import { statisticsAtRest } from "./statistics-at-rest.ts";

it("answers as the whole package does, and holds nothing that is done when it is loaded", async () => {
  const code = statisticsAtRest();
  const rest = await import(`data:text/javascript,${encodeURIComponent(code)}`);
  const values = [6.36, 6.48, 6.56, 6.4, 6.41, 1e9, -3];
  for (const whole of [sum, mean, median, sampleVariance])
    expect(rest[whole.name]([...values])).toBe(whole([...values]));
  expect(code.length).toBeGreaterThan(100_000);
  expect(code).not.toContain(".prototype.predict");
});
