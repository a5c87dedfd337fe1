import { Command, Option } from "commander";
import { version } from "../version.ts";
import { languageTags } from "../wording/languages.ts";
import {
  parseAmount,
  parseAmounts,
  parseCatchKey,
  parseChance,
  parseMass,
  parsePercent,
} from "./arguments.ts";
import { checkCommand } from "./check-command.ts";
import { enoughCommand } from "./enough-command.ts";
import type { ExitCode } from "./exit-codes.ts";
import type { Io } from "./io.ts";
import { planCommand } from "./plan-command.ts";
import { reportCommand } from "./report-command.ts";
import { templateCommand } from "./template-command.ts";

const exitCodeHelp = `
Exit codes: 0 fine; 1 cautions, only when --fail-on asks for it; 2 bad input; 3 a fault of the program.
Answers go to standard output, everything else to standard error.`;

/** The command with its subcommands; `ended` hears the exit code of the one that ran. */
export function program(io: Io, ended: (code: ExitCode) => void): Command {
  const root = new Command("evencatch")
    .description("How good is a catch test? Delivery per meter turn from repeated catches.")
    .version(version)
    .exitOverride()
    .configureOutput({
      writeOut: (text) => io.out(text.trimEnd()),
      writeErr: (text) => io.err(text.trimEnd()),
    })
    .showHelpAfterError("(add --help for how it is used)")
    .addHelpText("after", exitCodeHelp);
  for (const command of [
    reportSubcommand,
    enoughSubcommand,
    planSubcommand,
    checkSubcommand,
    templateSubcommand,
  ])
    root.addCommand(
      command(io, ended).copyInheritedSettings(root).addHelpText("after", exitCodeHelp),
    );
  return root;
}

const beside = "a setup.json beside the catches";

function replaceOption(): Option {
  return new Option(
    "--replace",
    "also write over files that are not evencatch's or were changed since; never over files it reads",
  );
}

/** The older name. */
function forceOption(): Option {
  return new Option("--force").hideHelp();
}

function reportSubcommand(io: Io, ended: (code: ExitCode) => void): Command {
  return withPlanning(new Command("report"))
    .description("Analyse a file of catches: a table and a sentence for each bin, and a report.")
    .argument("<catches>", "file of catches: .csv, .xlsx or .json")
    .option("--setup <file>", `setup: scale, tolerance, targets, prices (default: ${beside})`)
    .option("--no-setup", "leave out a setup.json that lies beside the catches")
    .option("--out <dir>", "folder to write the report into", "evencatch-report")
    .option("--level <share>", "confidence level: 95%, 95 or 0.95", parseChance)
    .option("--tolerance <share>", "rate error that is accepted, in percent: 3% or 3", parsePercent)
    .addOption(
      new Option("--weighting <law>", "how catch scatter grows with turns").choices([
        "proportional",
        "constant",
        "squared",
      ]),
    )
    .option("--compare", "compare products (by itself only where one bin held several)")
    .option("--no-compare", "do not compare products")
    .option("--reference <product>", "compare with this product instead of all pairs")
    .option("--blocks <column>", "column that names blocks all products share, such as day")
    .option(
      "--margin <share>",
      "difference that counts as none, in percent: equivalence",
      parsePercent,
    )
    .option("--new-density <kg/m³>", "predict a new product from its bulk density", parseAmount)
    .addOption(replaceOption())
    .option("--tables", "write tidy tables too: CSV, JSON, Markdown and LaTeX")
    .option("--sheet <name>", "sheet of a workbook (default: the first)")
    .option(
      "--leave-out <bin:fill:catch>",
      "leave a catch out; may be given several times",
      parseCatchKey,
    )
    .addOption(new Option("--units <system>").choices(["metric", "us"]).default("metric"))
    .addOption(new Option("--language <tag>").choices([...languageTags]).default("en"))
    .option("--interactive", "charts that answer the pointer (a larger HTML file)")
    .option("--json", "print the whole analysis as JSON instead of the table")
    .addOption(
      new Option("--fail-on <severity>", "exit with 1 when there are such findings").choices([
        "note",
        "doubt",
        "serious",
      ]),
    )
    .action(async (catches, flags) => ended(await reportCommand(catches, flags, io)));
}

/** How further catches are planned: asked of `report` and `enough` alike, which answer alike. */
function withPlanning(command: Command): Command {
  return command
    .option("--assurance <share>", "chance wanted of reaching it: 80%, 80 or 0.8", parseChance)
    .option("--turns <n>", "turns of each further catch", parseAmount)
    .option(
      "--heaviest-catch <mass>",
      "what bag and scale take, such as 15kg (default: the larger of 20 kg and the log's heaviest)",
      parseMass,
    );
}

function enoughSubcommand(io: Io, ended: (code: ExitCode) => void): Command {
  return withPlanning(new Command("enough"))
    .description("Are today's catches enough, and what would the next one buy?")
    .argument("[catches]", "file of catches; left out: plan before any catch")
    .option("--setup <file>", `setup: scale, tolerance (default: ${beside})`)
    .option("--no-setup", "leave out a setup.json that lies beside the catches")
    .option("--level <share>", "confidence level: 95%, 95 or 0.95", parseChance)
    .option("--tolerance <share>", "rate error that is accepted, in percent: 3% or 3", parsePercent)
    .option("--next", "plan the next fill instead of the newest one")
    .option(
      "--minutes <n>",
      "time there is: finds the best number and length of catches",
      parseAmount,
    )
    .option("--minutes-per-catch <n>", "bag, scale and note of each catch", parseAmount, 1.5)
    .option("--turns-per-minute <n>", "speed of turning", parseAmount, 30)
    .option("--longest-turns <n>", "turns the bag and the scale allow", parseAmount, 60)
    .option("--trial-budget <n>", "plan a trial: what may be spent, money or minutes", parseAmount)
    .option("--cost-per-fill <n>", "cost of a fill in a trial", parseAmount, 30)
    .option("--cost-per-catch <n>", "cost of a catch in a trial", parseAmount, 3)
    .option("--cost-per-turn <n>", "cost of a turn in a trial", parseAmount, 0.03)
    .option("--sheet <name>", "sheet of a workbook (default: the first)")
    .addOption(new Option("--units <system>").choices(["metric", "us"]).default("metric"))
    .addOption(new Option("--language <tag>").choices([...languageTags]).default("en"))
    .option("--json", "print the answers as JSON")
    .action(async (catches, flags) => ended(await enoughCommand(catches, flags, io)));
}

function planSubcommand(io: Io, ended: (code: ExitCode) => void): Command {
  return new Command("plan")
    .description(
      "Plan a trial: a randomised, blocked catch sheet, and what it can be expected to find.",
    )
    .argument("[products...]", "two or more products")
    .usage("[options] <product> <product>...")
    .option("--fills <n>", "fills of each product", parseAmount)
    .option("--turns <list>", "turn levels of every fill, such as 20,40", parseAmounts)
    .option("--catches <n>", "catches at each turn level of a fill", parseAmount)
    .option("--speeds <list>", "meter speeds to cross with them, turns/min", parseAmounts)
    .option("--bin <name>", "bin the trial is made in")
    .option("--seed <n>", "seed of the random order", parseAmount)
    .option("--level <share>", "confidence of the contrasts: 95%, 95 or 0.95", parseChance)
    .option("--blocks", "contrasts will be made within blocks")
    .option(
      "--spread <share>",
      "spread between fills that is expected, in percent: 3% or 3",
      parsePercent,
    )
    .option(
      "--difference <share>",
      "difference whose chance of being found is told, in percent",
      parsePercent,
    )
    .option(
      "--margin <share>",
      "difference that counts as none, in percent: equivalence",
      parsePercent,
    )
    .addOption(
      new Option("--unit <unit>", "mass unit of the sheet")
        .choices(["kg", "g", "lb", "oz"])
        .default("kg"),
    )
    .option("--out <dir>", "write sheet.csv into this folder")
    .addOption(replaceOption())
    .addOption(forceOption())
    .addOption(new Option("--units <system>").choices(["metric", "us"]).default("metric"))
    .addOption(new Option("--language <tag>").choices([...languageTags]).default("en"))
    .option("--json", "print the plan as JSON")
    .action(async (products, flags) => ended(await planCommand(products, flags, io)));
}

function checkSubcommand(io: Io, ended: (code: ExitCode) => void): Command {
  return new Command("check")
    .description("Say everything that is wrong with a file of catches. Writes nothing.")
    .argument("<catches>", "file of catches: .csv, .xlsx or .json")
    .option("--setup <file>", `check this setup against the catches too (default: ${beside})`)
    .option("--no-setup", "leave out a setup.json that lies beside the catches")
    .option("--sheet <name>", "sheet of a workbook (default: the first)")
    .option("--json", "print the findings as JSON")
    .action(async (catches, flags) => ended(await checkCommand(catches, flags, io)));
}

function templateSubcommand(io: Io, ended: (code: ExitCode) => void): Command {
  return new Command("template")
    .description("Write an empty catch sheet, a setup file, and what their columns mean.")
    .argument("[dir]", "folder to write into", ".")
    .addOption(replaceOption())
    .addOption(forceOption())
    .action(async (dir, flags) => ended(await templateCommand(dir, flags, io)));
}
