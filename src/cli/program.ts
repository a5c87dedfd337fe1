import { Command } from "commander";
import { version } from "../version.ts";
import type { Words } from "../wording/words.ts";
import { helpWords, refusalWords } from "./commander-words.ts";
import type { ExitCode } from "./exit-codes.ts";
import { flags } from "./flags.ts";
import type { Io } from "./io.ts";

/**
 * The command with its subcommands, each loaded when it is asked for: a short answer must not wait for what only a report
 * needs. `ended` hears the exit code of the one that ran.
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
      .argument(`<${values.catches}...>`, help.catchesOfReport)
      .action(async (catches, given) => {
        const { reportCommand } = await import("./report-command.ts");
        ended(await reportCommand(catches, given, io));
      }),
    subcommand("enough", words)
      .argument(`[${values.catches}...]`, help.catchesOrTyped)
      .action(async (catches, given) => {
        const { enoughCommand } = await import("./enough-command.ts");
        ended(await enoughCommand(catches, given, io));
      }),
    subcommand("plan", words)
      .argument(`[${values.products}...]`, help.products)
      .usage(`[options] <${values.product}> <${values.product}>...`)
      .action(async (products, given) => {
        const { planCommand } = await import("./plan-command.ts");
        ended(await planCommand(products, given, io));
      }),
    subcommand("sheet", words)
      .argument(`[${values.catches}]`, help.catchesOfSheet)
      .action(async (catches, given) => {
        const { sheetCommand } = await import("./sheet-command.ts");
        ended(await sheetCommand(catches, given, io));
      }),
    subcommand("page", words).action(async (given) => {
      const { pageCommand } = await import("./page-command.ts");
      ended(await pageCommand(given, io));
    }),
    subcommand("spreads", words)
      .argument(`<${values.catches}...>`, help.catchesToPool)
      .action(async (catches, given) => {
        const { spreadsCommand } = await import("./spreads-command.ts");
        ended(await spreadsCommand(catches, given, io));
      }),
    subcommand("check", words)
      .argument(`<${values.catches}>`, help.catchesOfCheck)
      .action(async (catches, given) => {
        const { checkCommand } = await import("./check-command.ts");
        ended(await checkCommand(catches, given, io));
      }),
    subcommand("import", words)
      .argument(`<${values.sources}...>`, help.sources)
      .action(async (files, given) => {
        const { importCommand } = await import("./import-command.ts");
        ended(await importCommand(files, given, io));
      }),
    subcommand("add", words)
      .argument(`<${values.file}>`, help.addFile)
      .argument(`<${values.catches}...>`, help.addCatches)
      .action(async (file, catches, given) => {
        const { addCommand } = await import("./add-command.ts");
        ended(await addCommand(file, catches, given, io));
      }),
    subcommand("template", words)
      .argument(`[${values.dir}]`, help.templateFolder, ".")
      .action(async (dir, given) => {
        const { templateCommand } = await import("./template-command.ts");
        ended(await templateCommand(dir, given, io));
      }),
  ])
    root.addCommand(command.copyInheritedSettings(root).addHelpText("after", help.afterwards));
  return root;
}

function subcommand(name: keyof typeof flags, words: Words): Command {
  const command = new Command(name).description(words.help[name]);
  for (const { option } of flags[name]) command.addOption(option(words));
  return command;
}
