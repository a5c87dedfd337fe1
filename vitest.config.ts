import { configDefaults, defineConfig } from "vitest/config";
import { BaseSequencer, type TestSpecification } from "vitest/node";
import { replacing, slow } from "./test/support/slow.ts";

/** The slow files first, so that no core is left with one of them when everything else is done. */
class SlowFirst extends BaseSequencer {
  override async sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    const place = ({ moduleId }: TestSpecification) => {
      const at = Object.keys(slow).findIndex((name) => moduleId.endsWith(name));
      return at < 0 ? Number.POSITIVE_INFINITY : at;
    };
    return [...(await super.sort(files))].sort((a, b) => {
      const [first, second] = [place(a), place(b)];
      return first === second ? 0 : first - second;
    });
  }
}

export default defineConfig({
  test: {
    testTimeout: 120_000,
    hookTimeout: 120_000,
    // Every core: by default one is left idle, which on two cores makes one file wait for another.
    maxWorkers: "100%",
    sequence: { sequencer: SlowFirst },
    projects: [
      {
        extends: true,
        test: {
          name: "shared",
          include: ["test/**/*.test.ts"],
          exclude: [...configDefaults.exclude, ...replacing],
          // The library and R are loaded once for many files; no test changes what others see.
          isolate: false,
        },
      },
      { extends: true, test: { name: "alone", include: [...replacing] } },
    ],
  },
});
