import { computed, effect, type ReadonlySignal, signal } from "@preact/signals";
import type { Setup } from "../../data/setup.ts";
import type { Cost } from "../../questions/cost.ts";
import { type DecisionLines, decisionLines } from "../../report/sections/decision.ts";
import type { PageWords } from "../../wording/words.ts";
import type { Given } from "../given.ts";
import { answersOf, type BinAnswer, costOf } from "./answer.ts";
import type { PageLog } from "./log.ts";

interface Asked {
  readonly log: ReadonlySignal<PageLog>;
  readonly setup: ReadonlySignal<Setup | null>;
  readonly library: Given["library"];
  readonly words: ReadonlySignal<PageWords>;
  /** Name of the bin in sight; null: the first. */
  readonly tab: ReadonlySignal<string | null>;
}

/** Quiet after the last change before anything is asked that takes long. */
const quietMs = 600;

/**
 * The answers that follow from the log: what to do with the bin in sight with the key itself, what lies behind that a task
 * later, then the others a task each, and what costs and saves money when it is quiet.
 */
export function answering({ log, setup, library, words, tab }: Asked) {
  const answers = computed(() => answersOf(log.value, setup.value, library));
  const bin = computed<BinAnswer | null>(() => {
    const { bins } = log.value;
    const open = bins.find((one) => one.bin === tab.value) ?? bins[0];
    return open === undefined ? null : answers.value.of(open);
  });
  const all = signal<readonly SaidAnswer[]>([]);
  const costs = signal<ReadonlyMap<BinAnswer, Cost>>(new Map());
  const settled = signal<SaidAnswer | null>(null);
  /** Of these answers and in these words; each said once for all that show it. */
  const said = computed(() => ({
    grounds: answers.value.grounds,
    words: words.value,
    lines: new Map<BinAnswer, DecisionLines>(),
  }));

  const linesOf = (answer: BinAnswer): DecisionLines | null => {
    const { grounds, words: say, lines } = said.value;
    if (answer.answers === null || grounds === null) return null;
    const found = lines.get(answer) ?? decisionLines(answer.answers, grounds, say);
    lines.set(answer, found);
    return found;
  };

  const saidOf = (answer: BinAnswer): SaidAnswer => ({ answer, lines: linesOf(answer) });

  effect(() => {
    const of = answers.value;
    // Said anew in other words, too; what is done later is not followed.
    words.value;
    const { bins } = log.peek();
    const others = bins.map((one) => () => void of.of(one));
    const settle = () => {
      const open = bin.peek();
      settled.value = open === null ? null : saidOf(open);
    };
    const show = () => {
      all.value = bins.map((one) => saidOf(of.of(one)));
    };
    const priced = hasPrices(setup.peek()) ? bins : [];
    const current = new Map<BinAnswer, Cost>();
    const prices = priced.map((one) => () => {
      const answer = of.of(one);
      const cost = answer.answers === null ? null : costOf(one, of);
      if (cost !== null) costs.value = new Map(current.set(answer, cost));
    });
    return inTurn([
      ...[settle, ...others, show].map((step) => ({ step, wait: 0 })),
      ...prices.map((step, i) => ({ step, wait: i === 0 ? quietMs : 0 })),
    ]);
  });

  return {
    /** About the bin in sight. */
    bin,
    /** What lies behind the answer about the bin in sight: of the same bin it may be a task behind. */
    behind: computed(() => {
      const [open, last] = [bin.value, settled.value];
      if (open === null) return null;
      return last?.answer.bin.bin === open.bin.bin ? last : saidOf(open);
    }),
    /** About every bin, each as soon as it is known. */
    all,
    /** What is wrong with the catches; nothing, as a rule. */
    issues: computed(() => answers.value.issues),
    /** Null: nothing is decided before the first catch that counts. */
    linesOf,
    /** Null: no prices are given, or it is not worked out yet. */
    costOf: (answer: BinAnswer): Cost | null => costs.value.get(answer) ?? null,
  };
}

/** An answer with its decision in words; null: nothing is decided yet. */
export interface SaidAnswer {
  readonly answer: BinAnswer;
  readonly lines: DecisionLines | null;
}

interface Step {
  readonly step: () => void;
  /** Milliseconds before it. */
  readonly wait: number;
}

/** Each in a task of its own, so that no key waits for more than one. Returns what ends it. */
function inTurn(steps: readonly Step[]): () => void {
  let timer: ReturnType<typeof setTimeout> | undefined;
  const next = ([first, ...others]: readonly Step[]) => {
    if (first === undefined) return;
    timer = setTimeout(() => {
      first.step();
      next(others);
    }, first.wait);
  };
  next(steps);
  return () => clearTimeout(timer);
}

function hasPrices(setup: Setup | null): boolean {
  return (
    setup !== null &&
    [setup.money, ...setup.bins.map(({ money }) => money)].some(
      (money) => money !== null && Object.values(money).some((price) => price !== null),
    )
  );
}
