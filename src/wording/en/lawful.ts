import type { Facts } from "./facts.ts";

/** What is said of rates that label or law sets. */
export const lawful = {
  atLeast: (rate: string) => `at least ${rate}`,
  atMost: (rate: string) => `at most ${rate}`,
  both: (f: Facts<"lowest" | "highest">) => `at least ${f.lowest}, at most ${f.highest}`,
  tooLittle: (chance: string) => `the chance of too little is ${chance}`,
  tooMuch: (chance: string) => `the chance of too much is ${chance}`,
  either: (f: Facts<"little" | "much">) =>
    `the chance of too little is ${f.little}, of too much ${f.much}`,
  doNotSkip: (limits: string) => `Do not skip: label or law sets ${limits}.`,
  /** Once set by the catches so far. */
  onceSet: (chance: string) => `Set by these catches, ${chance}.`,
  onceSetUnknown: "How likely the rate breaks that once set cannot be said.",
  /** A rate whose mass takes seed figures that are not given. */
  unknownLimits: "rates whose mass cannot be reckoned without the seed figures",
};
