import { cautionsAcrossFills } from "./cautions-across-fills.ts";
import { cautionsCatches } from "./cautions-catches.ts";
import { cautionsField } from "./cautions-field.ts";
import { cautionsFile } from "./cautions-file.ts";
import { cautionsOneFill } from "./cautions-one-fill.ts";
import { cautionsProducts } from "./cautions-products.ts";

/** Sentences of every caution, topic by topic. */
export const cautions = {
  file: cautionsFile,
  oneFill: cautionsOneFill,
  acrossFills: cautionsAcrossFills,
  catches: cautionsCatches,
  products: cautionsProducts,
  field: cautionsField,
};
