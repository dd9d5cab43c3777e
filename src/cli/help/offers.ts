/** What a shell can offer at each place of a command line: the same for all shells, made from the declarations. */
import type { Option } from 'commander';
import { type CommandNode, flattened } from './command-tree.ts';
import { FORM_NAMES } from './form-names.ts';

/** Names that a station can say; each is what a placeholder such as `<job>` stands for. */
export const NAME_KINDS = ['tool', 'job', 'open-job', 'person', 'impact', 'study', 'kid'] as const;
export type NameKind = (typeof NAME_KINDS)[number];

export type Offer =
  | { readonly kind: 'nothing' | 'files' | 'folders' }
  | { readonly kind: 'words'; readonly words: readonly string[] }
  | { readonly kind: 'names'; readonly of: NameKind };

/** One command as it is typed. A group that has a usual command takes the options and arguments of that one as well. */
export interface Place {
  /** Without the program's own name: `log prove inclusion`. */
  readonly path: string;
  readonly commands: readonly { readonly name: string; readonly description: string }[];
  readonly flags: readonly { readonly flag: string; readonly description: string }[];
  /** By flag; only those that take a value. */
  readonly values: readonly (readonly [flag: string, offer: Offer])[];
  readonly arguments: readonly Offer[];
  /** The last argument may be given several times. */
  readonly variadic: boolean;
}

export function placesOf(root: CommandNode): readonly Place[] {
  const nodes = flattened(root);
  const answers = nodes.flatMap(({ path, options }) =>
    options.some(({ long }) => long === '--json') ? [path.join('-')] : [],
  );
  const forms = [...FORM_NAMES, ...answers];
  return nodes.map((node) => placeOf(node, forms));
}

function placeOf(node: CommandNode, forms: readonly string[]): Place {
  const worker = usualOf(node);
  const options = uniqueBy([...node.options, ...worker.options], ({ flags }) => flags);
  const offers = worker.command.registeredArguments.map((argument) =>
    offerOf(argument.name(), argument.argChoices ?? [], forms),
  );
  return {
    path: node.path.join(' '),
    commands: node.children.map(({ command }) => ({
      name: command.name(),
      description: command.description(),
    })),
    flags: options.flatMap((option) =>
      flagsOf(option).map((flag) => ({ flag, description: option.description })),
    ),
    values: options.flatMap((option) => {
      const placeholder = /[<[]([^\]>]+)[\]>]/.exec(option.flags)?.[1];
      if (placeholder === undefined) return [];
      const offer = offerOf(placeholder, option.argChoices ?? [], forms);
      return flagsOf(option).map((flag) => [flag, offer] as const);
    }),
    arguments: offers,
    variadic: worker.command.registeredArguments.at(-1)?.variadic === true,
  };
}

/** The command that runs where a group is typed alone. */
function usualOf(node: CommandNode): CommandNode {
  return node.children.find(({ isUsual }) => isUsual) ?? node;
}

function offerOf(placeholder: string, choices: readonly string[], forms: readonly string[]): Offer {
  if (choices.length > 0) return { kind: 'words', words: choices };
  const of = NAME_KINDS.find((one) => one === placeholder);
  if (of !== undefined) return { kind: 'names', of };
  if (placeholder === 'form') return { kind: 'words', words: forms };
  if (placeholder === 'file' || placeholder === 'path') return { kind: 'files' };
  return { kind: placeholder === 'folder' ? 'folders' : 'nothing' };
}

const flagsOf = ({ short, long }: Option) => [short, long].flatMap((flag) => flag ?? []);

const uniqueBy = <T>(all: readonly T[], key: (one: T) => string): readonly T[] => [
  ...new Map(all.map((one) => [key(one), one])).values(),
];
