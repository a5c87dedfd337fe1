import { configDefaults, defineConfig } from "vitest/config";
import { leisurely, replacing, slow } from "./test/support/slow.ts";

/** What can be known in under a minute: no browser, notebooks, package or studies. */
export default defineConfig({
  test: {
    include: ["test/**/*.test.ts"],
    exclude: [...configDefaults.exclude, ...Object.keys(slow), ...leisurely, ...replacing],
    testTimeout: 60_000,
    hookTimeout: 60_000,
    maxWorkers: "100%",
    isolate: false,
  },
});
