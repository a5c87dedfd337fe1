/**
 * One table of conversion factors. Each unit is a ratio of two whole numbers to the base unit of its dimension,
 * because the factors are exact by definition: as ratios they stay exact, and grams become kilograms by a division
 * by 1000, which a computer rounds correctly, rather than by a product with 0.001, which it cannot store.
 *
 * Sources: NIST Special Publication 811 (2008), appendix B.8, and NIST Handbook 44, appendix C, section 4 (exact values
 * underlined): 1 lb = 0.453 592 37 kg, 1 oz = 1/16 lb, 1 ft = 0.3048 m, 1 in = 25.4 mm, 1 mile = 1609.344 m,
 * 1 acre = 43 560 ft², 1 US bushel = 2150.42 in³. Derived factors are these multiplied out.
 * The foot is the international foot; the US survey foot (retired at the end of 2022) makes an acre 4 parts in a million larger.
 */
export const factors = {
  mass: {
    kg: { numerator: 1, denominator: 1 },
    g: { numerator: 1, denominator: 1000 },
    t: { numerator: 1000, denominator: 1 },
    lb: { numerator: 45_359_237, denominator: 100_000_000 },
    oz: { numerator: 45_359_237, denominator: 1_600_000_000 },
  },
  length: {
    m: { numerator: 1, denominator: 1 },
    ft: { numerator: 3048, denominator: 10_000 },
    in: { numerator: 254, denominator: 10_000 },
  },
  area: {
    ha: { numerator: 1, denominator: 1 },
    "m²": { numerator: 1, denominator: 10_000 },
    // 43 560 × 0.3048² m²
    ac: { numerator: 40_468_564_224, denominator: 100_000_000_000 },
  },
  speed: {
    "km/h": { numerator: 1, denominator: 1 },
    "m/s": { numerator: 36, denominator: 10 },
    mph: { numerator: 1_609_344, denominator: 1_000_000 },
  },
  rate: {
    "kg/ha": { numerator: 1, denominator: 1 },
    // 0.453 592 37 kg ÷ 0.404 685 642 24 ha
    "lb/ac": { numerator: 45_359_237_000, denominator: 40_468_564_224 },
    "g/m²": { numerator: 10, denominator: 1 },
  },
  // Seeds sown and plants standing differ by establishment, so neither converts into the other.
  seeds: {
    "seeds/m²": { numerator: 1, denominator: 1 },
    "seeds/ft²": { numerator: 100_000_000, denominator: 9_290_304 },
    // 1 ÷ 4046.856 422 4 m²
    "seeds/ac": { numerator: 10_000_000, denominator: 40_468_564_224 },
  },
  plants: {
    "plants/m²": { numerator: 1, denominator: 1 },
    "plants/ft²": { numerator: 100_000_000, denominator: 9_290_304 },
    "plants/ac": { numerator: 10_000_000, denominator: 40_468_564_224 },
  },
  delivery: {
    "kg/turn": { numerator: 1, denominator: 1 },
    "g/turn": { numerator: 1, denominator: 1000 },
    "lb/turn": { numerator: 45_359_237, denominator: 100_000_000 },
    "oz/turn": { numerator: 45_359_237, denominator: 1_600_000_000 },
  },
  density: {
    "kg/m³": { numerator: 1, denominator: 1 },
    // 0.453 592 37 kg ÷ 0.035 239 070 166 88 m³
    "lb/bu": { numerator: 45_359_237_000_000, denominator: 3_523_907_016_688 },
    // 0.453 592 37 kg ÷ 0.3048³ m³
    "lb/ft³": { numerator: 453_592_370_000, denominator: 28_316_846_592 },
  },
  rotation: {
    "turns/min": { numerator: 1, denominator: 1 },
  },
} as const satisfies Record<string, Record<string, Factor>>;

/** The unit is numerator/denominator of the base unit, the first of its dimension. Both are whole numbers below 2⁵³. */
export interface Factor {
  readonly numerator: number;
  readonly denominator: number;
}

export type Dimension = keyof typeof factors;

/** Units of one dimension: `UnitOf<"mass">` is "kg" | "g" | "t" | "lb" | "oz". */
export type UnitOf<D extends Dimension> = {
  readonly [K in D]: Extract<keyof (typeof factors)[K], string>;
}[D];

/** Every unit evencatch converts. */
export type ConvertibleUnit = UnitOf<Dimension>;

/** Units of the same dimension as U, itself included. */
export type CompatibleUnit<U extends ConvertibleUnit> = {
  readonly [D in Dimension]: U extends UnitOf<D> ? UnitOf<D> : never;
}[Dimension];
