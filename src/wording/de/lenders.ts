import type { LenderFacts, OtherMeters } from "../en/lenders.ts";

const bins = (meters: number) => (meters === 1 ? "dem anderen Tank" : `${meters} anderen Tanks`);
const ofLibrary = (meters: number) =>
  meters === 1 ? "1 Dosierer der Bibliothek" : `${meters} Dosierern der Bibliothek`;

export const lenders = ({ fills, meters, library, assumed }: LenderFacts): string =>
  [
    ...(fills ? ["den anderen Füllungen dieses Tanks"] : []),
    ...(meters > 0 ? [bins(meters)] : []),
    ...(library > 0 ? [ofLibrary(library)] : []),
    ...(assumed ? ["dem typischen Wert aus dem Setup"] : []),
  ].join(" und ");

/** The same where it is only said with whom a bin tells something together. */
export const togetherWith = ({ meters, library }: OtherMeters): string =>
  [
    ...(meters > 0 ? [meters === 1 ? "einem anderen Tank" : `${meters} anderen Tanks`] : []),
    ...(library > 0 ? [ofLibrary(library)] : []),
  ].join(" und ");

/** Whom a bin may be like. */
export const likeWhom = ({ meters, library }: OtherMeters): string =>
  [
    ...(meters > 0 ? ["Ihre anderen Tanks"] : []),
    ...(library > 0 ? ["die Dosierer der Bibliothek"] : []),
  ].join(" und ");

/** The same of what belongs to them. */
export const thoseOfWhom = ({ meters, library }: OtherMeters): string =>
  [
    ...(meters > 0 ? ["die Ihrer anderen Tanks"] : []),
    ...(library > 0 ? ["die der Dosierer der Bibliothek"] : []),
  ].join(" und ");
