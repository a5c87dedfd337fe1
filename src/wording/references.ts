/** The sources of the methods that a report names, by a short key, as they stand in a list of references; from A to Z. */
export const references = {
  bartlettKendall:
    "Bartlett, M. S., Kendall, D. G. (1946). The statistical analysis of variance-heterogeneity and the logarithmic transformation. Supplement to the Journal of the Royal Statistical Society 8, 128–138.",
  benjaminiHochberg:
    "Benjamini, Y., Hochberg, Y. (1995). Controlling the false discovery rate. Journal of the Royal Statistical Society B 57, 289–300.",
  cochran: "Cochran, W. G. (1977). Sampling Techniques, 3rd edition, chapter 6. Wiley.",
  cookWeisberg:
    "Cook, R. D., Weisberg, S. (1982). Residuals and Influence in Regression. Chapman and Hall.",
  degroot: "DeGroot, M. H. (1970). Optimal Statistical Decisions. McGraw-Hill.",
  draperSmith: "Draper, N. R., Smith, H. (1998). Applied Regression Analysis, 3rd edition. Wiley.",
  dunnett:
    "Dunnett, C. W. (1955). A multiple comparison procedure for comparing several treatments with a control. Journal of the American Statistical Association 50, 1096–1121.",
  fieller:
    "Fieller, E. C. (1954). Some problems in interval estimation. Journal of the Royal Statistical Society B 16, 175–185.",
  gamesHowell:
    "Games, P. A., Howell, J. F. (1976). Pairwise multiple comparison procedures with unequal N's and/or variances. Journal of Educational Statistics 1, 113–125.",
  gum: "JCGM 100:2008. Evaluation of measurement data: Guide to the expression of uncertainty in measurement.",
  gumMonteCarlo:
    "JCGM 101:2008. Supplement 1 to the Guide: Propagation of distributions using a Monte Carlo method.",
  hahnMeeker: "Hahn, G. J., Meeker, W. Q. (1991). Statistical Intervals. Wiley.",
  hawkins:
    "Hawkins, D. M. (1977). Testing a sequence of observations for a shift in location. Journal of the American Statistical Association 72, 180–186.",
  holm: "Holm, S. (1979). A simple sequentially rejective multiple test procedure. Scandinavian Journal of Statistics 6, 65–70.",
  iso5725:
    "ISO 5725-2:2019. Accuracy (trueness and precision) of measurement methods and results, part 2.",
  jeffreys:
    "Jeffreys, H. (1961). Theory of Probability, 3rd edition, 5.2. Oxford University Press.",
  kramer:
    "Kramer, C. Y. (1956). Extension of multiple range tests to group means with unequal numbers of replications. Biometrics 12, 307–310.",
  longErvin:
    "Long, J. S., Ervin, L. H. (2000). Using heteroscedasticity consistent standard errors in the linear regression model. The American Statistician 54, 217–224.",
  nist: "NIST/SEMATECH. e-Handbook of Statistical Methods; NIST Statistical Reference Datasets.",
  roberts:
    "Roberts, S. W. (1966). A comparison of some control chart procedures. Technometrics 8, 411–430.",
  rosner:
    "Rosner, B. (1983). Percentage points for a generalized ESD many-outlier procedure. Technometrics 25, 165–172.",
  schuirmann:
    "Schuirmann, D. J. (1987). A comparison of the two one-sided tests procedure and the power approach. Journal of Pharmacokinetics and Biopharmaceutics 15, 657–680.",
  shiryaev:
    "Shiryaev, A. N. (1963). On optimum methods in quickest detection problems. Theory of Probability and Its Applications 8, 22–46.",
  smyth:
    "Smyth, G. K. (2004). Linear models and empirical Bayes methods for assessing differential expression. Statistical Applications in Genetics and Molecular Biology 3, article 3.",
  snedecorCochran:
    "Snedecor, G. W., Cochran, W. G. (1989). Statistical Methods, 8th edition. Iowa State University Press.",
  tukey: "Tukey, J. W. (1953). The Problem of Multiple Comparisons. Princeton University.",
  vangel:
    "Vangel, M. G. (1996). Confidence intervals for a normal coefficient of variation. The American Statistician 50, 21–26.",
  zellner:
    "Zellner, A. (1986). On assessing prior distributions and Bayesian regression analysis with g-prior distributions. In: Bayesian Inference and Decision Techniques, 233–243. North-Holland.",
} as const;

export type ReferenceKey = keyof typeof references;

/** "Smyth 2004" of "Smyth, G. K. (2004). …", "JCGM 100:2008" of a standard: as it is cited in a text. */
export function citation(key: ReferenceKey): string {
  const text: string = references[key];
  const authors = /^([^(]+)\((\d{4})\)/.exec(text);
  if (authors === null) return text.slice(0, text.indexOf(". "));
  const names = [...(authors[1] ?? "").matchAll(/([\p{L}-]+), (?:\p{Lu}\.[ -]?)+/gu)].map(
    ([, name]) => name,
  );
  return `${names.join(" and ")} ${authors[2]}`;
}
