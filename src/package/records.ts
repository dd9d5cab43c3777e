/** The records of a package, each by itself, on all cores; nothing of them is kept but what each says of itself. */
import { join, relative } from 'node:path';
import { counted } from '../cli/evidence/package-text.ts';
import { isPlain } from '../cli/evidence/readers-trust.ts';
import { spread } from '../cli/evidence/verify-folder.ts';
import { progress } from '../cli/terminal/progress.ts';
import { type Check, failed, passed } from '../evidence/check.ts';
import { readCheckpoint, type SignedCheckpoint } from '../evidence/checkpoint.ts';
import { COMPLETENESS } from '../evidence/completeness.ts';
import type { TrustList } from '../evidence/trust.ts';
import { type Finding, isSound, simulatedText } from './finding.ts';
import type { PackageIndex } from './format.ts';

export interface Records {
  readonly check: Check;
  /** Not all could be judged again, because other rules had judged them. */
  readonly otherRules: boolean;
  /** Empty where no job was. */
  readonly simulated: string;
  /** Set where some were signed by a key that the reader does not trust. */
  readonly untrusted: Check | null;
  readonly checkpoints: readonly { readonly path: string; readonly checkpoint: SignedCheckpoint | null }[];
}

/** Those that are missing are named elsewhere. */
export async function recordsIn(folder: string, index: PackageIndex, trust: TrustList): Promise<Records> {
  const jobs = new Map<string, string>();
  for (const { job, record } of index.jobs)
    if (await isPlain(join(folder, record))) jobs.set(join(folder, record), job);
  const findings: Finding[] = [];
  const bar = progress('records', jobs.size);
  await spread([...jobs.keys()], trust, (some) => {
    findings.push(...some);
    bar.at(findings.length);
  });
  bar.end();
  findings.sort((a, b) => (a.file < b.file ? -1 : 1));
  const inside = (file: string) => relative(folder, file);
  const checkpoints = findings.map(({ file, says }) => {
    const note = says === null ? null : readCheckpoint(says.checkpoint, file);
    return { path: inside(file), checkpoint: note?.ok === true ? note.value : null };
  });
  return {
    check: checkRecords(index, findings, jobs, inside),
    simulated: simulatedText(findings),
    otherRules: findings.some(({ verdict }) => verdict === 'other-rules'),
    untrusted: untrustedIn(findings, inside),
    checkpoints,
  };
}

const SHOWN = 5;

type Inside = (file: string) => string;

function checkRecords(
  index: PackageIndex,
  findings: readonly Finding[],
  jobs: ReadonlyMap<string, string>,
  inside: Inside,
): Check {
  const bad = findings.filter((finding) => !isSound(finding));
  if (findings.length < index.jobs.length)
    return failed('records', `${findings.length} of ${index.jobs.length} that the index names are there.`);
  const [first] = bad;
  if (first !== undefined) {
    const others = bad.slice(1, 1 + SHOWN).map(({ file }) => inside(file));
    const also =
      others.length === 0 ? '' : `; also ${others.join(', ')}${bad.length > 1 + SHOWN ? ' and more' : ''}`;
    return failed(
      'records',
      `${bad.length} of ${findings.length} do not hold; ${inside(first.file)}: ${first.fault ?? 'no reason known'}${also}`,
    );
  }
  const astray = findings.find(({ file, says }) => says?.job !== jobs.get(file));
  if (astray !== undefined)
    return failed(
      'records',
      `${inside(astray.file)} is of job ${astray.says?.job}, not of the one that the index says.`,
    );
  const unfinished = findings.filter(({ failed: names }) => names.includes(COMPLETENESS));
  const which = unfinished.slice(0, SHOWN).map(({ says }) => says?.job);
  const more = unfinished.length > SHOWN ? ` and ${unfinished.length - SHOWN} more` : '';
  const said =
    unfinished.length === 0
      ? 'each complete'
      : `${unfinished.length} of a job that was not completed or is void (${which.join(', ')}${more})`;
  const others = findings.filter(({ verdict }) => verdict === 'other-rules').length;
  const again =
    others === 0
      ? 'each authentic and judged again'
      : `each authentic; ${others} NOT judged again, because they were judged by rules that this version does not know`;
  const simulated = simulatedText(findings);
  return passed(
    'records',
    `${counted(findings.length, 'record')}, ${again}; ${said}.${simulated === '' ? '' : ` ${simulated}`}`,
  );
}

function untrustedIn(findings: readonly Finding[], inside: Inside): Check | null {
  const untrusted = findings.filter(({ failed: names }) => names.includes('signer'));
  const [first] = untrusted;
  if (first === undefined) return null;
  return failed(
    'signer',
    `${untrusted.length} records are signed by a key that is not trusted; ${inside(first.file)}: ${first.fault ?? 'no reason known'}`,
  );
}
