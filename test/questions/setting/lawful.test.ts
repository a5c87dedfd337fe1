import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { TargetRate } from "../../../src/data/setup.ts";
import { dfOfInterval } from "../../../src/model/interval-df.ts";
import { aCatch } from "../../support/catches.ts";
import { motorDrive, set, speeds, wanted, wheelDrive } from "../../support/field-answers.ts";
import { present } from "../../support/reference.ts";
import { evalR } from "../../support/webr.ts";

const mass = (kgPerHectare: number): TargetRate => ({ kind: "mass", kgPerHectare });
const motor = { ...motorDrive, ...speeds, ...wanted };
const codes = ({ cautions }: ReturnType<typeof set>) => cautions.map(({ code }) => code);

describe("label or law at the setting", () => {
  it("is not spoken of where neither sets a rate", () => {
    expect(set(motor).lawful).toBeNull();
  });

  it("is broken with the chance of Student's t about the target, as R has it (pt)", async () => {
    const result = set({ ...motor, lowestRate: mass(108), highestRate: mass(111.5) });
    const { rate, ofStep, chance } = present(result.lawful);
    const { value, standardError } = present(rate);
    expect(value).toBeCloseTo(110, 9);
    expect(ofStep).toBe(false);
    const [below, above] = await evalR(
      "c(pt((108 - 110) / s, v), pt((111.5 - 110) / s, v, lower.tail = FALSE))",
      { s: present(standardError), v: present(dfOfInterval(present(rate))) },
    );
    expect(chance.below).toBeCloseTo(present(below), 9);
    expect(chance.above).toBeCloseTo(present(above), 9);
    expect(chance.either).toBeCloseTo(present(below) + present(above), 9);
  });

  it("leaves half of what the level leaves at either end of the rate's interval", () => {
    const interval = present(present(set(motor).around).rows[3]?.rate.interval);
    const ends = {
      lowestRate: mass(present(interval.lower)),
      highestRate: mass(present(interval.upper)),
    };
    const { chance } = present(set({ ...motor, ...ends }).lawful);
    expect(chance.below).toBeCloseTo(0.025, 6);
    expect(chance.above).toBeCloseTo(0.025, 6);
  });

  it("is about the nearest step where the drive has steps, its doubts of width, travel and slip included", () => {
    const given = { ...wheelDrive, ...wanted, lowestRate: mass(90), highestRate: mass(150) };
    const result = set(given);
    const step = present(result.steps[present(result.nearest).nearest]);
    expect(result.lawful).toMatchObject({ ofStep: true, rate: step.rate });
    expect(present(result.lawful).rate?.method).toBe("GUM propagation");
  });

  it("is about the ratio needed where a wheel has no steps", () => {
    const { drive, ...wheel } = wheelDrive;
    const result = set({
      ...wheel,
      ...wanted,
      drive: { ...drive, steps: null, stepNames: null },
      highestRate: mass(130),
    });
    expect(result.lawful?.rate?.value).toBeCloseTo(110, 9);
    expect(result.lawful?.chance.below).toBeNull();
  });

  it("is told of a target alone, whatever turns the meter; without a target nothing is set and no chance told", () => {
    const alone = set({ ...wanted, highestRate: mass(115) });
    expect(alone.lawful?.chance.above).toBeGreaterThan(0);
    const without = set({ ...motorDrive, ...speeds, lowestRate: mass(90), highestRate: mass(150) });
    expect(without.lawful).toEqual({
      lowestKgPerHa: 90,
      highestKgPerHa: 150,
      rate: null,
      ofStep: false,
      chance: { below: null, above: null, either: null },
    });
    expect(without.missing).toContain("target rate");
  });

  it("gives no chance where the delivery has no error yet", () => {
    const oneCatch = set({ ...wanted, highestRate: mass(115) }, [aCatch({ turns: 20, netKg: 6 })]);
    expect(oneCatch.lawful?.chance).toEqual({ below: null, above: null, either: null });
  });

  it("names the seed figures that a lawful rate of seeds takes", () => {
    const result = set({ ...motor, highestRate: { kind: "seeds", seedsPerM2: 350 } });
    expect(result.missing).toEqual(["thousand-kernel mass"]);
    expect(result.lawful).toMatchObject({ highestKgPerHa: null, chance: { either: null } });
  });

  it("asks for more catches above a chance of 5 %, not at a smaller one", () => {
    const near = set({ ...motor, highestRate: mass(110.5) });
    expect(present(near.lawful).chance.above).toBeGreaterThan(0.05);
    expect(codes(near)).toContain("rate-may-break-law");
    const wide = set({ ...motor, lowestRate: mass(95), highestRate: mass(125) });
    expect(present(present(wide.lawful).chance.either)).toBeLessThan(0.05);
    expect(codes(wide)).not.toContain("rate-may-break-law");
  });

  it("stops a target that is the limit itself, which no number of catches keeps", () => {
    const on = set({ ...motor, highestRate: mass(110) });
    expect(on.cautions.find(({ code }) => code === "target-on-limit")).toMatchObject({
      severity: "serious",
      asks: "look-first",
      // Both sides of a symmetric error.
      facts: { rateKgPerHa: 110, below: null, above: expect.closeTo(0.5, 9) },
    });
    expect(codes(on)).not.toContain("rate-may-break-law");
    expect(codes(on)).not.toContain("rate-against-law");
    expect(codes(set({ ...motor, lowestRate: mass(110) }))).toContain("target-on-limit");
  });

  it("stops a target, and a step, that breaks it", () => {
    const target = set({ ...motor, highestRate: mass(109) });
    expect(target.cautions.find(({ code }) => code === "rate-against-law")).toMatchObject({
      severity: "serious",
      asks: "look-first",
      facts: { of: "target", rateKgPerHa: 110, lowestKgPerHa: null, highestKgPerHa: 109 },
    });
    expect(codes(target)).not.toContain("rate-may-break-law");
    const { drive, ...wheel } = wheelDrive;
    const given = { ...wheel, ...wanted, drive: { ...drive, steps: [0.7], stepNames: ["low"] } };
    const rate = present(set(given).steps[0]).rate.value;
    expect(rate).toBeLessThan(109);
    const step = set({ ...given, lowestRate: mass(109) });
    expect(step.cautions.find(({ code }) => code === "rate-against-law")).toMatchObject({
      facts: { of: "step", rateKgPerHa: rate },
    });
    expect(codes(set({ ...given, lowestRate: mass(rate - 0.01) }))).not.toContain(
      "rate-against-law",
    );
  });

  it("is broken less likely the wider it is", () => {
    const place = fc.double({ min: 0.1, max: 40, noNaN: true });
    fc.assert(
      fc.property(place, place, place, (down, up, further) => {
        const chanceOf = (below: number, above: number) =>
          present(
            set({ ...motor, lowestRate: mass(110 - below), highestRate: mass(110 + above) }).lawful,
          ).chance;
        const [near, far] = [chanceOf(down, up), chanceOf(down + further, up + further)];
        for (const end of ["below", "above", "either"] as const) {
          expect(present(far[end])).toBeLessThan(present(near[end]));
          expect(present(far[end])).toBeGreaterThan(0);
          expect(present(near[end])).toBeLessThan(1);
        }
      }),
      { seed: 4, numRuns: 60 },
    );
  });
});
