import { offered, paths, quoted, valued } from './completion-shell.ts';
import type { Offer, Place } from './offers.ts';

/** A function that walks the words typed so far, then prints what fits there, a line each with its description. */
export function fish(places: readonly Place[]): string {
  const lines = (all: readonly (readonly [name: string, description: string])[]) =>
    `printf '%s\\t%s\\n' ${all.map(([name, description]) => `${quoted(name)} ${quoted(description)}`).join(' ')}`;
  const commands = places.flatMap(({ path, commands: all }) =>
    all.length === 0
      ? []
      : [
          `            case ${quoted(path)}\n                ${lines(all.map(({ name, description }) => [name, description]))}`,
        ],
  );
  const flags = places.map(
    ({ path, flags: all }) =>
      `            case ${quoted(path)}\n                ${lines(all.map(({ flag, description }) => [flag, description]))}`,
  );
  const offers = offered(places).map(
    ({ offer, places: where }) => `        case ${where.join(' ')}\n            ${actionOf(offer)}`,
  );
  return `# Completion of plugmark for fish.
function __plugmark_offers
    set -l words (commandline -opc)
    set -l program $words[1]
    set -e words[1]
    set -l current (commandline -ct)
    set -l at ''
    set -l option ''
    set -l place 0
    for word in $words
        if test -n "$option"
            set option ''
            if not string match -q -- '-?*' $word
                continue
            end
        end
        if string match -q -- '-?*' $word
            if contains -- "$at|$word" ${valued(places).join(' ')}
                set option $word
            end
            continue
        end
        if test $place -eq 0
            set -l longer (string trim --left -- "$at $word")
            if contains -- $longer ${paths(places).join(' ')}
                set at $longer
                continue
            end
        end
        set place (math $place + 1)
    end
    set -l before ''
    if test -z "$option"; and string match -q -- '--*=*' $current
        set -l parts (string split -m 1 -- = $current)
        set option $parts[1]
        set current $parts[2]
        set before "$option="
    else if string match -q -- '-*' $current
        switch $at
${flags.join('\n')}
        end
        return
    end
    if test -z "$option"; and test $place -eq 0
        switch $at
${commands.join('\n')}
        end
    end
    set -l where "$at|$place"
    test -n "$option"; and set where "$at|$option"
    switch $where
${offers.join('\n')}
    end | string replace -r -- '^' "$before"
end
complete -c plugmark -f -a '(__plugmark_offers)'`;
}

function actionOf(offer: Offer): string {
  switch (offer.kind) {
    case 'words':
      return `printf '%s\\n' ${offer.words.map(quoted).join(' ')}`;
    case 'names':
      return `$program complete ${offer.of} -- $words 2>/dev/null </dev/null`;
    case 'folders':
      return '__fish_complete_directories $current';
    default:
      return '__fish_complete_path $current';
  }
}
