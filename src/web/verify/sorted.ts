/** Which of the given files is what, by what is in it. */
import { readCheckpoint } from '../../evidence/checkpoint.ts';
import { parseLaterLog } from '../../evidence/later-log.ts';
import { parseStrictJson } from '../../evidence/strict-json.ts';
import { PACKAGE_FILES } from '../../package/format.ts';
import { w } from '../../words/catalogue.ts';
import { type Given, givenFile, refused, unreadable } from './given.ts';
import type { HeldFiles, NamedFile } from './shown.ts';

const HEAD_BYTES = 64;
/** No list of keys, checkpoint or proof is larger. */
const MAX_SMALL_BYTES = 4 << 20;

export type Kind =
  | 'record'
  | 'pdf'
  | 'zip'
  | 'trust'
  | 'checkpoint'
  | 'later'
  | 'policy'
  | 'time-stamp'
  | 'authorities'
  | 'unknown';

/** A line of a policy. A fault in it is named when it is read. */
const OF_POLICY = /^[ \t]*(log|witness|group|quorum)[ \t]/m;
const OF_CERTIFICATES = /^-----BEGIN CERTIFICATE-----/m;

const headOf = async ({ file }: NamedFile) =>
  new TextDecoder('latin1').decode(await file.slice(0, HEAD_BYTES).arrayBuffer());

/** A file that is none of these is taken for a record, and verification says what is wrong with it. */
async function kindOf(named: NamedFile): Promise<Kind> {
  const head = await headOf(named).catch(() => {
    throw unreadable(named.path);
  });
  if (head.startsWith('{"payload":"')) return 'record';
  if (head.startsWith('%PDF-')) return 'pdf';
  if (/^PK(\x03\x04|\x05\x06)/.test(head)) return 'zip';
  if (named.path.endsWith('.record.json')) return 'record';
  if (/\.(tsr|tst)$/.test(named.path)) return 'time-stamp';
  if (named.file.size > MAX_SMALL_BYTES) return 'unknown';
  const bytes = new Uint8Array(await named.file.arrayBuffer());
  if (readCheckpoint(bytes, named.path).ok) return 'checkpoint';
  if (parseLaterLog(bytes, named.path).ok) return 'later';
  const text = new TextDecoder('latin1').decode(bytes);
  if (OF_CERTIFICATES.test(text)) return 'authorities';
  if (!text.startsWith('{') && OF_POLICY.test(text)) return 'policy';
  const json = parseStrictJson(bytes, named.path);
  const isKeySet = json.ok && typeof json.value === 'object' && json.value !== null && 'keys' in json.value;
  if (isKeySet) return 'trust';
  return json.ok || named.path.endsWith('.json') ? 'record' : 'unknown';
}

/** Several files from one folder belong together; what is to be verified takes the place of what was there before. */
export async function sorted(given: readonly NamedFile[], before: HeldFiles): Promise<HeldFiles> {
  if (given.some(({ path }) => path.includes('/'))) return { ...before, subject: given, time: null };
  const subject: NamedFile[] = [];
  let { trust, kept, later, policy, time, authorities } = before;
  for (const named of given) {
    const kind = await kindOf(named);
    switch (kind) {
      case 'trust':
        trust = named;
        break;
      case 'checkpoint':
        kept = named;
        break;
      case 'later':
        later = [...later.filter(({ path }) => path !== named.path), named];
        break;
      case 'time-stamp':
        time = named;
        break;
      case 'authorities':
        authorities = named;
        break;
      case 'policy':
        policy = named;
        break;
      case 'unknown':
        throw refused(
          'not-for-this-page',
          named.path,
          () => w`this is no record, PDF, package, trust list, checkpoint, policy or time stamp`,
          () => w`Choose the *.record.json, the PDF or the package that you were given.`,
        );
      default:
        subject.push(named);
    }
  }
  const isOther = subject.length > 0;
  // A time stamp belongs to one record.
  if (isOther && time === before.time) time = null;
  return { subject: isOther ? subject : before.subject, trust, kept, later, policy, time, authorities };
}

/** What a subject is verified as. */
export type Subject =
  | { readonly as: 'record'; readonly file: Given; readonly inPdf: boolean }
  | { readonly as: 'package'; readonly name: string; readonly files: readonly Given[] }
  /** Several that were chosen have no name together. */
  | { readonly as: 'records'; readonly name: string | null; readonly files: readonly Given[] };

/** Null where there is nothing to verify. */
export async function subjectOf(
  { subject }: HeldFiles,
  unzipped: (name: string, file: Blob) => Promise<readonly Given[]>,
): Promise<Subject | null> {
  const [only, ...more] = subject;
  if (only === undefined) return null;
  if (only.path.includes('/')) return folder(only.path.slice(0, only.path.indexOf('/')), subject.map(below));
  const kinds = await Promise.all(subject.map(kindOf));
  if (more.length === 0 && kinds[0] === 'zip') return folder(only.path, await unzipped(only.path, only.file));
  if (kinds.includes('zip'))
    throw refused(
      'not-for-this-page',
      only.path,
      () => w`an archive is verified by itself`,
      () => w`Choose one package, or records, but not both at once.`,
    );
  if (more.length === 0)
    return { as: 'record', file: givenFile(only.path, only.file), inPdf: kinds[0] === 'pdf' };
  return {
    as: 'records',
    name: null,
    files: subject.map(({ path, file }) => givenFile(path, file)),
  };
}

/** The name of the folder itself is no part of a package. */
const below = ({ path, file }: NamedFile): Given => givenFile(path.slice(path.indexOf('/') + 1), file);

/** It is a package if it has an index, or what only stands beside one, so that a lost index shows. */
function folder(name: string, files: readonly Given[]): Subject {
  const { index, signature, proofs } = PACKAGE_FILES;
  const isPackage = files.some(({ path }) => [index, signature, proofs].some((own) => own === path));
  return isPackage ? { as: 'package', name, files } : { as: 'records', name, files };
}
