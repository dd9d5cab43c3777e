/** Signing the log as it stands, where it extends all that was signed before. */
import type { StationKey } from '../../../db/keyfile.ts';
import { signCheckpoint } from '../../evidence/checkpoint.ts';
import { treeRoot } from '../../evidence/merkle.ts';
import type { StationState } from '../../evidence/station.ts';
import { keepSigned, refuseTurned } from './one-history.ts';
import { type StationFolder, stateOf } from './station.ts';
import { currentKey } from './station-keys.ts';

/** The key that signs for a log, and the name that it signs under. */
export interface Signer {
  readonly origin: string;
  readonly key: StationKey;
}

/** Asks for the passphrase of the key where it has one. */
export async function signerOf({ folder }: StationFolder, state: StationState): Promise<Signer> {
  return { origin: state.origin, key: await currentKey(folder, state) };
}

/** Signs the log as it stands, where it extends all that was signed before, and keeps the note; who asked for the signer before is not asked for a passphrase again. */
export async function newCheckpoint(stationFolder: StationFolder, signer?: Signer): Promise<string> {
  const state = stateOf(stationFolder);
  refuseTurned(stationFolder, state);
  const size = stationFolder.log.size();
  const note = signed(stationFolder, size, signer ?? (await signerOf(stationFolder, state)));
  await keepSigned(stationFolder, size, note);
  return note;
}

export const signed = ({ log }: StationFolder, size: number, { origin, key }: Signer): string =>
  signCheckpoint({ origin, size, root: treeRoot(log.tree, size) }, key.privateKey);
