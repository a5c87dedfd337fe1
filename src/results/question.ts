/** Questions of one bin and product that may fail, by the names of their answers. */
export type Question =
  | "delivery"
  | "outliers"
  | "catchesNeeded"
  | "setting"
  | "drift"
  | "fieldCheck"
  | "repeatability"
  | "uncertaintyBudget"
  | "speedLinearity"
  | "outlets"
  | "acrossFills"
  | "skipping"
  | "cost";
