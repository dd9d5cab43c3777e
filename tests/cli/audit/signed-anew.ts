/** A package whose files the station itself changed before it signed them. */
import { createHash } from 'node:crypto';
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { openStationFolder, stateOf } from '../../../src/cli/station/station.ts';
import { currentKey } from '../../../src/cli/station/station-keys.ts';
import { indexBytes, type PackageIndex, readIndex, signIndex } from '../../../src/package/format.ts';
import { orThrow } from '../../../src/result.ts';

/** The index over the files as they are now, signed with the station's own key. */
export async function signedAnew(
  { data, out }: { readonly data: string; readonly out: string },
  change: (index: PackageIndex) => PackageIndex = (index) => index,
): Promise<void> {
  const stationFolder = await openStationFolder(data);
  const { privateKey } = await currentKey(stationFolder.folder, stateOf(stationFolder));
  stationFolder.log.close();
  const at = (name: string) => join(out, name);
  const { form: _form, ...index } = change(orThrow(readIndex(readFileSync(at('index.json')))));
  const files = index.files.map(({ path }) => {
    const bytes = readFileSync(at(path));
    return { path, bytes: bytes.length, sha256: createHash('sha256').update(bytes).digest('hex') };
  });
  const bytes = indexBytes({ ...index, files });
  writeFileSync(at('index.json'), bytes);
  writeFileSync(at('index.jws'), signIndex(bytes, privateKey));
}
