import { describe, expect, it } from "vitest";
import { type CatchColumn, catchColumns } from "../../src/data/columns.ts";
import { csv, logOf } from "../support/catch-files.ts";

describe("the list of columns", () => {
  it("makes a file that can be read from its own examples", async () => {
    const log = await logOf(
      csv(
        catchColumns.map(({ name }) => name).join(","),
        catchColumns.map(({ example }) => example).join(","),
      ),
    );
    expect(log.catches[0]?.extra).toEqual({});
    expect(log.catches[0]?.netKg).toBe(5.89);
  });

  it("marks exactly those columns as required without which a file is refused", () => {
    const required = catchColumns.filter((column) => column.required).map(({ name }) => name);
    expect(required).toEqual(["bin", "product", "fill", "catch", "turns"]);
  });

  it("describes each column and names its unit wherever the name carries one", () => {
    for (const column of catchColumns as readonly CatchColumn[]) {
      expect(column.description).not.toBe("");
      if (/_(kg|pct|rpm|m3)$/.test(column.name)) expect(column.unit).not.toBeNull();
    }
  });
});
