/** The little of jstat that is used here; the package has no types of its own. */
declare module "jstat" {
  const jstat: {
    readonly jStat: {
      lstsq(rows: number[][], y: number[]): number[];
      anovafscore(...groups: number[][]): number;
      anovaftest(...groups: number[][]): number;
      readonly chisquare: { cdf(x: number, df: number): number };
      readonly studentt: { inv(p: number, df: number): number };
      readonly normal: { inv(p: number, mean: number, sd: number): number };
      gammaln(x: number): number;
    };
  };
  // biome-ignore lint/style/noDefaultExport: a CommonJS package, which Node gives as the default.
  export default jstat;
}
