/** The folder of an archive: who it is, its key, and its file where it keeps no database elsewhere. */

import { join } from 'node:path';
import { z } from 'zod';
import { openPostgres } from '../../../db/archive/postgres.ts';
import { openSqlite } from '../../../db/archive/sqlite.ts';
import { archiveStore } from '../../../db/archive/store.ts';
import type { ArchiveStore } from '../../archive/store.ts';
import { w } from '../../words/catalogue.ts';
import { readJson } from '../station/json-file.ts';

export interface ArchiveScope {
  readonly data: string;
  readonly database?: string;
}

const identitySchema = z.strictObject({
  form: z.literal('plugmark/archive-folder/1'),
  name: z.string().min(1).max(80),
  kid: z.string().min(1).max(60),
});
export type ArchiveIdentity = z.infer<typeof identitySchema>;

export const identityPath = (folder: string) => join(folder, 'archive.json');
export const archiveKeyPath = (folder: string, kid: string) => join(folder, `archive.${kid}.pem`);

export const identityOf = ({ data }: ArchiveScope): Promise<ArchiveIdentity> =>
  readJson(
    identityPath(data),
    identitySchema,
    w`file of the archive`,
    w`what "plugmark archive init" writes`,
  );

/** Opens the store of an archive for one command, and closes it behind it. */
export async function withArchive<T>(
  scope: ArchiveScope,
  work: (store: ArchiveStore, identity: ArchiveIdentity) => Promise<T>,
): Promise<T> {
  const identity = await identityOf(scope);
  const { data, database } = scope;
  const sql =
    database === undefined ? await openSqlite(join(data, 'archive.db')) : await openPostgres(database);
  const store = archiveStore(sql);
  try {
    return await work(store, identity);
  } finally {
    await store.close();
  }
}
