import { describe, expect, it } from "vitest";
import { fitModel } from "../../../src/model/model.ts";
import { fleet } from "../../../src/questions/fleet.ts";
import { type FleetPlan, inventedFleet } from "../../support/fleets.ts";
import { present } from "../../support/reference.ts";
import { evalR } from "../../support/webr.ts";

function factorsOf(given: Partial<FleetPlan>, change: (row: Row) => Row = (row) => row) {
  const { catches } = inventedFleet(9, { meters: 16, ...given });
  return present(fleet(fitModel(catches.map(change)))).factors;
}
type Row = ReturnType<typeof inventedFleet>["catches"][number];

const people = ["Anna", "Ben", "Cem"];
const inTurn = (place: number, fill: number) => ({ operator: people[(place + fill) % 3] ?? "" });
const whyOf = ({ uncompared }: ReturnType<typeof factorsOf>) =>
  Object.fromEntries(uncompared.map(({ factor, why }) => [factor, why]));

describe("operators on the same meters", () => {
  const slow = (row: Row) => (row.operator === "Ben" ? { ...row, netKg: 0.94 * row.netKg } : row);

  it("are found to differ, by as much as R finds from the mean logarithms of their fills", async () => {
    const { compared } = factorsOf({ beside: inTurn }, slow);
    const [operator] = compared;
    const { levels, test, within, differ, adjusted } = present(operator);
    expect(within).toBe("meters");
    expect(differ).toBe(true);
    expect(adjusted).toBe(test.pValue);

    const { catches } = inventedFleet(9, { meters: 16, beside: inTurn });
    const model = fitModel(catches.map(slow));
    const rows = model.meters.flatMap(({ history }, meter) =>
      (history.stretches.at(-1)?.fills ?? []).map(({ catches: [first], delivery }) => ({
        meter,
        person: people.indexOf(first?.operator ?? ""),
        log: Math.log(delivery),
      })),
    );
    const inR = await evalR(
      `a <- aggregate(y ~ m + g, FUN = mean); n <- table(a$m); a <- a[a$m %in% names(n)[n > 1], ]
       a$m <- factor(a$m); a$g <- factor(a$g); contrasts(a$g) <- contr.sum(3)
       full <- lm(y ~ m + g, a); test <- anova(lm(y ~ m, a), full)
       b <- tail(coef(full), 2); c(test$F[2], test$"Pr(>F)"[2], exp(c(b, -sum(b))))`,
      {
        y: rows.map(({ log }) => log),
        m: rows.map(({ meter }) => meter),
        g: rows.map(({ person }) => person),
      },
    );
    expect(test.statistic / (inR[0] ?? 1)).toBeCloseTo(1, 9);
    expect(test.pValue / (inR[1] ?? 1)).toBeCloseTo(1, 6);
    people.forEach((name, i) => {
      const own = present(levels.find(({ label }) => label === name));
      expect(own.ratio.value).toBeCloseTo(inR[2 + i] ?? Number.NaN, 9);
    });
  });

  it("are not found to differ where they do not", () => {
    expect(present(factorsOf({ beside: inTurn }).compared[0]).differ).toBe(false);
  });
});

describe("machines, which no meter changes", () => {
  it("are compared between meters with the same product", () => {
    const beside = (place: number) => ({ machine: place % 8 < 4 ? "north" : "south" });
    const { compared } = factorsOf({ beside });
    expect(compared.map(({ factor, within, meters }) => [factor, within, meters])).toEqual([
      ["machine", "products", 16],
    ]);
  });

  it("of one name on several farms are several, named as their bins are", () => {
    const farms = ["A", "B"];
    const beside = (place: number) => ({
      farm: farms[Math.floor(place / 8)] ?? "",
      machine: place % 8 < 4 ? "1" : "2",
    });
    const light = (row: Row) =>
      row.farm === "B" && row.machine === "1" ? { ...row, netKg: 0.85 * row.netKg } : row;
    const [machine] = factorsOf({ beside }, light).compared;
    const { levels, test, differ } = present(machine);
    expect(levels.map(({ label, meters }) => [label, meters])).toEqual([
      ["1/A", 4],
      ["2/A", 4],
      ["1/B", 4],
      ["2/B", 4],
    ]);
    expect(differ).toBe(true);
    // Degrees of freedom by hand: 4 machines − 1; 16 meters − 4 products − 3.
    expect([test.df1, test.df2]).toEqual([3, 9]);
    const [first, second, low] = levels.map(({ ratio }) => ratio.value);
    expect(low).toBeLessThan(Math.min(first ?? 0, second ?? 0));
  });

  it("are named alone where all are of one farm", () => {
    const beside = (place: number) => ({ farm: "A", machine: place % 8 < 4 ? "1" : "2" });
    const [machine] = factorsOf({ beside }).compared;
    expect(present(machine).levels.map(({ label }) => label)).toEqual(["1", "2"]);
  });

  it("are not where each has products of its own", () => {
    const beside = (place: number) => ({ machine: place % 2 === 0 ? "a" : "b" });
    expect(whyOf(factorsOf({ beside, products: ["wheat", "peas"] })).machine).toBe(
      "never side by side",
    );
  });
});

describe("what cannot be compared", () => {
  it("says why", () => {
    const beside = (place: number) => ({
      operator: "Anna",
      extra: { scale: place === 0 ? "old" : "new" },
    });
    expect(whyOf(factorsOf({ beside }))).toEqual({
      operator: "one only",
      scale: "too few meters",
      machine: "not recorded",
    });
  });

  it("holds fills whose catches disagree or say nothing", () => {
    const beside = () => ({ operator: "" });
    expect(whyOf(factorsOf({ beside })).operator).toBe("not recorded");
    const disagreeing = (row: Row) => ({ ...row, operator: row.catch === 1 ? "Anna" : "Ben" });
    expect(whyOf(factorsOf({}, disagreeing)).operator).toBe("not recorded");
  });
});
