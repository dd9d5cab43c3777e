import type { Command } from 'commander';
import { ProblemError } from '../../problem.ts';
import { EXIT, type ExitCode } from '../terminal/exit.ts';
import { type CommandNode, flattened, treeOf } from './command-tree.ts';

const SHELLS = { bash, zsh, fish } as const;

/** Prints the completion of a shell, made from the commands as they are declared. */
export function completion(shell: string, program: Command): Promise<ExitCode> {
  if (!isShell(shell))
    throw new ProblemError({
      code: 'option-not-valid',
      message: `there is no completion for "${shell}"`,
      next: `Choose one of: ${Object.keys(SHELLS).join(', ')}.`,
    });
  process.stdout.write(`${SHELLS[shell](treeOf(program))}\n`);
  return Promise.resolve(EXIT.done);
}

const isShell = (name: string): name is keyof typeof SHELLS => Object.hasOwn(SHELLS, name);

const flagsOf = ({ options }: CommandNode) =>
  options.flatMap(({ short, long }) => [short, long].flatMap((flag) => flag ?? []));
const withValue = (nodes: readonly CommandNode[]) =>
  [
    ...new Set(
      nodes.flatMap(({ options }) => options.filter((option) => option.required || option.optional)),
    ),
  ].flatMap(({ long }) => long ?? []);
const unique = (texts: readonly string[]) => [...new Set(texts)];
const childNames = ({ children }: CommandNode) => children.map(({ command }) => command.name());

/** A function that walks the words typed so far down the tree, then offers what stands there; else file names. */
export function bash(root: CommandNode): string {
  const nodes = flattened(root);
  const offers = nodes.map(
    (node) => `    '${node.path.join(' ')}') words='${[...childNames(node), ...flagsOf(node)].join(' ')}' ;;`,
  );
  const commands = nodes.flatMap(({ path }) => (path.length === 0 ? [] : [`'${path.join(' ')}'`]));
  return `# Completion of plugmark for bash.
_plugmark() {
  local word path='' words='' i
  for ((i = 1; i < COMP_CWORD; i++)); do
    word="\${path:+$path }\${COMP_WORDS[i]}"
    case "$word" in
    ${commands.join(' | ')}) path="$word" ;;
    esac
  done
  COMPREPLY=()
  case "\${COMP_WORDS[COMP_CWORD - 1]}" in
  ${unique(withValue(nodes)).join(' | ')}) return ;;
  esac
  case "$path" in
${offers.join('\n')}
  esac
  COMPREPLY=($(compgen -W "$words" -- "\${COMP_WORDS[COMP_CWORD]}"))
}
complete -o default -F _plugmark plugmark`;
}

/** Each command a case of one function; descriptions as zsh shows them. */
export function zsh(root: CommandNode): string {
  const nodes = flattened(root);
  const cases = nodes.map((node) => {
    const commands = node.children.map(
      ({ command }) => `      ${quoted(`${escaped(command.name())}:${command.description()}`)}`,
    );
    const flags = node.options.flatMap(({ short, long, description }) =>
      [short, long].flatMap((flag) =>
        flag === undefined ? [] : [`      ${quoted(`${flag}:${description}`)}`],
      ),
    );
    return `    ${quoted(node.path.join(' '))})\n    commands=(\n${commands.join('\n')}\n    )\n    flags=(\n${flags.join('\n')}\n    ) ;;`;
  });
  const known = nodes.flatMap(({ path }) => (path.length === 0 ? [] : [quoted(path.join(' '))]));
  return `#compdef plugmark
# Completion of plugmark for zsh.
_plugmark() {
  local -a commands flags
  local place='' word i
  for ((i = 2; i < CURRENT; i++)); do
    word="\${place:+$place }\${words[i]}"
    case "$word" in
    ${known.join(' | ')}) place="$word" ;;
    esac
  done
  case "\${words[CURRENT - 1]}" in
  ${unique(withValue(nodes)).join(' | ')}) _files; return ;;
  esac
  case "$place" in
${cases.join('\n')}
  esac
  (( \${#commands} )) && _describe -t commands command commands
  if [[ "\${words[CURRENT]}" == -* ]]; then _describe -t options option flags
  elif (( ! \${#commands} )); then _files; fi
}
if [[ "\${funcstack[1]}" == _plugmark ]]; then _plugmark "$@"; else compdef _plugmark plugmark; fi`;
}

/** A line a command or option, each with the condition under which it is offered. */
export function fish(root: CommandNode): string {
  const nodes = flattened(root);
  const known = nodes.flatMap(({ path }) => (path.length === 0 ? [] : [quoted(path.join(' '))]));
  const lines = nodes.flatMap((node) => {
    const here = `complete -c plugmark -n '__plugmark_at ${quoted(node.path.join(' ')).replaceAll("'", '"')}'`;
    const commands = node.children.map(
      ({ command }) => `${here} -f -a ${command.name()} -d ${quoted(command.description())}`,
    );
    const flags = node.options.map((option) => {
      const { short, long, description } = option;
      const names = [short && `-s ${short.slice(1)}`, long && `-l ${long.slice(2)}`]
        .filter(Boolean)
        .join(' ');
      const value = option.required || option.optional ? ' -r' : '';
      return `${here} ${names}${value} -d ${quoted(description)}`;
    });
    return [...commands, ...flags];
  });
  return `# Completion of plugmark for fish.
function __plugmark_at
    set -l place
    set -l words (commandline -opc)
    set -e words[1]
    for word in $words
        if contains -- (string join ' ' $place $word) ${known.join(' ')}
            set -a place $word
        end
    end
    test "$place" = "$argv[1]"
end
${lines.join('\n')}`;
}

/** In single quotes, as all three shells read it. */
const quoted = (text: string) => `'${text.replaceAll("'", '’')}'`;
/** A colon ends the name of a command in zsh. */
const escaped = (name: string) => name.replaceAll(':', '\\:');
