import type { LenderFacts } from "../en/lenders.ts";

const bins = (meters: number) => (meters === 1 ? "dem anderen Tank" : `${meters} anderen Tanks`);

export const lenders = ({ fills, meters, assumed }: LenderFacts): string =>
  [
    ...(fills ? ["den anderen Füllungen dieses Tanks"] : []),
    ...(meters > 0 ? [bins(meters)] : []),
    ...(assumed ? ["dem typischen Wert aus dem Setup"] : []),
  ].join(" und ");
