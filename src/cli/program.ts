import { Command } from "commander";
import { version } from "../version.ts";
import { checkCommand } from "./check-command.ts";
import { enoughCommand } from "./enough-command.ts";
import type { ExitCode } from "./exit-codes.ts";
import { flags } from "./flags.ts";
import { help } from "./help.ts";
import type { Io } from "./io.ts";
import { planCommand } from "./plan-command.ts";
import { reportCommand } from "./report-command.ts";
import { templateCommand } from "./template-command.ts";

/** The command with its subcommands; `ended` hears the exit code of the one that ran. */
export function program(io: Io, ended: (code: ExitCode) => void): Command {
  const root = new Command("evencatch")
    .description(help.evencatch)
    .version(version)
    .exitOverride()
    .configureOutput({
      writeOut: (text) => io.out(text.trimEnd()),
      writeErr: (text) => io.err(text.trimEnd()),
    })
    .showHelpAfterError(help.afterError)
    .addHelpText("after", help.afterwards);
  for (const command of [
    subcommand("report")
      .argument("<catches>", help.catches)
      .action(async (catches, values) => ended(await reportCommand(catches, values, io))),
    subcommand("enough")
      .argument("[catches]", help.catchesOrNone)
      .action(async (catches, values) => ended(await enoughCommand(catches, values, io))),
    subcommand("plan")
      .argument("[products...]", help.products)
      .usage("[options] <product> <product>...")
      .action(async (products, values) => ended(await planCommand(products, values, io))),
    subcommand("check")
      .argument("<catches>", help.catches)
      .action(async (catches, values) => ended(await checkCommand(catches, values, io))),
    subcommand("template")
      .argument("[dir]", help.templateFolder, ".")
      .action(async (dir, values) => ended(await templateCommand(dir, values, io))),
  ])
    root.addCommand(command.copyInheritedSettings(root).addHelpText("after", help.afterwards));
  return root;
}

function subcommand(name: keyof typeof flags): Command {
  const command = new Command(name).description(help[name]);
  for (const { option } of flags[name]) command.addOption(option());
  return command;
}
