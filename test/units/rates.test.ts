import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { NumericalError } from "../../src/errors/errors.ts";
import { convert } from "../../src/units/convert.ts";
import * as rates from "../../src/units/rates.ts";

const { driveRatio, meterSpeed, rateOfTurns, travelInWork, travelSpeed, turnsPerHectare } = rates;

describe("from rate to drive and back", () => {
  const amount = (min: number, max: number) => fc.double({ min, max, noNaN: true });
  const field = fc.record({
    rate: amount(1, 500),
    delivery: amount(0.01, 5),
    width: amount(1, 30),
    travel: amount(0.5, 10),
    speed: amount(2, 20),
  });

  it("sets what puts out the rate it was set for, by turns, by ratio and by meter speed", () => {
    fc.assert(
      fc.property(field, ({ rate, delivery, width, travel, speed }) => {
        const turns = turnsPerHectare(rate, delivery);
        const ratio = driveRatio(turns, width, travel);
        const perMinute = meterSpeed(turns, width, speed);
        for (const back of [
          turns,
          rates.turnsPerHectareOfRatio(ratio, width, travel),
          rates.turnsPerHectareOfSpeed(perMinute, width, speed),
        ])
          expect(rateOfTurns(delivery, back) / rate).toBeCloseTo(1, 12);
        expect(travelSpeed(turns, width, perMinute) / speed).toBeCloseTo(1, 12);
      }),
    );
  });

  it("turns 120 kg/ha, 18 m, 8 km/h and 0.5 kg/turn into 57.6 turns/min, also in customary units", () => {
    expect(meterSpeed(turnsPerHectare(120, 0.5), 18, 8)).toBeCloseTo(57.6, 12);
    const customary =
      (convert(120, "kg/ha", "lb/ac") * convert(18, "m", "ft") * convert(8, "km/h", "mph")) /
      (495 * convert(0.5, "kg/turn", "lb/turn"));
    expect(customary).toBeCloseTo(57.6, 10);
  });

  it("delivers a rate short by the share of slip that was not reckoned with", () => {
    const free = rates.turnsPerHectareOfRatio(0.9, 12, 2.2);
    const inWork = rates.turnsPerHectareOfRatio(0.9, 12, travelInWork(2.2, 0.05));
    expect(inWork / free).toBeCloseTo(0.95, 12);
  });
});

describe("seed", () => {
  it("needs as much mass for plants as for the seeds that bring them up", () => {
    const amount = fc.double({ min: 1, max: 500, noNaN: true });
    const share = fc.double({ min: 0.2, max: 1, noNaN: true });
    fc.assert(
      fc.property(amount, amount, share, (plants, mass, establishment) => {
        const seeds = rates.massRateOfSeeds(plants / establishment, mass);
        expect(rates.massRateOfPlants(plants, mass, establishment) / seeds).toBeCloseTo(1, 12);
      }),
    );
  });

  it("has the exact factor 10.4130 between g × plants/ft² and lb/ac", () => {
    const plants = convert(1, "plants/ft²", "plants/m²");
    const rate = convert(rates.massRateOfPlants(plants, 1, 1), "kg/ha", "lb/ac");
    expect(1 / rate).toBeCloseTo(10.413, 4);
  });
});

describe("what cannot be", () => {
  it.each([0, -1, Number.NaN, Number.POSITIVE_INFINITY])("refuses %d in every formula", (bad) => {
    for (const [name, formula] of Object.entries(rates)) {
      const call = formula as (...given: number[]) => number;
      for (let place = 0; place < formula.length; place++) {
        const given = Array.from({ length: formula.length }, (_, i) => (i === place ? bad : 0.5));
        // Slip is a share that may be none, or negative for a wheel that turns too often.
        if (name === "travelInWork" && place === 1 && bad <= 0) continue;
        expect(() => call(...given), `${name}, argument ${place + 1}`).toThrow(NumericalError);
      }
    }
  });

  it("refuses a wheel that slips all the way, and names the argument", () => {
    expect(() => travelInWork(2, 1)).toThrow("travelInWork: 1 − slip is 0");
    expect(() => rateOfTurns(1e200, 1e200)).toThrow("outside what a number can hold");
  });
});
