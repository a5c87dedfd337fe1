const beside = "a setup.json beside the catches";

/** What `--help` says of each command, argument and flag. */
export const help = {
  evencatch: "How good is a catch test? Delivery per meter turn from repeated catches.",
  afterwards: `
Exit codes: 0 fine; 1 cautions, only when --fail-on asks for it; 2 bad input; 3 a fault of the program.
Answers go to standard output, everything else to standard error.`,
  afterError: "(add --help for how it is used)",

  report: "Analyse a file of catches: a table and a sentence for each bin, and a report.",
  enough: "Are today's catches enough, and what would the next one buy?",
  plan: "Plan a trial: a randomised, blocked catch sheet, and what it can be expected to find.",
  sheet: "Write sheets to print: one for the cab, and one to fill in by hand at the drill.",
  page: "Write a page that answers at the drill, on a phone, without a network.",
  import: "Make one clean file of catches from sheets as you keep them. Asks what it cannot know.",
  add: "Add today's catches to the end of a file of catches, whole or not at all.",
  spreads:
    "Write how much the meters of logs scatter, without names or rows, for others to borrow; from 30 meters, say whether what evencatch takes for granted fits.",
  check: "Say everything that is wrong with a file of catches. Writes nothing.",
  template: "Write an empty catch sheet, a setup file, and what their columns mean.",

  catches: "file of catches: .csv, .xlsx or .json",
  sources:
    "sheets as you keep them: .csv, .tsv, .txt, .xlsx, folders of them, or - for standard input",
  catchesOfCheck: "file of catches: .csv, .xlsx or .json, or - for standard input",
  catchesOfReport: "files of catches, read as one: .csv, .xlsx or .json, or - for standard input",
  catchesToPool:
    "files of catches: .csv, .xlsx or .json; bins of two files count as different ones, so put the seasons of one farm into one file",
  catchesOrTyped:
    "files of catches, or the catches themselves, such as 6.3 6.5 6.4 or 20:6.3 10:3.2; left out: plan before any catch",
  catchesOfSheet: "file of catches: .csv, .xlsx or .json; left out: an empty catch sheet alone",
  products: "two or more products",
  templateFolder: "folder to write into",

  assurance: "chance wanted of reaching it: 80%, 80 or 0.8",
  turns: "turns of each further catch, and of typed ones that do not say their own",
  scale: "step of the scale's display, such as 100g",
  target: "rate wanted, such as 110kg/ha, 98lb/ac or, with --bushel, 1.5bu/ac",
  bushel: "mass of a bushel, such as 60lb, for a target in bu/ac",
  width: "width that one pass covers, such as 12m",
  speed: "range of working speed, such as 7-9km/h",
  wheel: "travel per turn of the drive wheel, such as 2.1m",
  slip: "slip of the wheel, in percent: 3% or 3",
  steps: "ratios the drive can be set to, such as 0.8,0.85,0.9",
  meterSpeed: "meter speeds a motor can hold, such as 20-120turns/min",
  detail: "print the tables and what stands behind the answer too",
  heaviestCatch:
    "what bag and scale take, such as 15kg (default: the larger of 20 kg and the log's heaviest)",
  minutes: "time there is: finds the best number and length of catches",
  minutesPerCatch: "bag, scale and note of each catch",
  turnsPerMinute: "speed of turning",
  longestTurns: "turns the bag and the scale allow",
  trialBudget: "plan a trial: what may be spent, money or minutes",
  costPerFill: "cost of a fill in a trial",
  costPerCatch: "cost of a catch in a trial",
  costPerTurn: "cost of a turn in a trial",
  next: "plan the next fill instead of the newest one",

  level: "confidence level: 95%, 95 or 0.95",
  tolerance: "rate error that is accepted, in percent: 3% or 3",
  borrow: "who tells how much catches and fills scatter besides the bin itself",
  weighting: "how catch scatter grows with turns",
  compare: "compare products (by itself only where one bin held several)",
  noCompare: "do not compare products",
  trial:
    "the log is a planned trial: open with how its products compare (default: as the setup says)",
  productOrder: "products in the order planned, or the heaviest first (default: as planned)",
  reference: "compare with this product instead of all pairs",
  blocks: "column that names blocks all products share, such as day",
  spreadLaw:
    "one spread of fills for all products, or each its own (default: one within 2 to 8 complete blocks of 3 products or more)",
  margin: "difference that counts as none, in percent, fixed before the catches: equivalence",
  newDensity: "predict a new product from its bulk density",

  trialFills: "fills of each product",
  trialTurns: "turn levels of every fill, such as 20,40",
  trialCatches: "catches at each turn level of a fill",
  trialSpeeds: "meter speeds to cross with them, turns/min",
  trialBin: "bin the trial is made in",
  trialSeed: "random start of the order",
  trialLevel: "confidence of the contrasts: 95%, 95 or 0.95",
  trialBlocks: "contrasts will be made between fills, as if blocks shared nothing",
  trialFrom: "catches whose own spread and scatter the plan rests on, instead of assumed ones",
  trialSpread: "spread between fills that is expected, in percent: 3% or 3",
  trialDifference: "difference whose chance of being found is told, in percent",
  trialUnit: "mass unit of the sheet",

  setupOfReport: `setup: scale, tolerance, targets, prices (default: ${beside})`,
  setupOfEnough: `setup: scale, tolerance (default: ${beside})`,
  setupOfSheet: `setup: scale, tolerance, targets; without catches, the bins to list (default: ${beside})`,
  setupOfCheck: `check this setup against the catches too (default: ${beside})`,
  setupOfPlan: `setup of the catches of --from: scale, blocks (default: ${beside})`,
  setupOfSpreads: `setup: scale, where a meter was opened (default: ${beside})`,
  setupOfPage: "setup the page starts with: scale, tolerance, targets, prices (default: none)",
  noSetup: "leave out a setup.json that lies beside the catches",
  keys: 'farm, machine or season of all rows, for a file without that column; "season=folder" and "machine=file" take the name of folder or file; may be given for each',
  workbookSheet: "sheet of a workbook (default: the first)",
  leaveOut: "leave a catch out; may be given several times",

  importFile: "file to write the clean catches into; what was assumed is written beside it",
  importMap:
    'what a header means, such as "revs=turns" or "Weight=net_kg"; - leaves it out; "sheet", "file" and "folder" are their names',
  importSet: 'a column\'s value where the file has none, such as "product=wheat"',
  importDates: "order of dates that are numbers alone",
  importDecimal: "what stands before decimals",
  importFillDown:
    "column whose blank cells are the same as the one above; may be given several times",
  importAside: "row that is no catch, such as 12 or April:12; may be given several times",
  importSheets: "sheet of a workbook to read; may be given several times (default: all)",
  importJson: "print what was assumed, asked and set aside as JSON",
  addFile: "file of catches to add to: .csv, .tsv or .txt",
  addCatches:
    "turns and mass, such as 20:6.3 20:6.5, in the file's unit unless they say their own; 20:spilled for one that could not be weighed",
  addKey:
    "farm, machine or season they are from, where the file holds several; may be given for each",
  addBin: "bin they are from (default: the only one of the file)",
  addProduct: "what is in it (default: as in its newest fill)",
  addFill: "number of the fill (default: the newest one of the bin)",
  addNewFill: "the bin was filled anew: the next number",
  addTurns: "turns of catches that do not say their own",
  addTare: "mass of the empty container, for a file that keeps gross and tare",
  addSet: 'value of another column, such as "operator=A"',
  addAgain: "add catches though the same ones stand last in their fill",
  reportBin:
    "from ten meters on: a chapter of this bin too, though it needs no attention; may be given several times",

  reportFolder: "folder to write the report into",
  sheetFolder: "write the catch sheet into this folder, as sheet.csv and to print",
  sheetsFolder: "folder to write the sheets into",
  spreadsFile: "file to write the library of spreads into",
  classes:
    "table with the columns product and class, such as wheat and cereals (default: a column product_class of the catches, else no class)",
  sha256: "tell the SHA-256 of each file of catches too",
  library:
    "library of spreads of other meters, as `evencatch spreads` writes it (default: the one the setup names)",
  pageFile: "file to write the page into",
  replace:
    "also write over files that are not evencatch's or were changed since; never over files it reads",
  charts: "draw every chart beside its specification too: svg, png or svg,png",
  tables:
    "write tidy tables too, and a datapackage.json that says what their columns are: csv, json, xlsx, md, tex (alone: all but xlsx)",
  tableDecimal:
    "decimal mark of CSV tables; comma: semicolons between cells, for a spreadsheet that writes 0,5 (default: point; writes tables as --tables does)",
  tableNames:
    "names of columns: evencatch's own, or those of R's package broom (default: own; writes tables as --tables does)",
  edition: "how much the report shows: what a hand needs, or all of it",
  interactive: "charts that answer the pointer (a larger HTML file)",
  reportJson: "print the whole analysis as JSON instead of the table",
  answersJson: "print the answers as JSON",
  planJson: "print the plan as JSON",
  findingsJson: "print the findings as JSON",
  failOn: "exit with 1 when there are such findings",
};
