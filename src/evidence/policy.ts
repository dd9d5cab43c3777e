/**
 * Policies as C2SP writes them (c2sp.org/tlog-policy): which logs a reader takes, which witnesses there are, and how many of
 * them must have cosigned. Reading one needs no network.
 *
 *     log <verifier key>
 *     witness <name> <verifier key> [<address>]
 *     group <name> <how many | any | all> <name> ...
 *     quorum <name | none>
 */
import { type Problem, spokenProblem } from '../problem.ts';
import { err, ok, type Result } from '../result.ts';
import { type Sentence, sentence } from '../words/catalogue.ts';
import { type LogKey, readVerifierKey, type VerifierKey, type WitnessKey } from './verifier-key.ts';

export interface PolicyWitness {
  /** In the policy alone. */
  readonly name: string;
  readonly key: WitnessKey;
}

export interface Policy {
  /** Empty where the reader knows the log in another way. */
  readonly logs: readonly LogKey[];
  readonly witnesses: readonly PolicyWitness[];
  /** Whether these witnesses, by name, are enough. */
  readonly isQuorum: (names: ReadonlySet<string>) => boolean;
}

/** A group stands for its members where `least` of them have cosigned. */
interface Group {
  readonly name: string;
  readonly least: number;
  readonly members: readonly string[];
}

interface Lines {
  readonly logs: LogKey[];
  readonly witnesses: PolicyWitness[];
  readonly groups: Group[];
  readonly members: Set<string>;
  quorum: string | null;
}

const NONE = 'none';
/** Far more than a reader has to take (tlog-policy, "Implementation limits"). */
const MAX_LINES = 2000;

/** Reads a policy. Problem: `policy-form`, which names the line. */
export function parsePolicy(bytes: Uint8Array, source: string): Result<Policy> {
  const bad = bytes.find((byte) => (byte < 0x20 && byte !== 0x09 && byte !== 0x0a) || byte === 0x7f);
  if (bad !== undefined) return err(problem(source, sentence`the file has control characters`));
  const lines = octets(bytes)
    .split('\n')
    .map((line) => utf8Of(line) ?? line);
  if (lines.length > MAX_LINES) return err(problem(source, sentence`it has more than ${MAX_LINES} lines`));
  const read: Lines = { logs: [], witnesses: [], groups: [], members: new Set(), quorum: null };
  for (const [i, line] of lines.entries()) {
    const fault = readLine(
      line.split(/[ \t]+/).filter((word) => word !== ''),
      read,
    );
    if (fault !== null) return err(problem(`${source}: line ${i + 1}`, fault));
  }
  const { quorum } = read;
  return quorum === null
    ? err(problem(source, sentence`the line "quorum" is missing`))
    : ok(policyOf(read, quorum));
}

/** What is wrong with a line; null for a good one. */
function readLine([word = '#', ...rest]: readonly string[], read: Lines): Sentence | null {
  if (word.startsWith('#')) return null;
  switch (word) {
    case 'log':
      return readLog(rest, read);
    case 'witness':
      return readWitness(rest, read);
    case 'group':
      return readGroup(rest, read);
    case 'quorum':
      return readQuorum(rest, read);
    default:
      return sentence`expected a line of log, witness, group or quorum`;
  }
}

function readLog([text = '', , ...more]: readonly string[], { logs, witnesses }: Lines): Sentence | null {
  const key = readVerifierKey(text);
  // A log may sign by ML-DSA-44 as well (tlog-checkpoint); none of ours does.
  if (more.length > 0 || key === null || key.kind === 'ed25519-cosignature')
    return sentence`expected: log, the verifier key of the log, and its address where it has one`;
  if (key.kind !== 'log') return null;
  if (logs.some((other) => isSameKey(other, key))) return sentence`two logs have this key`;
  if (witnesses.some((witness) => isSameKey(witness.key, key)))
    return sentence`a witness has this key, and nobody is his own witness`;
  logs.push(key);
  return null;
}

function readWitness([name = '', text = '', , ...more]: readonly string[], read: Lines): Sentence | null {
  const key = readVerifierKey(text);
  if (more.length > 0 || key === null || key.kind === 'log')
    return sentence`expected: witness, a name, its verifier key for cosignatures (Ed25519 or ML-DSA-44), and its address where it has one`;
  if (isTaken(name, read)) return sentence`this name is taken`;
  if (read.witnesses.some((other) => isSameKey(other.key, key))) return sentence`two witnesses have this key`;
  if (read.logs.some((log) => isSameKey(log, key)))
    return sentence`a log has this key, and nobody is his own witness`;
  read.witnesses.push({ name, key });
  return null;
}

function readGroup([name = '', count = '', ...members]: readonly string[], read: Lines): Sentence | null {
  const least = count === 'any' ? 1 : count === 'all' ? members.length : numberIn(count);
  if (members.length === 0 || least === null || least > members.length)
    return sentence`expected: group, a name, how many of its members (or any, or all), and its members`;
  if (isTaken(name, read)) return sentence`this name is taken`;
  for (const member of members) {
    if (member === NONE || !isTaken(member, read)) return sentence`a member is defined by no line before`;
    if (read.members.has(member)) return sentence`a member is in a group already`;
    read.members.add(member);
  }
  read.groups.push({ name, least, members });
  return null;
}

function readQuorum([name = '', ...more]: readonly string[], read: Lines): Sentence | null {
  if (name === '' || more.length > 0)
    return sentence`expected: quorum, and the name of a witness or a group, or none`;
  if (read.quorum !== null) return sentence`there is a second line "quorum"`;
  if (!isTaken(name, read)) return sentence`the quorum is defined by no line before`;
  read.quorum = name;
  return null;
}

function policyOf({ logs, witnesses, groups }: Lines, quorum: string): Policy {
  const isQuorum = (names: ReadonlySet<string>) => {
    const standing = new Set(names);
    // A group names only what is defined before it.
    for (const { name, least, members } of groups)
      if (members.filter((member) => standing.has(member)).length >= least) standing.add(name);
    return quorum === NONE || standing.has(quorum);
  };
  return { logs, witnesses, isQuorum };
}

const isTaken = (name: string, { witnesses, groups }: Lines) =>
  name === NONE || [...witnesses, ...groups].some((one) => one.name === name);

const numberIn = (text: string): number | null => (/^[1-9]\d{0,5}$/.test(text) ? Number(text) : null);

/** The same public key, whatever name it goes by. */
const isSameKey = (one: VerifierKey, other: VerifierKey): boolean => keyText(one) === keyText(other);
const keyText = (key: VerifierKey): string => ('jwk' in key ? key.jwk.x : key.key.join());

const octets = (bytes: Uint8Array): string => {
  let text = '';
  for (const byte of bytes) text += String.fromCharCode(byte);
  return text;
};

/** Null for a line that is no UTF-8: what its octets mean does not matter (tlog-policy, "Character set"). */
function utf8Of(text: string): string | null {
  try {
    const bytes = Uint8Array.from(text, (character) => character.charCodeAt(0));
    return new TextDecoder('utf-8', { fatal: true, ignoreBOM: true }).decode(bytes);
  } catch {
    return null;
  }
}

const problem = (where: string, message: Sentence): Problem =>
  spokenProblem('policy-form', where, message, sentence`Compare it with "plugmark manual witnesses".`);
