import { at } from "../../../src/errors/at.ts";
import { randomStream } from "../../../src/numeric/random.ts";
import { bandOf, level } from "../lending/outcomes.ts";
import { isEnough, type Library } from "./library.ts";
import { catchesOf, catchesOfFill, deliveryOf, logOf, tolerance, trueBins } from "./logs.ts";

const mostCatches = 8;
/** What a fill is drilled with: 40 ha at 0.6 a hectare and percent; a catch costs 4, setting up 8. */
export const job = { hectares: 40, perPercent: 0.6, perCatch: 4, toSetUp: 8 } as const;

export interface MorningOutcome {
  readonly catches: number;
  readonly held: boolean;
  /** Relative, without sign. */
  readonly error: number;
  readonly cost: number;
}

/** A fill caught one catch at a time until the library says set, at most eight; two other bins were caught before. */
export function morning(
  library: Library,
  setup: object | null,
  earlierFills: number,
  replicate: number,
  seed: number,
): MorningOutcome {
  const random = randomStream(seed + 104_729 * replicate + earlierFills);
  const truth = trueBins(earlierFills + 1, random);
  const own = at(truth, 0);
  const before = truth.flatMap((bin, b) =>
    catchesOf(bin, b === 0 ? earlierFills : earlierFills + 1, 3, random),
  );
  const today = catchesOfFill(own, earlierFills + 1, mostCatches, random);
  for (let catches = 1; ; catches++) {
    const log = logOf([...before, ...today.slice(0, catches)]);
    const options = { level, scaleDivisionKg: null, ...(setup === null ? { tolerance } : {}) };
    const answers = library.analyse(log, setup, options).meters.find(({ bin }) => bin === own.bin);
    if (answers === undefined) throw new Error("The bin was not answered.");
    if (catches < mostCatches && !isEnough(answers)) continue;
    const { estimate } = answers.delivery;
    const truly = deliveryOf(own, earlierFills + 1);
    const error = Math.abs(estimate.value / truly - 1);
    const { hectares, perPercent, perCatch, toSetUp } = job;
    return {
      catches,
      held: bandOf(estimate, truly)?.holds === true,
      error,
      cost: 100 * hectares * perPercent * error + toSetUp + catches * perCatch,
    };
  }
}
