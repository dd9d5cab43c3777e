/** Signing the log as it stands, where it extends all that was signed before. */
import type { StationKey } from '../../../db/keyfile.ts';
import { signCheckpoint } from '../../evidence/checkpoint.ts';
import { treeRoot } from '../../evidence/merkle.ts';
import type { StationState } from '../../evidence/station.ts';
import { keepSigned, refuseTurned } from './one-history.ts';
import { type StationFolder, stateOf } from './station.ts';
import { currentKey } from './station-keys.ts';

/** The key that signs for a log, and the station that the log tells of. */
export interface Signer {
  readonly state: StationState;
  readonly key: StationKey;
}

/** Asks for the passphrase of the key where it has one. A log that was turned has no signer, whatever key it names. */
export async function signerOf(stationFolder: StationFolder, state: StationState): Promise<Signer> {
  refuseTurned(stationFolder, state);
  return { state, key: await currentKey(stationFolder.folder, state) };
}

/** A checkpoint that nobody has kept yet. */
interface Signed {
  readonly size: number;
  readonly note: string;
}

/** Signs the log as it stands, where it extends all that was signed before. Nobody is given the note before it is kept. */
export function signedNow(stationFolder: StationFolder, { state, key }: Signer): Signed {
  refuseTurned(stationFolder, state);
  const { log } = stationFolder;
  const size = log.size();
  const root = treeRoot(log.tree, size);
  return { size, note: signCheckpoint({ origin: state.origin, size, root }, key.privateKey) };
}

/** The same, kept; who asked for the signer before is not asked for a passphrase again. */
export async function newCheckpoint(stationFolder: StationFolder, signer?: Signer): Promise<string> {
  const by = signer ?? (await signerOf(stationFolder, stateOf(stationFolder)));
  const { size, note } = signedNow(stationFolder, by);
  await keepSigned(stationFolder, size, note);
  return note;
}
