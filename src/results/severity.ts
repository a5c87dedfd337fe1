/**
 * note: worth knowing · caution: read before relying on the number · serious: do not rely on the number
 * until this is settled.
 */
export type Severity = "note" | "caution" | "serious";
