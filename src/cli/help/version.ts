import { readFileSync } from 'node:fs';

/** The version in package.json, found from the source and from the build alike. */
export function programVersion(): string {
  for (const up of ['../../../package.json', '../../../../package.json']) {
    try {
      const parsed: unknown = JSON.parse(readFileSync(new URL(up, import.meta.url), 'utf8'));
      if (typeof parsed === 'object' && parsed !== null && 'version' in parsed) return String(parsed.version);
    } catch {
      // Not this one: the build lies one folder deeper than the source.
    }
  }
  throw new Error('package.json is missing');
}
