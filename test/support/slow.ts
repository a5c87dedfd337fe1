/** Test files that take more than ten seconds on two cores, the longest first, each with what the time buys. */
export const slow: Readonly<Record<string, string>> = {
  "test/page/app/answer.test.ts": "200 invented mornings on the page and as a report",
  "test/page/drill.test.ts": "mornings typed into the page in a browser",
  "test/report/every-chart.test.ts":
    "every chart of the demo reports in a browser, on a phone and wide, in both languages",
  "test/notebooks.test.ts": "runs and type-checks every notebook in a process of its own",
  "test/one-voice.test.ts": "150 invented logs on every surface in both languages",
  "test/report/demo-reports.test.ts": "whole reports in a browser, three themes, two widths",
  "test/bench/study/skipping.test.ts": "a smoke run of the study",
  "test/cli/report-command.test.ts": "the command as a process, with charts drawn",
  "test/notebooks/recipes.test.ts": "R and Python as processes, each on a season",
  "test/package.test.ts": "packs, installs and bundles the package",
  "test/report/html.test.ts": "pages in a browser",
  "test/questions/outliers/simulation.test.ts": "rates of flags by simulation",
  "test/bench/study/coverage.test.ts": "a smoke run of the study",
  "test/api-reference.test.ts": "declarations of the whole library from the compiler",
  "test/statistics/family-wise-error.test.ts": "family-wise error rates by simulation",
  "test/bench/study/decision.test.ts": "a smoke run of the study",
  "test/wording/de/same-answers.test.ts": "everything said in German against English",
  "test/places.test.ts": "compiles a copy of the library with a question more",
  "test/bench/study/drift.test.ts": "a smoke run of the study",
  "test/bench/study/outliers.test.ts": "a smoke run of the study",
  "test/bench/study/stopping.test.ts": "a smoke run of the study",
  "test/report/interactive/chart-runtime.test.ts": "charts answering a pointer in a browser",
};

/** Files that put something in the place of a module, and so are loaded apart from the others. */
export const replacing: readonly string[] = [
  "test/analysis/failed-question.test.ts",
  "test/data/new-column.test.ts",
  "test/wording/problems.test.ts",
];

/** Left out of the quick run besides: processes, R and simulations that take some seconds each. */
export const leisurely: readonly string[] = [
  "test/one-answer.test.ts",
  "test/cli/plan-command.test.ts",
  "test/cli/loaded.test.ts",
  "test/bench/study/lending.test.ts",
  "test/cli/output.test.ts",
  "test/cli/enough-command.test.ts",
  "test/analysis/decision.test.ts",
  "test/questions/uncertainty-budget.test.ts",
  "test/questions/cost.test.ts",
  "test/questions/explaining-variables.test.ts",
  "test/statistics/comparisons-in-r.test.ts",
  "test/numeric/distributions/distributions.test.ts",
  "test/report/german.test.ts",
  "test/charts/product-comparison.test.ts",
  "test/charts/product-contrasts.test.ts",
  "test/samples.test.ts",
  "test/docs.test.ts",
  "test/analysis/coarse-scale.test.ts",
  "test/bench/study/division.test.ts",
  "test/questions/trial-plan.test.ts",
  "test/bench/study/blocks.test.ts",
  "test/questions/outliers/named-tests.test.ts",
  "test/questions/skipping.test.ts",
  "test/statistics/without-scatter.test.ts",
  "test/report/sections/drift.test.ts",
  "test/statistics/change-point.test.ts",
  "test/charts/field.test.ts",
];
