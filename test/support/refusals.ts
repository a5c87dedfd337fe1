import { expect, it } from "vitest";
import { NumericalError } from "../../src/errors/errors.ts";

/** Values that an argument must not have, and values at the edge of those it may. */
export interface Domain {
  readonly wrong: readonly number[];
  readonly right: readonly number[];
}

const none = [Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];

export const anyNumber: Domain = { wrong: [Number.NaN], right: [0, -3, 3] };
export const finite: Domain = { wrong: none, right: [0, -3, 3] };
export const positive: Domain = { wrong: [...none, 0, -2], right: [1e-3, 2] };
export const notNegative: Domain = { wrong: [...none, -1e-9], right: [0, 2] };
export const positiveOrInfinite: Domain = {
  wrong: [Number.NaN, Number.NEGATIVE_INFINITY, 0, -2],
  right: [0.5, Number.POSITIVE_INFINITY],
};
export const probability: Domain = { wrong: [...none, 0, 1, -0.2, 1.2], right: [0.6, 0.95] };
export const wholeFrom = (least: number): Domain => ({
  wrong: [...none, least - 1, least + 0.5],
  right: [least, least + 1],
});

/** The values but for those that would take too long, or have no answer for another reason. */
export const but = ({ wrong }: Domain, right: readonly number[]): Domain => ({ wrong, right });

/** An argument of a routine as its message names it, the values it may have, and a call that is right in all else. */
export type Refusal = readonly [
  routine: string,
  argument: string,
  domain: Domain,
  call: (value: number) => unknown,
];

/** One test an argument: every wrong value is refused by a message that names routine, argument and value; no right one is. */
export function refuseOutOfDomain(refusals: readonly Refusal[]): void {
  it.each(refusals)("%s refuses %s out of its domain", (routine, argument, domain, call) => {
    for (const value of domain.wrong) {
      expect(() => call(value), `${value}`).toThrow(NumericalError);
      expect(() => call(value)).toThrow(`${routine}: ${argument} is ${value}; it must be `);
    }
    for (const value of domain.right) expect(() => call(value), `${value}`).not.toThrow();
  });
}

/** A call that nothing can be made of, by the words its message must hold. */
export type Unusable = readonly [words: string, call: () => unknown];

export function refuseUnusable(cases: readonly Unusable[]): void {
  it.each(cases)("refuses where %s", (words, call) => {
    expect(call).toThrow(NumericalError);
    expect(call).toThrow(words);
  });
}
