import { type Measured, oneDecimal } from "./measure.ts";
import type { CertifiedRow } from "./strd.ts";

/** The accuracy report as Markdown. */
export function accuracyReport(
  measured: readonly Measured[],
  certified: readonly CertifiedRow[],
): string {
  return [
    "# Accuracy",
    "",
    "How many digits of each numerical function are right. Made by `npm run accuracy`; the reference values and the",
    "scripts that made them are in `test/reference`.",
    "",
    "## Distributions and special functions",
    "",
    "Digits are −log10 of the relative error, at most 16, against values computed to 25 digits: degrees of freedom from",
    "0.5 (1 for noncentral t and the studentized range) to 1,000,000, also not whole; probabilities from 1e-8 to 1 − 1e-8;",
    "noncentrality from −3 to 150; 2 to 20 means. Each tail is compared with its own value, so a small upper tail is as",
    "good as a small lower one.",
    "",
    table(
      ["function", "computed by", "least digits", "median digits", "least digits found at"],
      measured.map((row) => [
        `\`${row.function}\``,
        row.provider,
        row.minDigits.toFixed(1),
        row.medianDigits.toFixed(1),
        row.where,
      ]),
    ),
    "",
    "## NIST Statistical Reference Datasets",
    "",
    "Certified: significant digits that NIST certifies. Reachable: how many of them exact arithmetic finds in the data as",
    "doubles hold them; data like 1000000000000.4 lose most of theirs when stored. Reached: what the function returns.",
    "",
    table(
      ["data set", "quantity", "function", "certified", "reachable", "reached"],
      certified.map((row) => [
        row.set,
        row.quantity,
        `\`${row.routine}\``,
        row.certifiedDigits === null ? "exact" : String(row.certifiedDigits),
        oneDecimal(Math.min(15, row.reachableDigits)).toFixed(1),
        oneDecimal(Math.min(15, row.reachedDigits)).toFixed(1),
      ]),
    ),
    "",
  ].join("\n");
}

function table(head: readonly string[], rows: readonly (readonly string[])[]): string {
  const line = (cells: readonly string[]) => `| ${cells.join(" | ")} |`;
  return [line(head), line(head.map(() => "---")), ...rows.map(line)].join("\n");
}
