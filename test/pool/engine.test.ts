import { expect, it, vi } from "vitest";
import { PackageError } from "../../src/errors/errors.ts";
import { poolTotals } from "../../src/pool.ts";

vi.mock("@duckdb/node-api", () => {
  throw new Error("Cannot find package '@duckdb/node-api'");
});

it("says which package is missing, and the line that installs it", async () => {
  const error = await poolTotals("catches.csv")
    .next()
    .catch((thrown: unknown) => thrown);
  expect(error).toBeInstanceOf(PackageError);
  expect(error).toMatchObject({
    code: "package-missing",
    package: "@duckdb/node-api",
    install: "npm install @duckdb/node-api",
    message:
      "The optional package @duckdb/node-api is needed here and cannot be loaded: npm install @duckdb/node-api",
  });
});
