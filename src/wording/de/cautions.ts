/* Sentences of every caution, topic by topic. */
export { cautionsAcrossFills as acrossFills } from "./cautions-across-fills.ts";
export { cautionsCatches as catches } from "./cautions-catches.ts";
export { cautionsDrift as drift } from "./cautions-drift.ts";
export { cautionsField as field } from "./cautions-field.ts";
export { cautionsFile as file } from "./cautions-file.ts";
export { cautionsOneFill as oneFill } from "./cautions-one-fill.ts";
export { cautionsPlanning as planning } from "./cautions-planning.ts";
export { cautionsProducts as products } from "./cautions-products.ts";
export { cautionsSuspected as suspected } from "./cautions-suspected.ts";
