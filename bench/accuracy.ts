/**
 * Measures how many digits of every numerical function are right and writes reports/accuracy.md and
 * reports/accuracy.json. Run: npm run accuracy
 */
import { writeFileSync } from "node:fs";
import { measureDistributions } from "./accuracy/distributions.ts";
import { accuracyReport } from "./accuracy/report.ts";
import { certifiedRows } from "./accuracy/strd.ts";

const measured = measureDistributions();
const certified = certifiedRows();
const reports = new URL("../reports/", import.meta.url);
writeFileSync(new URL("accuracy.md", reports), accuracyReport(measured, certified));
writeFileSync(new URL("accuracy.json", reports), `${JSON.stringify(measured, null, 2)}\n`);
console.log(`${measured.length} functions, ${certified.length} certified values measured.`);
