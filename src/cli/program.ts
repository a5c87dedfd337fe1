import { Command } from "commander";
import { version } from "../version.ts";
import type { Words } from "../wording/words.ts";
import { checkCommand } from "./check-command.ts";
import { helpWords, refusalWords } from "./commander-words.ts";
import { enoughCommand } from "./enough-command.ts";
import type { ExitCode } from "./exit-codes.ts";
import { flags } from "./flags.ts";
import type { Io } from "./io.ts";
import { pageCommand } from "./page-command.ts";
import { planCommand } from "./plan-command.ts";
import { reportCommand } from "./report-command.ts";
import { sheetCommand } from "./sheet-command.ts";
import { spreadsCommand } from "./spreads-command.ts";
import { templateCommand } from "./template-command.ts";

/**
 * The command with its subcommands; `ended` hears the exit code of the one that ran.
 *
 * @param words  of its help, and of what it says of arguments that it refuses
 */
export function program(io: Io, words: Words, ended: (code: ExitCode) => void): Command {
  const { help, usage } = words;
  const { values } = usage;
  const root = new Command("evencatch")
    .description(help.evencatch)
    .version(version, "-V, --version", usage.version)
    .helpOption("-h, --help", usage.help)
    .helpCommand("help [command]", usage.help)
    .configureHelp(helpWords(usage))
    .exitOverride()
    .configureOutput({
      writeOut: (text) => io.out(text.trimEnd()),
      writeErr: (text) => io.err(text.trimEnd()),
      outputError: (text, write) => write(refusalWords(text.trimEnd(), usage)),
    })
    .showHelpAfterError(help.afterError)
    .addHelpText("after", help.afterwards);
  for (const command of [
    subcommand("report", words)
      .argument(`<${values.catches}>`, help.catches)
      .action(async (catches, given) => ended(await reportCommand(catches, given, io))),
    subcommand("enough", words)
      .argument(`[${values.catches}...]`, help.catchesOrTyped)
      .action(async (catches, given) => ended(await enoughCommand(catches, given, io))),
    subcommand("plan", words)
      .argument(`[${values.products}...]`, help.products)
      .usage(`[options] <${values.product}> <${values.product}>...`)
      .action(async (products, given) => ended(await planCommand(products, given, io))),
    subcommand("sheet", words)
      .argument(`[${values.catches}]`, help.catchesOfSheet)
      .action(async (catches, given) => ended(await sheetCommand(catches, given, io))),
    subcommand("page", words).action(async (given) => ended(await pageCommand(given, io))),
    subcommand("spreads", words)
      .argument(`<${values.catches}...>`, help.catchesToPool)
      .action(async (catches, given) => ended(await spreadsCommand(catches, given, io))),
    subcommand("check", words)
      .argument(`<${values.catches}>`, help.catches)
      .action(async (catches, given) => ended(await checkCommand(catches, given, io))),
    subcommand("template", words)
      .argument(`[${values.dir}]`, help.templateFolder, ".")
      .action(async (dir, given) => ended(await templateCommand(dir, given, io))),
  ])
    root.addCommand(command.copyInheritedSettings(root).addHelpText("after", help.afterwards));
  return root;
}

function subcommand(name: keyof typeof flags, words: Words): Command {
  const command = new Command(name).description(words.help[name]);
  for (const { option } of flags[name]) command.addOption(option(words));
  return command;
}
