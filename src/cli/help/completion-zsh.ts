import { offered, paths, quoted, valued } from './completion-shell.ts';
import type { Offer, Place } from './offers.ts';

/** A function that walks the words typed so far, then offers what fits there, with descriptions. */
export function zsh(places: readonly Place[]): string {
  const commands = places.flatMap(({ path, commands: all }) =>
    all.length === 0
      ? []
      : [
          `    ${quoted(path)}) commands=(${all.map(({ name, description }) => quoted(`${escaped(name)}:${description}`)).join(' ')}) ;;`,
        ],
  );
  const flags = places.map(
    ({ path, flags: all }) =>
      `    ${quoted(path)}) flags=(${all.map(({ flag, description }) => quoted(`${escaped(flag)}:${description}`)).join(' ')}) ;;`,
  );
  const offers = offered(places).map(
    ({ offer, places: where }) => `  ${where.join('|')}) ${actionOf(offer)} ;;`,
  );
  return `#compdef plugmark
# Completion of plugmark for zsh.
_plugmark() {
  local -a commands flags names
  local at='' option='' word i
  local -i place=0
  for ((i = 2; i < CURRENT; i++)); do
    word="\${(Q)words[i]}"
    if [[ -n "$option" ]]; then
      if [[ "$word" != -?* ]]; then option=''; continue; fi
      option=''
    fi
    if [[ "$word" == -?* ]]; then
      case "$at|$word" in
      ${valued(places).join('|')}) option="$word" ;;
      esac
      continue
    fi
    if ((place == 0)); then
      case "\${at:+$at }$word" in
      ${paths(places).join('|')}) at="\${at:+$at }$word"; continue ;;
      esac
    fi
    ((place += 1))
  done
  if [[ -z "$option" && "\${words[CURRENT]}" == --*=* ]]; then
    option="\${words[CURRENT]%%=*}"
    compset -P '*='
  elif [[ "\${words[CURRENT]}" == -* ]]; then
    case "$at" in
${flags.join('\n')}
    esac
    _describe -t options option flags
    return
  fi
  if [[ -z "$option" ]] && ((place == 0)); then
    case "$at" in
${commands.join('\n')}
    esac
    (( \${#commands} )) && _describe -t commands command commands
  fi
  case "$at|\${option:-$place}" in
${offers.join('\n')}
  esac
}
_plugmark_names() {
  names=("\${(@f)$("\${(Q)words[1]}" complete "$1" -- "\${(@Q)words[2,-1]}" 2>/dev/null </dev/null)}")
  names=(\${names:#})
  (( \${#names} )) && compadd -a names
}
if [[ "\${funcstack[1]}" == _plugmark ]]; then _plugmark "$@"; else compdef _plugmark plugmark; fi`;
}

function actionOf(offer: Offer): string {
  switch (offer.kind) {
    case 'words':
      return `compadd -- ${offer.words.map(quoted).join(' ')}`;
    case 'names':
      return `_plugmark_names ${offer.of}`;
    case 'folders':
      return '_files -/';
    default:
      return '_files';
  }
}

/** A colon ends the name of a command in zsh. */
const escaped = (name: string) => name.replaceAll(':', '\\:');
