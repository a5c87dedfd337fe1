/** Words of a report that have one meaning here, and no other. */
export const glossary = {
  heading: "Words used here",
  term: "Word",
  meaning: "What it means",
  entries: {
    catch: ["catch", "What a meter gives in a counted number of turns, caught and weighed."],
    fill: ["fill", "One filling of a bin with one product, until it is filled again or emptied."],
    meter: [
      "meter",
      "The metering unit of one bin with one product; another product makes it another meter.",
    ],
    delivery: ["delivery", "Mass per turn of the meter."],
    setting: [
      "setting",
      "What the drive is set to, so that the delivery gives the rate that is wanted.",
    ],
    rate: ["rate", "Mass per area."],
    slip: [
      "slip",
      "The share of its turns by which a ground wheel turns too little for the way it goes.",
    ],
    scale: ["scale", "What weighs; never the steps of a chart."],
    division: [
      "division",
      "The smallest difference a scale shows. Reading it makes an error of its own.",
    ],
    step: ["step", "One position of a gear, or of a setting that has no values between."],
    scatter: ["scatter", "How much catches of one fill differ, as a standard deviation."],
    spread: [
      "spread",
      "How much fills of one meter differ, as a standard deviation, the scatter of their catches included.",
    ],
    interval: [
      "interval",
      "Where a value that is fixed but not known lies, with the confidence beside it, such as a fill's delivery.",
    ],
    band: [
      "band",
      "Where something that is still to come will lie: the next fill, one more catch.",
    ],
    range: [
      "range",
      "From the lowest to the highest of what was seen or given; it makes no promise.",
    ],
    plusMinus: [
      "± (plus or minus)",
      "Half the width of an interval or band, as a share of its middle.",
    ],
    confidence: [
      "confidence",
      "The share of intervals that hold the truth, if everything were repeated again and again.",
    ],
    tolerance: [
      "tolerance",
      "How far off the rate may be; you say so, or it is assumed and called assumed.",
    ],
    level: [
      "level in force",
      "The fills since the meter last moved; only they tell the next fill.",
    ],
    lent: [
      "lent",
      "Taken over from other bins: how much catches scatter or fills differ, never what a turn delivers.",
    ],
  } as Readonly<Record<string, readonly [term: string, meaning: string]>>,
};
