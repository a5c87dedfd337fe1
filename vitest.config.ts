import { defineConfig } from "vitest/config";

export default defineConfig({
  test: {
    include: ["test/**/*.test.ts"],
    testTimeout: 60_000,
    hookTimeout: 60_000,
    // Every core: by default one is left idle, which on two cores makes one file wait for another.
    maxWorkers: "100%",
  },
});
