import { describe, expect, it } from "vitest";
import { analyse } from "../../src/analysis/analyse.ts";
import { libraryRecords, spreadLibrary } from "../../src/analysis/spread-library.ts";
import { readSpreadLibrary } from "../../src/data/spreads/read.ts";
import { spreadLibraryText } from "../../src/data/spreads/write.ts";
import type { Catch } from "../../src/data/types.ts";
import { DataError } from "../../src/errors/errors.ts";
import { usualBorrowing } from "../../src/model/lenders.ts";
import { fitModel } from "../../src/model/model.ts";
import { present } from "../support/reference.ts";
import { inventedFills } from "../support/simulated-fills.ts";

const made = { day: "2026-11-29", by: "evencatch 1.0.0" };

interface Bin {
  readonly bin: string;
  readonly product: string;
  readonly extra?: Readonly<Record<string, string>>;
}

/** Fills of bins that scatter each by its own measure. */
const caughtIn = (bins: readonly Bin[], source = 0): Catch[] =>
  bins.flatMap(({ bin, product, extra = {} }, i) =>
    inventedFills(
      { fills: 4, catches: 3, spread: 0.01 * (1 + i), scatter: 0.005 * (1 + i), bin },
      100 * source + i,
    ).map((one) => ({ ...one, product, extra, takenAt: "2026-04-12", operator: "Kim" })),
  );
const bins = (count: number, product: string, from = 1): Bin[] =>
  Array.from({ length: count }, (_, i) => ({ bin: `Bin ${from + i}`, product }));

describe("a library of spreads", () => {
  const log = caughtIn(bins(6, "Wheat AC"));
  const model = fitModel(log);

  it("has each meter's figures as the model lends them, and no name, date or order of the log", () => {
    const { library, leftOut } = spreadLibrary([model], made);
    expect(leftOut).toEqual([]);
    expect(library.made).toMatchObject({ ...made, catches: 72, fills: 24, meters: 6 });
    expect(library.records.map(({ scatter }) => scatter?.variance)).toEqual(
      model.meters
        .map(({ record }) => Number(present(record.scatter).variance.toPrecision(6)))
        .sort((a, b) => a - b),
    );
    expect(library.records.map(({ fills, catches }) => [fills, catches])).toEqual(
      Array.from({ length: 6 }, () => [4, 12]),
    );
    const text = spreadLibraryText(library);
    for (const name of ["Bin", "Wheat", "wheat", "Kim", "2026-04-12"])
      expect(text).not.toContain(name);
    const turned = fitModel(log.toReversed().map((one, i) => ({ ...one, row: i + 2 })));
    expect(spreadLibraryText(spreadLibrary([turned], made).library)).toBe(text);
  });

  it("lends what its meters would lend themselves, but for digits nobody knows", () => {
    const own = inventedFills({ fills: 3, catches: 3, spread: 0.02, scatter: 0.01 }, 9);
    const text = spreadLibraryText(spreadLibrary([model], made).library);
    const library = libraryRecords(readSpreadLibrary({ name: "spreads.json", text }));
    const lent = (records: typeof library) =>
      present(fitModel(own, {}, { borrowing: { ...usualBorrowing, library: records } }).meters[0]);
    const [bySelf, byFile] = [lent(model.meters.map(({ record }) => record)), lent(library)];
    expect(byFile.spreadVote?.meters).toBe(6);
    expect(present(byFile.spreadVote).center).toBeCloseTo(present(bySelf.spreadVote).center, 5);
    expect(present(byFile.scatter.outside).variance).toBeCloseTo(
      present(bySelf.scatter.outside).variance,
      9,
    );
  });

  it("tells class and type where a table or columns of the catches do, and speaks for a product of that name first", () => {
    const extra = { Product_Class: " Legumes ", meter_type: "fluted roller" };
    const legumes = bins(5, "peas", 20).map((one) => ({ ...one, extra }));
    const both = fitModel(caughtIn([...bins(5, "Wheat AC"), ...legumes]));
    const { library } = spreadLibrary([both], {
      ...made,
      classes: new Map([["wheat ac", "cereals"]]),
    });
    const told = library.records.map(({ productClass, meterType }) => [productClass, meterType]);
    expect(told.slice(0, 5)).toEqual(told.slice(0, 5).map(() => ["Legumes", "fluted roller"]));
    expect(told.slice(5)).toEqual(told.slice(5).map(() => ["cereals", null]));
    const own = caughtIn([{ bin: "1", product: "legumes" }], 7);
    const borrowing = { ...usualBorrowing, library: libraryRecords(library) };
    expect(fitModel(own, {}, { borrowing }).meters[0]?.spreadVote).toMatchObject({
      meters: 5,
      sameProduct: true,
    });
  });

  it("leaves a class of fewer than five bins out, however many meters and products they hold", () => {
    const few = ["oats", "rye", "barley"].flatMap((product) => bins(4, product, 30));
    const classes = new Map([
      ["oats", "rare"],
      ["rye", "rare"],
      ["barley", "rare"],
    ]);
    const caught = caughtIn([...bins(5, "wheat"), ...few]).map((one, i) => ({
      ...one,
      row: i + 2,
    }));
    const { library, leftOut } = spreadLibrary([fitModel(caught)], { ...made, classes });
    expect(leftOut).toEqual([{ productClass: "rare", meterType: null, bins: 4 }]);
    expect(library.records).toHaveLength(5);
    expect(library.made).toMatchObject({ meters: 17, metersLeftOut: 12, fewestBins: 5 });
  });

  it("refuses to tell of fewer than five bins at all, and counts a bin of another log as another", () => {
    const four = fitModel(caughtIn(bins(4, "wheat")));
    const refused = () => spreadLibrary([four], { ...made, source: "season.csv" });
    expect(refused).toThrow(DataError);
    expect(refused).toThrow(
      "season.csv: found 4 bins in the largest class; needed at least 5 bins in a class, so that nobody's meter is told by itself.",
    );
    const another = fitModel(caughtIn(bins(1, "wheat"), 3));
    expect(spreadLibrary([four, another], made).library.records).toHaveLength(5);
  });

  it("counts no bin that cannot tell", () => {
    const single = bins(3, "wheat", 40).flatMap(({ bin, product }) =>
      inventedFills({ fills: 1, catches: 1, spread: 0, scatter: 0, bin }, 5).map((one) => ({
        ...one,
        product,
      })),
    );
    expect(() =>
      spreadLibrary([fitModel([...caughtIn(bins(4, "wheat")), ...single])], made),
    ).toThrow("found 4 bins");
  });

  it("carries the hashes of its tables in no order, where they are given", () => {
    const tables = ["b".repeat(64), "a".repeat(64)];
    const { library } = spreadLibrary([model], { ...made, tablesSha256: tables });
    expect(library.made.tablesSha256).toEqual(["a".repeat(64), "b".repeat(64)]);
    expect(spreadLibrary([model], made).library.made.tablesSha256).toBeNull();
  });

  it("can be made of what an analysis was asked with", () => {
    const { library } = spreadLibrary([fitModel(log)], made);
    const own = inventedFills({ fills: 2, catches: 3, spread: 0.02, scatter: 0.01 }, 9);
    const file = {
      source: "x.csv",
      massUnit: "kg",
      catches: own,
      written: [],
      cautions: [],
    } as const;
    const alone = analyse(file);
    const lent = analyse(file, null, { library: libraryRecords(library) });
    expect(present(lent.meters[0]).delivery.scatter.lentBy.meters).toBe(6);
    expect(present(alone.meters[0]).delivery.scatter.lentBy.meters).toBe(0);
  });
});
