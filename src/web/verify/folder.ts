import { toHex } from '../../evidence/platform/bytes.ts';
import type { FolderToRead } from '../../package/folder.ts';
import { MAX_BYTES } from '../../package/read.ts';
import { w } from '../../words/catalogue.ts';
import { type Given, refused } from './given.ts';

/** Given files as the folder of a package. */
export function folderOf(files: readonly Given[]): FolderToRead {
  const byPath = new Map(files.map((file) => [file.path, file]));
  const at = (path: string): Given => {
    const file = byPath.get(path);
    if (file?.isPlain !== true)
      throw refused(
        'file-unreadable',
        path,
        () => w`this file of the package is not there`,
        () => w`Ask for the package again.`,
      );
    return file;
  };
  return {
    read: async (path, maxBytes) => at(path).read(maxBytes),
    list: () => files,
    async digest(path) {
      const bytes = await at(path).read(MAX_BYTES);
      return toHex(new Uint8Array(await crypto.subtle.digest('SHA-256', Uint8Array.from(bytes))));
    },
  };
}
