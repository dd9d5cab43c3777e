/** Judges again the jobs that wait for it, and says how all came out. The archive does so by itself while it serves. */
import { type JobJudged, speaksAgainst } from '../../archive/judged.ts';
import type { KeptLog } from '../../archive/kept-log.ts';
import { judgeWaiting } from '../../archive/read-history.ts';
import type { ArchiveStore } from '../../archive/store.ts';
import { plural, w } from '../../words/catalogue.ts';
import { EXIT, type ExitCode, safeLine } from '../terminal/exit.ts';
import { print } from '../terminal/wrapped.ts';
import { type ArchiveScope, withArchive } from './archive-folder.ts';

export function judgeJobs(scope: ArchiveScope): Promise<ExitCode> {
  return withArchive(scope, async (store) => {
    let good = true;
    const lines: string[] = [];
    for (const log of await store.logs()) {
      await judgeWaiting(store, log.id);
      const { text, against } = await judgedIn(store, log);
      lines.push(...text);
      good &&= !against;
    }
    print(lines.length === 0 ? [w`The archive has no station yet.`] : lines);
    return good ? EXIT.done : EXIT.failed;
  });
}

async function judgedIn(store: ArchiveStore, { id, station, tenant }: KeptLog) {
  const all = await store.history.judged(id);
  const same = all.filter(({ judged }) => judged.as === 'same').length;
  const others = all.filter(({ judged }) => judged.as !== 'same');
  return {
    text: [
      `${safeLine(tenant)}  ${w`${safeLine(station)}: ${plural(all.length, { one: '# job judged again', other: '# jobs judged again' })}, ${same} with the same verdicts`}`,
      ...others.map(
        ({ stream, opened, judged }) =>
          `  ${w`${safeLine(stream.replace(/^job:/, ''))}, opened in entry ${opened}: ${outcomeWords(judged)}`}`,
      ),
    ],
    against: all.some(({ judged }) => speaksAgainst(judged)),
  };
}

function outcomeWords(judged: JobJudged): string {
  switch (judged.as) {
    case 'same':
      return w`the same verdicts`;
    case 'parted':
      return w`NOT THE SAME: the samples do not give its event ${judged.position} (${safeLine(judged.event)})`;
    case 'newer-rules':
      return w`not judged: its rules are of a newer version of the program`;
    case 'unknown-rules':
      return w`NOT JUDGED: no version of the program has rules of that name`;
    case 'unreadable':
      return w`NOT JUDGED: its entries are no job that a bench wrote, or of a newer version of the program`;
    case 'too-long':
      return w`NOT JUDGED: it is longer than a record may be`;
  }
}
