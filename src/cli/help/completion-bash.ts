import { offered, paths, quoted, valued } from './completion-shell.ts';
import type { Offer, Place } from './offers.ts';

/** A function that walks the words typed so far, then offers what fits there. Works from bash 3.2 on. */
export function bash(places: readonly Place[]): string {
  const commands = places.flatMap(({ path, commands: all }) =>
    all.length === 0
      ? []
      : [`    ${quoted(path)}) words=${quoted(all.map(({ name }) => name).join(' '))} ;;`],
  );
  const flags = places.map(
    ({ path, flags: all }) =>
      `    ${quoted(path)}) words=${quoted(all.map(({ flag }) => flag).join(' '))} ;;`,
  );
  const offers = offered(places).map(
    ({ offer, places: where }) => `  ${where.join('|')}) ${settingOf(offer)} ;;`,
  );
  return `# Completion of plugmark for bash.
_plugmark() {
  local cur="\${COMP_WORDS[COMP_CWORD]}" at='' option='' words='' names='' kind='' open='' word name shown i
  local place=0
  for ((i = 1; i < COMP_CWORD; i++)); do
    word="\${COMP_WORDS[i]}"
    if [[ -n "$option" ]]; then
      [[ "$word" == '=' ]] && continue
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
    ((place++))
  done
  COMPREPLY=()
  [[ -n "$option" && "$cur" == '=' ]] && cur=''
  if [[ -z "$option" && "$cur" == -?* ]] || [[ -n "$option" && "$cur" == -?* ]] || [[ -z "$option" && "$cur" == - ]]; then
    case "$at" in
${flags.join('\n')}
    esac
    COMPREPLY=($(compgen -W "$words" -- "$cur"))
    return
  fi
  if [[ -z "$option" ]] && ((place == 0)); then
    case "$at" in
${commands.join('\n')}
    esac
    COMPREPLY=($(compgen -W "$words" -- "$cur"))
    words=''
  fi
  case "$at|\${option:-$place}" in
${offers.join('\n')}
  esac
  if [[ -n "$words" ]]; then COMPREPLY+=($(compgen -W "$words" -- "$cur")); fi
  if [[ -n "$names" ]]; then
    # A name may hold anything: it is compared and quoted, never evaluated.
    case "$cur" in [\\"\\']*) open="\${cur:0:1}"; cur="\${cur:1}" ;; esac
    while IFS= read -r name; do
      printf -v shown '%q' "$name"
      if [[ -n "$open" ]]; then
        case "$name" in *[\\"\\'\\$\\\`\\\\!]*) continue ;; esac
        shown="$name"
      fi
      [[ "$name" == "$cur"* || "$shown" == "$cur"* ]] && COMPREPLY+=("$shown")
    done < <("\${COMP_WORDS[0]}" complete "$names" -- "\${COMP_WORDS[@]:1}" 2>/dev/null </dev/null)
  fi
  case "$kind" in
  files) compopt -o default 2>/dev/null || COMPREPLY+=($(compgen -f -- "$cur")) ;;
  folders) compopt -o dirnames 2>/dev/null || COMPREPLY+=($(compgen -d -- "$cur")) ;;
  esac
}
complete -F _plugmark plugmark`;
}

function settingOf(offer: Offer): string {
  if (offer.kind === 'words') return `words=${quoted(offer.words.join(' '))}`;
  return offer.kind === 'names' ? `names=${offer.of}` : `kind=${offer.kind}`;
}
