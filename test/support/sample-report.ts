import type { Block, KeyFigure, ReportDocument, Row } from "../../src/report/document.ts";
import { frame } from "../../src/wording/en/frame.ts";
import { sampleDeliveryChart, sampleFillsChart } from "./sample-charts.ts";

/** A report with every kind of block and amounts of text as they occur. Names and numbers are invented. */
export function sampleReport(firstBin = "Wheat bin"): ReportDocument {
  return {
    title: "Catch tests of three bins, spring 2026",
    subtitle: "What each meter delivers per turn, how sure that is, and what to do next",
    language: "en",
    words: frame,
    meta: [
      { term: "Catches", description: "long-field.csv, 38 rows, 1 left out" },
      { term: "Last catch", description: "2026-04-18" },
      { term: "Confidence", description: "95 %" },
      { term: "Written by", description: "evencatch 0.1.0" },
    ],
    blocks: [
      answers(firstBin),
      delivery(firstBin),
      season(),
      method(firstBin),
      cautions(firstBin),
      safety(),
    ],
    footer:
      "This is arithmetic on your own weighings. The machine's operator's manual, the product label and tag, local law and codes, and qualified people come first. Where they differ from this, follow them.",
  };
}

function answers(firstBin: string): Block {
  return {
    kind: "section",
    id: "answers",
    heading: "In a minute",
    blocks: [
      {
        kind: "paragraph",
        role: "lead",
        text: [
          "Two of three bins are known well enough to drill. Starter bin needs ",
          { kind: "strong", text: "two more catches" },
          " before its rate can be trusted within 3 %.",
        ],
      },
      { kind: "key-figures", label: "Delivery per turn of each bin", cards: cards(firstBin) },
    ],
  };
}

function cards(firstBin: string): readonly KeyFigure[] {
  return [
    {
      title: firstBin,
      subtitle: "Spring wheat, fill 9",
      value: "0.4127",
      unit: "kg/turn",
      interval: "95 % interval 0.4071 to 0.4183, that is ±1.4 %",
      span: {
        estimate: 0.4127,
        lower: 0.4071,
        upper: 0.4183,
        band: { lower: 0.4003, upper: 0.4251 },
        caption: "Interval within the tolerance of ±3 %",
      },
      action: { tone: "fine", words: "Set 0.413 kg/turn" },
      reasons: ["0.413 kg/turn, within your ±3 % (by itself ±1.4 %)."],
    },
    {
      title: "Pea bin",
      subtitle: "Field peas, fill 9",
      value: "0.4131",
      unit: "kg/turn",
      interval: "95 % interval 0.4068 to 0.4194, that is ±1.5 %",
      span: {
        estimate: 0.4131,
        lower: 0.4068,
        upper: 0.4194,
        band: { lower: 0.3765, upper: 0.3998 },
        caption: "Above the band of the earlier fills",
      },
      action: { tone: "problem", words: "Look first: catch 2 stands 8 % off" },
      reasons: [
        "0.413 kg/turn so far, ±1.5 %.",
        "Catch 2 stands out. This ends with the catch left out with a reason.",
      ],
    },
    {
      title: "Starter bin",
      subtitle: "Starter fertiliser, fill 3",
      value: "0.353",
      unit: "kg/turn",
      interval: "95 % interval 0.331 to 0.375, that is ±6.2 %",
      span: {
        estimate: 0.353,
        lower: 0.331,
        upper: 0.375,
        band: { lower: 0.3424, upper: 0.3636 },
        caption: "Interval wider than the tolerance of ±3 %",
      },
      action: { tone: "attention", words: "2 more catches of 30 turns" },
      reasons: ["0.353 kg/turn so far, ±6.2 %."],
      facts: [
        { term: "Catches today", description: "2" },
        { term: "Earlier fills", description: "2" },
      ],
    },
  ];
}

function delivery(firstBin: string): Block {
  return {
    kind: "section",
    id: "delivery",
    heading: "Delivery per turn",
    blocks: [
      {
        kind: "paragraph",
        text: "Mass is taken to be proportional to turns: each catch is a measurement of the same number of kilograms per turn, and longer catches count for more because their scatter is smaller relative to their mass. The line goes through zero; whether it should is checked below.",
      },
      {
        kind: "chart",
        id: "chart-delivery-1",
        title: `Net mass against turns, ${firstBin}`,
        description:
          "Six catches between 10 and 30 turns lie along a line through zero, except one of 30 turns, which is 1.2 kg above it.",
        caption:
          "Dots: catches; diamond: a doubted catch. Inner band: 95 % interval of the line. Outer band: where one more catch would fall 95 times in 100.",
        spec: sampleDeliveryChart(firstBin),
        specFile: "charts/delivery-wheat-bin.vl.json",
      },
      {
        kind: "table",
        id: "catches-1",
        caption: `Catches of fill 9, ${firstBin}`,
        columns: [
          { heading: "Catch" },
          { heading: "Turns", align: "end" },
          { heading: "Net mass (kg)", align: "end" },
          { heading: "Delivery (kg/turn)", align: "end" },
          { heading: "Off the line (kg)", align: "end" },
          { heading: "Studentized residual", align: "end" },
          { heading: "Remark" },
        ],
        rows: catchRows(firstBin),
        note: "Row numbers are those of the file as a spreadsheet shows it.",
      },
    ],
  };
}

function catchRows(bin: string): readonly Row[] {
  return [
    { cells: ["1 (row 33)", "10", "4.050", "0.4050", "−0.077", "−0.61", ""] },
    { cells: ["2 (row 34)", "10", "4.220", "0.4220", "+0.093", "+0.74", ""] },
    { cells: ["3 (row 35)", "20", "8.310", "0.4155", "+0.056", "+0.33", `first of ${bin}`] },
    { cells: ["4 (row 36)", "20", "8.140", "0.4070", "−0.114", "−0.68", ""] },
    { cells: ["5 (row 37)", "30", "12.420", "0.4140", "+0.039", "+0.20", ""] },
    {
      tone: "problem",
      cells: [
        "6 (row 38)",
        "30",
        "13.620",
        "0.4540",
        "+1.239",
        "+9.41",
        "Doubted: about three turns too many, or a bag weighed with its tare. Repeat this catch.",
      ],
    },
  ];
}

function season(): Block {
  const fills = Array.from(
    { length: 9 },
    (_, i): Row => ({
      cells: [
        `${i + 1}`,
        `2026-04-${String(2 + 2 * i).padStart(2, "0")}`,
        (0.412 + 0.0004 * i).toFixed(4),
        (0.388 + 0.0031 * i).toFixed(4),
        i < 6 ? "no catch" : (0.353 - 0.0002 * i).toFixed(4),
      ],
    }),
  );
  return {
    kind: "section",
    id: "season",
    heading: "The season so far",
    blocks: [
      {
        kind: "paragraph",
        text: [
          "A fill that leaves the band of the earlier ones has moved. How the band is made is told under ",
          { kind: "reference", to: "method", text: "How this was computed" },
          ".",
        ],
      },
      {
        kind: "chart",
        id: "chart-fills",
        title: "Delivery per turn over the season",
        description:
          "Nine fills of three bins. Wheat and starter stay level; pea rises from 0.388 to 0.413 kg/turn.",
        caption: "Points with 95 % intervals. Dashed: the book value, 0.400 kg/turn.",
        spec: sampleFillsChart(),
        specFile: "charts/fills.vl.json",
      },
      {
        kind: "table",
        id: "fills",
        caption: "Delivery per turn by fill (kg/turn)",
        columns: [
          { heading: "Fill" },
          { heading: "Date" },
          { heading: "Wheat bin", align: "end" },
          { heading: "Pea bin", align: "end" },
          { heading: "Starter bin", align: "end" },
        ],
        rows: fills,
      },
    ],
  };
}

function method(firstBin: string): Block {
  return {
    kind: "section",
    id: "method",
    heading: "How this was computed",
    blocks: [
      {
        kind: "definitions",
        entries: [
          {
            term: "Delivery per turn",
            description: [
              "Weighted regression through zero of net mass on turns, weights 1/turns: ",
              { kind: "code", text: "sum(net) / sum(turns)" },
            ],
          },
          {
            term: "Interval",
            description: "Student t, 5 degrees of freedom, with the division of the scale added",
          },
          { term: "Next catch", description: "Prediction interval for 30 turns" },
        ],
      },
      {
        kind: "details",
        id: "method-rows",
        summary: "Rows that were left out, and why",
        blocks: [
          {
            kind: "list",
            items: [
              `Row 12 (${firstBin}, fill 3, catch 4): left out by the operator, "bag tore".`,
              "No other row was left out; doubted catches stay in until a person decides.",
            ],
          },
          { kind: "paragraph", role: "small", text: "Nothing in the file was repaired." },
        ],
      },
    ],
  };
}

function cautions(firstBin: string): Block {
  return {
    kind: "section",
    id: "cautions",
    heading: "Cautions",
    blocks: [
      {
        kind: "cautions",
        items: [
          {
            severity: "serious",
            where: `${firstBin}, fill 9, catch 6`,
            text: "This catch is 10 % above its fellows. It is still in the figures above. Without it, delivery would be 0.4118 kg/turn.",
          },
          {
            severity: "doubt",
            where: "Starter bin",
            text: "Two catches make a very wide interval: the factor on the standard error is 12.7, against 2.6 for six.",
          },
          {
            severity: "note",
            text: [
              "The division of the scale is not given. ",
              { kind: "emphasis", text: "Half a division" },
              " in each weighing is not in these intervals.",
            ],
          },
        ],
      },
    ],
  };
}

function safety(): Block {
  return {
    kind: "section",
    id: "safety",
    heading: "Before you reach under the meter",
    blocks: [
      {
        kind: "list",
        ordered: true,
        items: [
          "Stop the engine, take the key with you, and wait until everything has come to rest.",
          "A driven meter may start by itself. Nobody is at the outlet until the person at the switch has said so.",
          "Read the tag of treated seed and wear the gloves it asks for.",
        ],
      },
    ],
  };
}
