import type { ProductGroup } from "../../model/product-groups.ts";
import { type Caution, caution } from "../../results/caution.ts";
import type { DeliveryRegression, NewProductPrediction, Variable } from "./result.ts";

export interface ExplainingFindings {
  readonly groups: readonly ProductGroup[];
  readonly variables: readonly Variable[];
  readonly betweenProducts: readonly DeliveryRegression[];
  readonly withinProducts: DeliveryRegression | null;
  readonly prediction: NewProductPrediction | null;
  /** Asked for, whether or not it could be made. */
  readonly predictionAsked: boolean;
}

const comfortableProducts = 5;

/** Everything about explaining variables that a person should know before relying on it. */
export function explainingCautions(findings: ExplainingFindings): readonly Caution[] {
  return [
    ...aboutRecords(findings),
    ...aboutVariables(findings),
    ...aboutProducts(findings),
    ...aboutPrediction(findings),
  ];
}

function aboutRecords({ groups, variables }: ExplainingFindings): Caution[] {
  const fills = groups.reduce((count, group) => count + group.fills.length, 0);
  if (variables.length === 0) return [caution("nothing-recorded", {}, {})];
  return variables
    .filter((variable) => variable.fills < fills)
    .map(({ name, fills: known }) =>
      caution("variable-missing", {}, { variable: name, fills: fills - known }),
    );
}

function aboutVariables({ variables, groups, withinProducts }: ExplainingFindings): Caution[] {
  const still = variables
    .filter(({ lowest, highest }) => lowest === highest)
    .map(({ name }) => caution("variable-constant", {}, { variable: name }));
  const inFills = variables.filter(({ varies }) => varies.withinProducts);
  const repeated = groups.some(({ fills }) => fills.length >= 3);
  return withinProducts === null && inFills.length > 0 && repeated
    ? [
        ...still,
        caution("variables-not-told-apart", {}, { variables: inFills.map(({ name }) => name) }),
      ]
    : still;
}

function aboutProducts({ groups, betweenProducts }: ExplainingFindings): Caution[] {
  if (betweenProducts.length === 0 || groups.length >= comfortableProducts) return [];
  return [caution("few-products", {}, { products: groups.length })];
}

function aboutPrediction({ prediction, predictionAsked }: ExplainingFindings): Caution[] {
  if (prediction === null) return predictionAsked ? [caution("no-density", {}, {})] : [];
  const { densityKgPerM3, lowest, highest, extrapolates, products } = prediction;
  return [
    ...(extrapolates ? [caution("density-outside", {}, { densityKgPerM3, lowest, highest })] : []),
    ...(products < comfortableProducts ? [caution("new-product-from-few", {}, { products })] : []),
  ];
}
