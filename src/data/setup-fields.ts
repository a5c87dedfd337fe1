/** A value JSON can hold. */
export type JsonValue =
  | string
  | number
  | boolean
  | null
  | readonly JsonValue[]
  | { readonly [key: string]: JsonValue };

/** One field of a setup file. A path with [] stands for every entry of a list. */
export interface SetupField {
  readonly path: string;
  readonly type: string;
  readonly description: string;
  readonly example: JsonValue;
}

const text = "text";
const number = "number";
const percentage = "percentage";
const mass = "mass in kg, g, t, lb or oz";
const length = "length in m, ft or in";
const area = "area in ha, m² or ac";
const rate = "rate in kg/ha or lb/ac";
const delivery = "delivery in kg/turn, g/turn, lb/turn or oz/turn";
const withDoubt = (quantity: string) => `${quantity}, with an optional standard_uncertainty`;

/** Every field of a setup file, in the order of a full one. All are optional except where the description says so. */
export const setupFields: readonly SetupField[] = [
  field("title", text, "Heading of the report", "Spring wheat, north farm"),
  field("tolerance_percent", percentage, "Largest rate error that is accepted", 5),
  field("confidence_percent", percentage, "Confidence level of the intervals", 95),
  field("assurance_percent", percentage, "Chance wanted of reaching the width aimed at", 80),
  field("scale.division", mass, "Step of the scale's display", q(10, "g")),
  field("scale.capacity", mass, "The heaviest catch that scale and bag take", q(15, "kg")),
  field(
    "scale.tested_error_percent",
    percentage,
    "Error found with a known mass: shown less known, in percent of known",
    0.1,
  ),
  field("cart.working_width", withDoubt(length), "Width that one pass covers", q(12, "m", 0.05)),
  field("cart.speed", "from and to, each a speed in km/h, m/s or mph", "Range of working speed", {
    from: q(6, "km/h"),
    to: q(9, "km/h"),
  }),
  field(
    "cart.wheel_circumference",
    withDoubt(length),
    "Travel per turn of the drive wheel, loaded and without skid",
    q(2.35, "m", 0.01),
  ),
  field(
    "cart.skid_percent",
    percentage,
    "Share of the distance over which the wheel did not turn",
    3,
  ),
  field(
    "cart.skid_standard_uncertainty_percent",
    percentage,
    "Standard uncertainty of the skid",
    1,
  ),
  field(
    "cart.turn_count_standard_uncertainty",
    number,
    "Standard uncertainty of a count of meter turns, in turns",
    0.1,
  ),
  field(
    "bins[].bin",
    "name or number",
    "Bin as the catches name it; must be given in each entry",
    "1",
  ),
  field("bins[].product", text, "Product, when the entry is for this product only", "wheat"),
  field(
    "bins[].target_rate",
    `${rate}, seeds/m², seeds/ft², plants/m² or plants/ft²`,
    "Rate wanted",
    q(120, "kg/ha"),
  ),
  field(
    "bins[].book_value",
    withDoubt(delivery),
    "Delivery assumed when there is no catch",
    q(0.4, "kg/turn", 0.01),
  ),
  field(
    "bins[].assumed",
    'one of "book", "previous", "mean"',
    "What the drive is set for without a catch: the book value, the fill before, or the mean of earlier fills",
    "previous",
  ),
  field("bins[].turns_per_hectare", number, "Meter turns per hectare as set now", 300),
  field(
    "bins[].drive.kind",
    '"ground-wheel" or "motor"',
    "What turns the meter; must be given with a drive",
    "ground-wheel",
  ),
  field("bins[].drive.ratio", number, "Meter turns per wheel turn as set now (ground-wheel)", 0.85),
  field(
    "bins[].drive.steps",
    "list of numbers",
    "Ratios that can be set (ground-wheel)",
    [0.8, 0.85, 0.9],
  ),
  field("bins[].drive.step_names", "list of texts", "A name for each step (ground-wheel)", [
    "A1",
    "A2",
    "A3",
  ]),
  field(
    "bins[].drive.meter_speed",
    "from and to, each in turns/min",
    "Meter speeds the drive can hold (motor)",
    { from: q(5, "turns/min"), to: q(120, "turns/min") },
  ),
  field("bins[].seed.thousand_kernel_mass_g", number, "Mass of a thousand kernels, in grams", 38),
  field(
    "bins[].seed.thousand_kernel_mass_standard_uncertainty_g",
    number,
    "Standard uncertainty of it, in grams",
    0.5,
  ),
  field("bins[].seed.germination_percent", percentage, "Seeds that germinate", 95),
  field(
    "bins[].seed.germination_standard_uncertainty_percent",
    percentage,
    "Standard uncertainty of it, in points of percent",
    1,
  ),
  field("bins[].seed.emergence_percent", percentage, "Germinating seeds that emerge", 85),
  field(
    "bins[].seed.emergence_standard_uncertainty_percent",
    percentage,
    "Standard uncertainty of it, in points of percent",
    5,
  ),
  field("bins[].money.price_per_kg", number, "Price of the product per kg", 0.6),
  field(
    "bins[].money.response.kind",
    '"linear" or "quadratic"',
    "How the cost of a rate error grows; must be given with a response",
    "linear",
  ),
  field(
    "bins[].money.response.heavy_cost_per_ha_per_percent",
    number,
    "Cost per hectare of each percent too much (linear; must be given)",
    0.7,
  ),
  field(
    "bins[].money.response.light_cost_per_ha_per_percent",
    number,
    "Cost per hectare of each percent too little (linear; must be given)",
    1.2,
  ),
  field(
    "bins[].money.response.curvature_per_ha_per_percent_squared",
    number,
    "Cost per hectare of one percent either way; two percent cost four times as much (quadratic; must be given)",
    0.04,
  ),
  field("bins[].money.area_ha", number, "Hectares drilled with this product", 250),
  field("money.currency", text, "Currency of every amount of money here", "EUR"),
  field("money.value_of_hour", number, "What an hour of the operator and the drill is worth", 90),
  field("money.minutes_per_catch", number, "Minutes one catch takes", 4),
  field("money.minutes_to_set_up", number, "Minutes to get ready for catches and back", 15),
  field("money.area_ha", number, "Hectares drilled in a season", 400),
  field("money.area_per_fill_ha", number, "Hectares drilled with one fill", 25),
  field("field_checks[].bin", "name or number", "Bin as the catches name it; must be given", "1"),
  field("field_checks[].product", text, "Product", "wheat"),
  field("field_checks[].fill", "whole number", "Fill that was used", 1),
  field("field_checks[].date", "date", "Day of the check, year first", "2026-04-14"),
  field(
    "field_checks[].filled",
    withDoubt(mass),
    "Mass filled in; must be given",
    q(3000, "kg", 5),
  ),
  field("field_checks[].left", withDoubt(mass), "Mass left over; must be given", q(240, "kg", 5)),
  field("field_checks[].area", withDoubt(area), "Area drilled; must be given", q(22.7, "ha", 0.1)),
  field("field_checks[].intended_rate", rate, "Rate that was intended", q(120, "kg/ha")),
  field(
    "field_checks[].assumed_delivery",
    delivery,
    "Delivery per turn the drive was set for",
    q(0.4, "kg/turn"),
  ),
  field(
    "answered[].code",
    "code of a finding",
    "A finding without a catch that you looked into; must be given",
    "field-disagrees",
  ),
  field("answered[].bin", "name or number", "Bin it is about; must be given", "1"),
  field("answered[].fill", "whole number", "Fill it is about; every fill where left out", 1),
  field("answered[].note", text, "What you found; must be given", "area measured again"),
  field(
    "$schema",
    text,
    "Where an editor finds the schema of this file; not read",
    "setup.schema.json",
  ),
];

function field(path: string, type: string, description: string, example: JsonValue): SetupField {
  return { path, type, description, example };
}

function q(value: number, unit: string, standardUncertainty?: number): JsonValue {
  return standardUncertainty === undefined
    ? { value, unit }
    : { value, unit, standard_uncertainty: standardUncertainty };
}
