/** What was given beside a record: the proof that a later log contains it, or the note of its witnesses. */
import { type LaterLog, parseLaterLog } from '../../evidence/later-log.ts';
import type { Given } from './given.ts';

export type Beside = '.proof' | '.witnessed';
const MAX_BYTES = 300_000;

/** By its name among `files`. One that was given alone (`loose`) may have any name. Null where there is none or it cannot be read. */
export async function beside(
  record: string,
  kind: Beside,
  { files, loose }: { readonly files: readonly Given[]; readonly loose: readonly Given[] },
): Promise<LaterLog | null> {
  const named = [...files, ...loose].find(({ path }) => path === record + kind);
  const [first, ...more] = loose.filter(
    ({ path }) => path.endsWith('.witnessed') === (kind === '.witnessed'),
  );
  const file = named ?? (more.length === 0 ? first : undefined);
  if (file?.isPlain !== true || file.bytes > MAX_BYTES) return null;
  const read = parseLaterLog(await file.read(MAX_BYTES), file.path);
  return read.ok ? read.value : null;
}
