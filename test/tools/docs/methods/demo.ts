import { join } from "node:path";
import { type Analysis, analyse, type MeterAnswers } from "../../../../src/index.ts";
import { readCatchesFile, readSetupFile } from "../../../../src/node.ts";
import { root } from "../../../support/compiler.ts";

/** Answers on demo data that the examples of the methods are worked out beside. */
export interface Demo {
  readonly threeBins: Analysis;
  readonly season: Analysis;
}

export async function readDemo(): Promise<Demo> {
  const of = async (name: string) => {
    const folder = join(root, "data-demo", name);
    return analyse(
      await readCatchesFile(join(folder, "catches.csv")),
      await readSetupFile(join(folder, "setup.json")),
    );
  };
  return { threeBins: await of("three-bins"), season: await of("season") };
}

/** The answers about a bin; an error where the demo data have none, so that no example is left out in silence. */
export function binOf(analysis: Analysis, bin: string): MeterAnswers {
  const found = analysis.meters.find((answers) => answers.bin === bin);
  if (found === undefined) throw new Error(`The demo data have no bin ${bin}.`);
  return found;
}
