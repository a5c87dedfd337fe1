export type { PoolDialect } from "./pool/dialect.ts";
export type { EngineOptions } from "./pool/engine.ts";
export { type PoolStatement, type PoolTable, poolSql, poolStatements } from "./pool/pool-sql.ts";
export {
  type PoolOptions,
  type PoolProgress,
  type PoolStep,
  poolTotals,
} from "./pool/pool-totals.ts";
export { fillRecords } from "./pool/records.ts";
