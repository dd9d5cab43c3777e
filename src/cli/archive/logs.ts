/** What an archive has: its stations, the two histories that it was shown, and whether what it keeps is still what it cosigned. */

import { ENTRIES_A_BUNDLE, entriesOf } from '../../archive/bundle.ts';
import { type FaultKind, type KeptLog, keptFault } from '../../archive/kept-log.ts';
import type { ArchiveStore } from '../../archive/store.ts';
import { completedBy, type Subtrees, treeRoot } from '../../evidence/merkle.ts';
import { isSame } from '../../evidence/platform/bytes.ts';
import { phrases, plural, w } from '../../words/catalogue.ts';
import { EXIT, type ExitCode, safeLine } from '../terminal/exit.ts';
import { print } from '../terminal/wrapped.ts';
import { type ArchiveScope, withArchive } from './archive-folder.ts';

export function listStations(scope: ArchiveScope): Promise<ExitCode> {
  return withArchive(scope, async (store, { name }) => {
    const logs = await store.logs();
    print([
      w`Archive ${safeLine(name)}, ${plural(logs.length, { one: '# station', other: '# stations' })}`,
      ...logs.map(stationLine),
    ]);
    return logs.some(({ standing }) => standing === 'frozen') ? EXIT.failed : EXIT.done;
  });
}

function stationLine({ tenant, station, origin, head, entries, standing }: KeptLog): string {
  const has = head === null ? w`nothing cosigned yet` : w`${head.size} entries, cosigned`;
  const more = entries > (head?.size ?? 0) ? w`, ${entries - (head?.size ?? 0)} more on the way` : '';
  const frozen = standing === 'frozen' ? w`; FROZEN: it showed two histories (plugmark archive faults)` : '';
  return `  ${safeLine(tenant)}  ${safeLine(station)}  ${has}${more}  ${safeLine(origin)}${frozen}`;
}

const FAULT_WORDS: Readonly<Record<FaultKind, string>> = phrases({
  rewritten: 'signed another log of the same size: its history was rewritten',
  'not-extending': 'offered a log that does not go on from the one that the archive has',
  'two-successors': 'has a key that named two others: somebody works with a copy of its folder',
});

/** The notes that prove two histories. Any of them makes the answer a bad one. */
export function listFaults(scope: ArchiveScope): Promise<ExitCode> {
  return withArchive(scope, async (store) => {
    let count = 0;
    for (const { id, station, tenant } of await store.logs())
      for (const { kind, kept, offered, at } of await store.faults(id)) {
        count += 1;
        print([`${at}  ${safeLine(tenant)}  ${safeLine(station)} ${FAULT_WORDS[kind]}.`]);
        process.stdout.write(`kept:\n${kept}\noffered:\n${offered}\n`);
      }
    if (count === 0) print([w`No station has shown two histories.`]);
    return count === 0 ? EXIT.done : EXIT.failed;
  });
}

/** Reads all that is kept, and holds it against what was cosigned. */
export function checkArchive(scope: ArchiveScope): Promise<ExitCode> {
  return withArchive(scope, async (store) => {
    const logs = await store.logs();
    const lines: string[] = [];
    let good = true;
    for (const log of logs) {
      const fault = await faultOf(store, log);
      good &&= fault === null;
      lines.push(
        `${fault === null ? w`whole` : w`DAMAGED`}  ${safeLine(log.station)}  ${plural(log.head?.size ?? 0, { one: '# entry', other: '# entries' })}${fault === null ? '' : `: ${fault}`}`,
      );
    }
    print(lines.length === 0 ? [w`The archive has no station yet.`] : lines);
    return good ? EXIT.done : EXIT.failed;
  });
}

/** Null for a log of which every entry is what it was when its checkpoint was cosigned. */
async function faultOf(store: ArchiveStore, { id, head }: KeptLog): Promise<string | null> {
  if (head === null) return null;
  const nodes = new Map<string, Uint8Array>();
  const tree: Subtrees = {
    node: (level, index) => {
      const hash = nodes.get(`${level}/${index}`);
      if (hash === undefined) throw new Error('a hash of the tree is missing');
      return hash;
    },
  };
  let next = 0;
  for await (const bundle of store.bundles(id, 0)) {
    if (bundle.number * ENTRIES_A_BUNDLE !== next) return w`entry ${next + 1} is missing`;
    const fault = keptFault(bundle);
    if (fault !== null) return w`entry ${next + fault + 1} was changed`;
    const count = entriesOf(bundle.number, head.size);
    for (const hash of bundle.hashes.slice(0, count)) {
      nodes.set(`0/${next}`, hash);
      for (const { level, index, hash: above } of completedBy(tree, next, hash)) {
        nodes.set(`${level}/${index}`, above);
        // What lies below a whole subtree is not asked for again.
        nodes.delete(`${level - 1}/${2 * index}`);
        nodes.delete(`${level - 1}/${2 * index + 1}`);
      }
      next += 1;
    }
    if (next >= head.size) break;
  }
  if (next < head.size) return w`entry ${next + 1} is missing`;
  return isSame(treeRoot(tree, head.size), head.root)
    ? null
    : w`its entries do not lead to the root that was cosigned`;
}
