/** The commands as declared, for what is generated from them: completion and manual. */
import type { Command, Option } from 'commander';

export interface CommandNode {
  readonly command: Command;
  /** `plugmark log prove inclusion`. */
  readonly name: string;
  /** As the shell sees them: without the program's own name. */
  readonly path: readonly string[];
  readonly options: readonly Option[];
  readonly children: readonly CommandNode[];
  /** Runs where the group is typed alone. */
  readonly isUsual: boolean;
}

/** The program and all commands below it, without commander's own `help` and those that are hidden. */
export function treeOf(command: Command, above: readonly string[] = []): CommandNode {
  const path = command.parent === null ? [] : [...above, command.name()];
  const help = command.createHelp();
  return {
    command,
    name: [rootName(command), ...path].join(' '),
    path,
    options: help.visibleOptions(command),
    children: help
      .visibleCommands(command)
      .filter((child) => command.commands.includes(child))
      .map((child) => treeOf(child, path)),
    isUsual: usualName(command.parent) === command.name(),
  };
}

/** A node and all below it, in the order of the help. */
export const flattened = (node: CommandNode): readonly CommandNode[] => [
  node,
  ...node.children.flatMap(flattened),
];

/** The end of a command's help: examples, exit codes, cautions. Redirects the command's output for good. */
export function helpTail({ command }: CommandNode): string {
  let help = '';
  command.configureOutput({
    writeOut: (text) => {
      help += text;
    },
  });
  command.outputHelp();
  return help.slice(command.helpInformation().length).trim();
}

function rootName(command: Command): string {
  return command.parent === null ? command.name() : rootName(command.parent);
}

/** Commander keeps it for itself. */
function usualName(parent: Command | null): unknown {
  return parent !== null && '_defaultCommandName' in parent ? parent._defaultCommandName : undefined;
}
