import { sameName } from "../data/spreads/classes.ts";
import { defaults } from "../results/defaults.ts";
import {
  addVotes,
  assumedVote,
  type EstimatedVariance,
  noVotes,
  type SpreadVote,
  type VoteSums,
  voteAmongOthers,
  voteOfOthers,
  withoutVotes,
} from "../statistics/spread-votes.ts";

/**
 * What one meter, of this log or of another season, can tell others. Variances relative to the square of the delivery:
 * `spread` of its fills, within levels; `scatter` of a one-turn catch, in turns. Null: it cannot tell.
 */
export interface MeterRecord {
  /** Of a library: the class of its product; null: none is told, and the meter speaks for any product as other bins do. */
  readonly product: string | null;
  readonly spread: EstimatedVariance | null;
  readonly scatter: EstimatedVariance | null;
}

/** Whether other bins speak for how much a bin's catches and fills scatter; never for what it delivers. */
export type Borrow = "other bins" | "none";

/** Typical figures to take for granted where no other bin speaks; null: none. */
export interface AssumedSpreads {
  /** Relative standard deviation of fills. */
  readonly spread: number | null;
  /** Relative standard deviation of a catch of 20 turns. */
  readonly scatter: number | null;
}

/** Whom a meter may ask. */
export interface BorrowingChoices {
  readonly borrow: Borrow;
  /** Meters of other logs. */
  readonly library: readonly MeterRecord[];
  readonly assumed: AssumedSpreads;
}

export const usualBorrowing: BorrowingChoices = {
  borrow: "other bins",
  library: [],
  assumed: { spread: null, scatter: null },
};

/** What others than a meter itself say of one of its spreads. */
export interface OutsideVote extends SpreadVote {
  readonly from: "other bins" | "assumption";
  /** Meters that speak; 0 for an assumption. */
  readonly meters: number;
  /** Those of a library among them; left out: none. */
  readonly library?: number;
  /** True when only meters with the same product were asked, because there are two or more. */
  readonly sameProduct: boolean;
}

/** What of a record a vote is about. */
type Kind = "spread" | "scatter";

/** All that lend, summed up once for every meter of the log. */
export interface Lenders {
  readonly all: VoteSums;
  readonly ofProduct: ReadonlyMap<string, VoteSums>;
  /** Of the library alone. */
  readonly library: Pick<Lenders, "all" | "ofProduct">;
}

const fewestOfProduct = 2;

/** Sums up what meters say of one kind of spread. */
export function lendersOf(
  records: readonly MeterRecord[],
  kind: Kind,
  library: readonly MeterRecord[] = [],
): Lenders {
  return { ...sumsOf([...records, ...library], kind), library: sumsOf(library, kind) };
}

function sumsOf(records: readonly MeterRecord[], kind: Kind): Pick<Lenders, "all" | "ofProduct"> {
  const ofProduct = new Map<string, VoteSums>();
  let all = noVotes;
  for (const record of records) {
    const vote = partOf(record[kind]);
    all = addVotes(all, vote);
    if (record.product === null) continue;
    const product = sameName(record.product);
    ofProduct.set(product, addVotes(ofProduct.get(product) ?? noVotes, vote));
  }
  return { all, ofProduct };
}

/**
 * What the other meters say of one: all of them, or, where two or more hold its product, only those.
 *
 * @param own  the meter's record, which is among the lenders and does not count
 * @returns    null where no other meter can tell
 */
export function voteOfOtherMeters(
  { all, ofProduct, library }: Lenders,
  own: MeterRecord,
  kind: Kind,
): OutsideVote | null {
  const mine = partOf(own[kind]);
  const product = own.product === null ? "" : sameName(own.product);
  const same = withoutVotes(ofProduct.get(product) ?? noVotes, mine);
  const sameProduct = same.count >= fewestOfProduct;
  const others = sameProduct ? same : withoutVotes(all, mine);
  const vote = voteOfOthers(others, defaults.betweenMeters);
  if (vote === null) return null;
  const { center, variance } = vote;
  const { count } = sameProduct ? (library.ofProduct.get(product) ?? noVotes) : library.all;
  const said = { center, variance, from: "other bins", meters: others.count } as const;
  return count > 0 ? { ...said, library: count, sameProduct } : { ...said, sameProduct };
}

/**
 * An assumption as a vote.
 *
 * @param typicalVariance  relative, of what the assumption is about
 */
export function voteOfAssumption(typicalVariance: number): OutsideVote {
  const vote = assumedVote(typicalVariance, defaults.aboutAssumed);
  return { ...vote, from: "assumption", meters: 0, sameProduct: false };
}

/** Relative variance of a one-turn catch where one of 20 turns scatters so much. */
export function perTurnVariance(relative: number): number {
  return relative ** 2 * defaults.assumedScatter.turns;
}

/** What each meter is told by all others, or by the assumption where there are none. */
export function outsideVotes(
  records: readonly MeterRecord[],
  kind: Kind,
  { borrow, library, assumed }: BorrowingChoices,
): readonly (OutsideVote | null)[] {
  const stated = assumed[kind];
  const variance =
    stated === null ? null : kind === "scatter" ? perTurnVariance(stated) : stated ** 2;
  const assumption = variance === null ? null : voteOfAssumption(variance);
  if (borrow === "none") return records.map(() => assumption);
  const lenders = lendersOf(records, kind, library);
  return records.map((own) => voteOfOtherMeters(lenders, own, kind) ?? assumption);
}

function partOf(estimated: EstimatedVariance | null): VoteSums {
  return estimated === null ? noVotes : voteAmongOthers(estimated, defaults.betweenMeters);
}
