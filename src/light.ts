// `evencatch/light`: one call a question on catches as a program has them at hand, nothing to read or to set up before.

export {
  delivery,
  drift,
  type Enough,
  type EnoughOptions,
  enough,
  type OneCallOptions,
  outliers,
  plan,
  repeatability,
  skipping,
} from "./analysis/light/one-call.ts";
export type { PlainCatches } from "./analysis/light/plain-catches.ts";
export { type History, history } from "./analysis/light/without-setup.ts";
