import { configDefaults, mergeConfig } from "vitest/config";
import { leisurely, slow } from "./test/support/slow.ts";
import everything from "./vitest.config.ts";

/** What can be known in under a minute: no browser, notebooks, package or studies. */
export default mergeConfig(everything, {
  test: { exclude: [...configDefaults.exclude, ...Object.keys(slow), ...leisurely] },
});
