/** Files that were made to mislead, or to keep a reader busy. Each is one change of a record that holds. */
import { sign } from 'node:crypto';
import { fromBase64url, toBase64url } from '../../src/evidence/base64url.ts';
import { canonical, canonicalBytes } from '../../src/evidence/canonical.ts';
import { keyHash, originOf, signCheckpoint } from '../../src/evidence/checkpoint.ts';
import { digestOf, disclosureOf } from '../../src/evidence/disclosures.ts';
import { publicJwk, thumbprint } from '../../src/evidence/jwk.ts';
import { addSignature, disclosuresIn, withDisclosures } from '../../src/evidence/jws.ts';
import { encodeSamples } from '../../src/pull/trace.ts';
import { fileOf, jwsOf, withHeader } from '../evidence/forge.ts';
import { AT, kidOf, logOf, seal, station, stranger, technician, wholeJob } from '../evidence/sample-job.ts';
import { type Content, contentOf, type Forging, forged, signedText } from './forged.ts';
import { AMONG_OTHERS, COUNTERSIGNED, countersigner, WHOLE } from './valid.ts';

/** What both verifiers have to say of it. `judging`: only judging again tells, so that a verifier without the rules takes it. */
export type Expected = 'not authentic' | 'unreadable' | 'authentic' | 'judging';

export interface Variant {
  readonly what: string;
  readonly file: Uint8Array;
  readonly expected: Expected;
}

const jws = jwsOf(WHOLE);
const text = WHOLE.toString('utf8');
const signed = Buffer.from(jws.payload, 'base64url').toString('utf8');
const [first, second] = jws.signatures;
if (first === undefined || second === undefined) throw new Error('two signatures');
const disclosures = disclosuresIn(jws);

const variants = (all: Readonly<Record<string, Uint8Array | string>>, expected: Expected = 'not authentic') =>
  Object.entries(all).map(([what, file]): Variant => ({ what, file: Buffer.from(file), expected }));

function flipped(bytes: Buffer, bit: number): Buffer {
  const copy = Buffer.from(bytes);
  copy[bit >> 3] = (copy[bit >> 3] ?? 0) ^ (1 << (bit & 7));
  return copy;
}

/** One bit of the payload, of a header, of a signature, of a disclosure, and of the ends. */
const bits = () => {
  const places = {
    payload: 40,
    'middle of the payload': Math.floor(jws.payload.length / 2),
    protected: text.indexOf('"protected":"') + 20,
    signature: text.indexOf('"signature":"') + 20,
    disclosure: text.indexOf('"disclosures":["') + 30,
    end: WHOLE.length - 2,
    'line feed': WHOLE.length - 1,
  };
  return variants(
    Object.fromEntries(
      Object.entries(places).map(([place, byte]) => [
        `a bit turned: ${place}`,
        flipped(WHOLE, byte * 8 + (byte % 7)),
      ]),
    ),
  );
};

const writing = () =>
  variants({
    'no line feed': text.trimEnd(),
    'two line feeds': `${text}\n`,
    'a carriage return': text.replace('\n', '\r\n'),
    'a space': text.replace(',', ', '),
    'over several lines': JSON.stringify(JSON.parse(text), null, 2),
    'members in another order': `${JSON.stringify({ signatures: jws.signatures, payload: jws.payload })}\n`,
    'an escape': text.replace('"payload"', '"\\u0070ayload"'),
    'padding in base64url': text.replace('","signatures', '=","signatures'),
    'plain base64': fileOf({ ...jws, payload: `${jws.payload.slice(0, -4)}A+/A` }),
    'a member more': text.replace('{', '{"extra":1,'),
    'a name twice': text.replace('{"payload":"', '{"payload":"","payload":"'),
    'cut in the middle': text.slice(0, text.length / 2),
    'no UTF-8': Buffer.concat([WHOLE.subarray(0, -2), Buffer.of(0xff, 0x0a)]),
    'an empty unprotected header': fileOf({ ...jws, signatures: [{ ...first, header: {} }, second] }),
    'a member more in the unprotected header': fileOf({
      ...jws,
      signatures: [{ ...first, header: { ...first.header, kid: 'x' } }, second],
    }),
    'seventeen signatures': fileOf({ ...jws, signatures: Array(17).fill(first) }),
    'no signatures': fileOf({ ...jws, signatures: [] }),
    'no payload': fileOf({ ...jws, payload: '' }),
    'nesting without end': `{"payload":"","signatures":${'['.repeat(1 << 20)}`,
    'nesting in the payload': signedText('{"a":'.repeat(1 << 20)),
    'a number of a million digits': signedText('1'.repeat(1 << 20)),
  });

const noRecord = () =>
  variants(
    {
      nothing: '',
      'plain text': 'torque 27 N·m',
      'another JSON': '{"form":"plugmark/work-order/1"}\n',
      'a list': '[]\n',
      null: 'null',
      'a compact JWS': 'eyJhbGciOiJFZERTQSJ9.e30.AAAA',
      'a byte order mark before a record': `\uFEFF${text}`,
      'brackets without end': '['.repeat(1 << 20),
      'a name twice, in another writing': text.replace('{"payload":"', '{ "payload":"","payload":"'),
    },
    'unreadable',
  );

/** Another header under the same signature, and the same one signed anew by its key. */
const headers = () => {
  const changes: Readonly<Record<string, (header: Record<string, unknown>) => unknown>> = {
    'alg none': (h) => ({ ...h, alg: 'none' }),
    'alg EdDSA': (h) => ({ ...h, alg: 'EdDSA' }),
    'alg ES256': (h) => ({ ...h, alg: 'ES256' }),
    'alg HS256': (h) => ({ ...h, alg: 'HS256' }),
    'no alg': ({ alg: _alg, ...h }) => h,
    'another typ': (h) => ({ ...h, typ: 'JWT' }),
    'the kid of another key': (h) => ({ ...h, kid: kidOf(stranger) }),
    'another key under the kid': (h) => ({ ...h, jwk: publicJwk(stranger.privateKey) }),
    'a critical extension': (h) => ({ ...h, crit: ['b64'], b64: false }),
    'a secret in the key': (h) => ({ ...h, jwk: { ...Object(h['jwk']), d: 'AAAA' } }),
    'a key for agreeing on secrets': (h) => ({ ...h, jwk: { ...Object(h['jwk']), crv: 'X25519' } }),
    'another role': (h) => ({ ...h, role: 'technician' }),
    'a time without milliseconds': (h) => ({ ...h, signedAt: '2026-03-02T09:30:00Z' }),
  };
  const header: Record<string, unknown> = JSON.parse(String(fromBase64url(first.protected)));
  const resigned = (raw: string) => {
    const head = toBase64url(raw);
    const mark = sign(null, Buffer.from(`${head}.${jws.payload}`), station.privateKey).toString('base64url');
    return fileOf({ ...jws, signatures: [{ ...first, protected: head, signature: mark }, second] });
  };
  const entries = Object.entries(changes);
  return variants({
    ...Object.fromEntries(entries.map(([what, change]) => [`header: ${what}`, withHeader(WHOLE, change)])),
    ...Object.fromEntries(
      entries.map(([what, change]) => [
        `header signed anew: ${what}`,
        resigned(canonical(change(header) ?? null)),
      ]),
    ),
    'header signed anew: not canonical': resigned(JSON.stringify(header, null, 1)),
    'header signed anew: a name twice': resigned(canonical(header).replace('{', '{"alg":"none",')),
    'header: no base64url': fileOf({ ...jws, signatures: [{ ...first, protected: '*' }, second] }),
  });
};

const ORDER = 2n ** 252n + 27742317777372353535851937790883648493n;
const signatures = () => {
  const mark = Buffer.from(first.signature, 'base64url');
  const turned = ORDER + BigInt(`0x${Buffer.from(mark.subarray(32)).reverse().toString('hex')}`);
  const beyond = Buffer.concat([
    mark.subarray(0, 32),
    Buffer.from(turned.toString(16).padStart(64, '0'), 'hex').reverse(),
  ]);
  const withMark = (signature: string) => fileOf({ ...jws, signatures: [{ ...first, signature }, second] });
  const strangers = addSignature({ ...jws, signatures: [] }, stranger).signatures;
  return [
    ...variants({
      'S beyond the order of the group': withMark(beyond.toString('base64url')),
      'a signature of 63 bytes': withMark(mark.subarray(0, 63).toString('base64url')),
      'a signature of 65 bytes': withMark(Buffer.concat([mark, Buffer.of(0)]).toString('base64url')),
      'a signature of zeros': withMark(Buffer.alloc(64).toString('base64url')),
      'an empty signature': withMark(''),
      'unused bits in a signature': withMark(`${first.signature.slice(0, -1)}${nextSign(first.signature)}`),
      'signatures in another order': fileOf({
        ...jws,
        signatures: [
          { ...second, header: first.header },
          { protected: first.protected, signature: first.signature },
        ],
      }),
      "the technician's signature taken off": fileOf({ ...jws, signatures: [first] }),
      'a signature twice': fileOf({ ...jws, signatures: [first, second, second] }),
      'a countersignature twice': fileOf({
        ...jwsOf(COUNTERSIGNED),
        signatures: [...jwsOf(COUNTERSIGNED).signatures, ...jwsOf(COUNTERSIGNED).signatures.slice(-1)],
      }),
      'a station that was not announced': fileOf({ ...jws, signatures: [first, second, ...strangers] }),
      "a stranger's signature in the first place": fileOf({
        ...jws,
        signatures: [{ ...strangers[0], header: first.header }, second],
      }),
      'a countersignature over another payload': fileOf({
        ...jws,
        signatures: [
          first,
          second,
          ...addSignature({ payload: 'e30', signatures: [] }, countersigner).signatures,
        ],
      }),
      'the signatures of another record': fileOf({
        ...jws,
        signatures: jwsOf(seal(logOf(wholeJob('WO-2'), 'job:WO-2'))).signatures,
      }),
    }),
    ...variants({ 'any number of countersignatures': COUNTERSIGNED }, 'authentic'),
  ];
};

/** The last character with one of its unused bits set. */
const ALPHABET = 'ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-_';
const nextSign = (mark: string) => ALPHABET[ALPHABET.indexOf(mark.at(-1) ?? '') + 1] ?? 'A';

/** Points of small order, in all their writings, and others that are no writing of a point. */
const WEAK_KEYS: Readonly<Record<string, string>> = {
  'the neutral point': `01${'00'.repeat(31)}`,
  'the neutral point, x negative': `01${'00'.repeat(30)}80`,
  'order two': `ec${'ff'.repeat(30)}7f`,
  'order two, x negative': `ec${'ff'.repeat(31)}`,
  'order four': '00'.repeat(32),
  'order four, x negative': `${'00'.repeat(31)}80`,
  'order eight': '26e8958fc2b227b045c3f489f2ef98f0d5dfac05d3c63339b13802886d53fc05',
  'order eight, x negative': '26e8958fc2b227b045c3f489f2ef98f0d5dfac05d3c63339b13802886d53fc85',
  'order eight, the other': 'c7176a703d4dd84fba3c0b760d10670f2a2053fa2c39ccc64ec7fd7792ac037a',
  'order eight, the other, x negative': 'c7176a703d4dd84fba3c0b760d10670f2a2053fa2c39ccc64ec7fd7792ac03fa',
  'zero written as p': `ed${'ff'.repeat(30)}7f`,
  'one written as p + 1': `ee${'ff'.repeat(30)}7f`,
  'two written as p + 2': `ef${'ff'.repeat(30)}7f`,
};

/** The station's key is such a point. S = 0 and R = the neutral point is a signature of anything where h·A is neutral. */
const weakKeys = () =>
  variants(
    Object.fromEntries(
      Object.entries(WEAK_KEYS).map(([name, hex]) => {
        const jwk = { kty: 'OKP', crv: 'Ed25519', x: Buffer.from(hex, 'hex').toString('base64url') } as const;
        const kid = thumbprint(jwk);
        const mark = Buffer.concat([
          Buffer.from(WEAK_KEYS['the neutral point'] ?? '', 'hex'),
          Buffer.alloc(32),
        ]);
        const content = contentOf(
          forged(WHOLE, (one) => {
            one.background[0].event.key = jwk;
            one.signers = [{ role: 'station', kid }];
            one.technicianSignature = 'not-given';
          }),
        );
        const note = content.log.checkpoint.split('\n');
        const origin = originOf(kid);
        const blob = Buffer.concat([keyHash(origin, jwk), mark]).toString('base64');
        content.log.checkpoint = `${origin}\n${note[1]}\n${note[2]}\n\n— ${origin} ${blob}\n`;
        const payload = toBase64url(canonicalBytes(content));
        const header = {
          alg: 'Ed25519',
          typ: 'plugmark-record+json',
          kid,
          jwk,
          role: 'station',
          signedAt: AT,
        };
        const one = { protected: toBase64url(canonicalBytes(header)), signature: mark.toString('base64url') };
        return [`a key that anybody can sign under: ${name}`, fileOf({ payload, signatures: [one] })];
      }),
    ),
  );

/** Signed content with something else in the place of a piece of its text. */
const rewritten = (from: string | RegExp, to: string) => {
  const changed = signed.replace(from, to);
  if (changed === signed) throw new Error(`nothing to replace: ${from}`);
  return signedText(changed, { disclosures });
};

const json = () =>
  variants({
    'content: a name twice': rewritten('"job":', '"job":"WO-9","job":'),
    'content: a name twice, deep inside': rewritten('"torque":"25', '"torque":"1-2 N·m","torque":"25'),
    'content: __proto__': rewritten('{', '{"__proto__":{"form":"x"},'),
    'content: a number beyond 2^53': rewritten('"monoUs":1000', '"monoUs":9007199254740993'),
    'content: a number that rounds': rewritten('"resolution":0.01', '"resolution":0.01000000000000000001'),
    'content: a number too large': rewritten('"resolution":0.01', '"resolution":1e999'),
    'content: minus zero': rewritten('"openQuestions":0', '"openQuestions":-0'),
    'content: another writing of a number': rewritten('"resolution":0.01', '"resolution":1e-2'),
    'content: an escape': rewritten('"by":"tech', '"by":"\\u0074ech'),
    'content: half a surrogate pair': rewritten('"by":"tech', '"by":"\\ud800ech'),
    'content: a byte order mark': signedText(`\uFEFF${signed}`, { disclosures }),
    'content: two texts': signedText(`${signed}{}`, { disclosures }),
    'content: nested too deep': rewritten('"job":"WO-1"', `"job":${'['.repeat(200)}${']'.repeat(200)}`),
    'content: members in another order': signedText(
      JSON.stringify(Object.fromEntries(Object.entries(contentOf(WHOLE)).toReversed())),
      { disclosures },
    ),
    'content: NaN': rewritten('"openQuestions":0', '"openQuestions":NaN'),
  });

/** What the form does not allow, however well signed and logged. */
const form = () => {
  const one = (what: string, change: (content: Content) => void, given?: Forging) =>
    ({ [`form: ${what}`]: forged(WHOLE, change, given) }) as const;
  const entry = (content: Content, type: string) =>
    content.entries.find(({ event }: Content) => event.type === type);
  const opened = (content: Content) => content.entries[0].event;
  return variants({
    ...one('another form', (c) => (c.form = 'plugmark/record/0')),
    ...one('a member more', (c) => (c.note = 'paid')),
    ...one('a member more in an entry', (c) => (c.entries[2].note = 'x')),
    ...one('a member less', (c) => delete c.budgets),
    ...one('no signers', (c) => (c.signers = [])),
    ...one('two stations', (c) => c.signers.push({ role: 'station', kid: kidOf(stranger) })),
    ...one('a countersigner among the signers', (c) => c.signers.push({ role: 'countersigner', kid: 'x' })),
    ...one('no entries', (c) => (c.entries = []), { keepLog: true, disclosures: [] }),
    ...one('an event of no known type', (c) => (entry(c, 'session-started').event.type = 'engine-blessed')),
    ...one('a place in the log that is none', (c) => (c.entries[2].seq = 0.5), { keepLog: true }),
    ...one('a day that is none', (c) => (c.entries[2].at = '2026-02-30T09:30:00.000Z')),
    ...one('a line feed behind a time', (c) => (c.entries[2].at += '\n')),
    ...one('a salt of 120 bits', (c) => (c.entries[2].salt = c.entries[2].salt.slice(0, 20))),
    ...one('unused bits in a salt', (c) => (c.entries[2].salt = `${c.entries[2].salt.slice(0, 21)}B`)),
    ...one('a job number that is a path', (c) => (c.job = '../WO-1')),
    ...one('a job number in other digits', (c) => (c.job = 'WO-١')),
    ...one('a cylinder twice in the service order', (c) => (opened(c).order.engine.serviceOrder = [1, 1])),
    ...one('a cylinder twice in a bank', (c) => (opened(c).order.engine.banks = [[1, 1, 2]])),
    ...one('a firing order of other cylinders', (c) => (opened(c).order.engine.firingOrder = [1, 3])),
    ...one('a firing order from the last', (c) => (opened(c).order.engine.firingOrder = [2, 1])),
    ...one('five thousand attempts', (c) => {
      const pull = entry(c, 'pull-detected');
      const last = c.entries.at(-1);
      for (let i = 1; i <= 5000; i++)
        c.entries.push({ ...structuredClone(pull), seq: last.seq + i, n: last.n + i });
    }),
    ...one('thirty thousand entries', (c) => (c.entries = Array(30_000).fill(c.entries[1])), {
      keepLog: true,
      disclosures: [],
    }),
    ...one('a range turned round', (c) => setInstrument(c, { range: { from: 50, to: 10 } })),
    ...one('a repeatability of nothing', (c) =>
      setInstrument(c, { repeatability: { readings: [1, 1], basis: 'x' } }),
    ),
    ...one('a key of small order that signs nothing', (c) => {
      c.background[1].event.key = { kty: 'OKP', crv: 'Ed25519', x: 'A'.repeat(43) };
    }),
  });
};

/** In the opening and in the background alike. */
function setInstrument(content: Content, change: object): void {
  Object.assign(content.entries[0].event.instruments[0], change);
  const recorded = content.background.find(({ event }: Content) => event.type === 'instrument-recorded');
  Object.assign(recorded.event.instrument, change);
}

/** The table of RFC 9901's refusals, and of those beyond it. `plateAt` is where the plate of the job is. */
const texts = () => {
  const vehicle = (content: Content) => content.entries[0].event.order.vehicle;
  const salt = 'AAAAAAAAAAAAAAAAAAAAAA';
  const raw = (list: unknown) => toBase64url(canonical(list));
  const plateOf = digestAt(vehicle(contentOf(WHOLE)).plate);
  const others = disclosures.filter((one) => digestOf(one) !== plateOf);
  /** The plate under a disclosure of any form. */
  const plate = (what: string, disclosure: string) => ({
    [`disclosure: ${what}`]: forged(
      WHOLE,
      (content) => (vehicle(content).plate = { _sd: [digestOf(disclosure)] }),
      { disclosures: [...others, disclosure] },
    ),
  });
  const concealed = (
    what: string,
    change: (content: Content) => void,
    more: readonly string[] = disclosures,
  ) => ({
    [`texts: ${what}`]: forged(WHOLE, change, { disclosures: more }),
  });
  const extra = disclosureOf(salt, 'EX 200');
  const [any = ''] = disclosures;
  const beside = (list: readonly string[]) => fileOf(withDisclosures(jws, list));
  const foreign = disclosuresIn(jwsOf(seal(logOf(wholeJob('WO-2').map(renamed), 'job:WO-2'))));
  return [
    ...variants({
      'disclosure: of nothing in the record': beside([...disclosures, extra]),
      'disclosure: of another record': beside([
        ...disclosures,
        ...foreign.filter((one) => !disclosures.includes(one)).slice(0, 1),
      ]),
      'disclosure: twice': beside([...disclosures, any]),
      'disclosure: with another text': beside([...others, disclosureOf(salt, 'EX 1000')]),
      'disclosure: padded': beside([`${any}=`, ...disclosures.slice(1)]),
      'disclosure: empty': beside(['', ...disclosures]),
      'disclosures in the second signature': fileOf({
        ...jws,
        signatures: [
          { protected: first.protected, signature: first.signature },
          { ...second, header: first.header },
        ],
      }),
      'disclosures that are no list': fileOf({
        ...jws,
        signatures: [{ ...first, header: { disclosures: 'x' } }, second],
      }),
      'no disclosures in a list of them': fileOf({
        ...jws,
        signatures: [{ ...first, header: { disclosures: [] } }, second],
      }),
      ...plate('a list of two', raw([salt, 'EX 200'])),
      ...plate('a list of four', raw([salt, 'value', 'EX 200', 1])),
      ...plate('an object', raw({ salt, name: 'value', text: 'EX 200' })),
      ...plate('the name _sd', raw([salt, '_sd', 'EX 200'])),
      ...plate('the name ...', raw([salt, '...', 'EX 200'])),
      ...plate('another name', raw([salt, 'plate', 'EX 200'])),
      ...plate('a number for a text', raw([salt, 'value', 7])),
      ...plate('a digest for a text', raw([salt, 'value', { _sd: [digestOf(extra)] }])),
      ...plate('a number for a salt', raw([123456789012, 'value', 'x'])),
      ...plate('a salt of 120 bits', raw(['A'.repeat(20), 'value', 'x'])),
      ...plate('a salt that is no base64url', raw(['?'.repeat(22), 'value', 'x'])),
      ...plate('spaces', toBase64url(`["${salt}", "value", "x"]`)),
      ...plate('an escape that needs none', toBase64url(`["${salt}","value","\\u0078"]`)),
      ...plate('half a surrogate pair', toBase64url(`["${salt}","value","\\ud800"]`)),
      ...plate('no UTF-8', toBase64url(Buffer.from([0x5b, 0xff, 0x5d]))),
      ...plate('brackets without end', toBase64url('['.repeat(3000))),
      ...plate('more than 5000 characters', disclosureOf(salt, 'x'.repeat(5000))),
      ...plate('a plate of 21 characters', disclosureOf(salt, 'x'.repeat(21))),
      ...plate('a plate of 21 signs that take two units each', disclosureOf(salt, '😀'.repeat(21))),
      ...concealed('a digest twice', (c) => (vehicle(c).vin = vehicle(c).plate)),
      ...concealed('a digest twice, withheld', (c) => (vehicle(c).vin = vehicle(c).plate), []),
      ...concealed('no digest', (c) => (vehicle(c).plate = { _sd: [] })),
      ...concealed('two digests', (c) => vehicle(c).plate._sd.push(digestOf(extra)), [...disclosures, extra]),
      ...concealed('digests that are no list', (c) => (vehicle(c).plate = { _sd: digestOf(extra) })),
      ...concealed('a digest in hexadecimal', (c) => (vehicle(c).plate = { _sd: ['a'.repeat(64)] })),
      ...concealed('a digest that is a number', (c) => (vehicle(c).plate = { _sd: [7] })),
      ...concealed('a text beside its digest', (c) => (vehicle(c).plate.value = 'EX 1')),
      ...concealed('a hidden element of a list', (c) => c.budgets.push({ '...': digestOf(extra) })),
      ...concealed('a plate in the open', (c) => (vehicle(c).plate = 'EX 100'), others),
      ...concealed(
        'a verdict that is concealed',
        (c) => (placed(c).judgement.result = { _sd: [digestOf(disclosureOf(salt, 'OK'))] }),
        [...disclosures, disclosureOf(salt, 'OK')],
      ),
      ...concealed('_sd_alg sha-256-32', (c) => (c._sd_alg = 'sha-256-32')),
      ...concealed('_sd_alg sha-512', (c) => (c._sd_alg = 'sha-512')),
      ...concealed('_sd_alg a number', (c) => (c._sd_alg = 256)),
      ...concealed('no _sd_alg', (c) => delete c._sd_alg),
    }),
    ...variants(
      {
        ...plate('the sign that stands for withheld text', disclosureOf(salt, '\uE000')),
        ...plate('a plate of 20 signs that take two units each', disclosureOf(salt, '😀'.repeat(20))),
        ...plate('a salt of 192 bits', disclosureOf('A'.repeat(32), 'EX 200')),
        'disclosures in another order': beside(disclosures.toReversed()),
      },
      'authentic',
    ),
  ];
};

const digestAt = (concealed: Content): string => concealed._sd[0];
const placed = (content: Content) =>
  content.entries.find(({ event }: Content) => event.type === 'pull-placed').event;
/** The same job of another vehicle. */
const renamed = (event: Content): Content =>
  event.type === 'job-opened' ? { ...event, order: { ...event.order, vehicle: { plate: 'EX 999' } } } : event;

const log = () => {
  const whole = contentOf(AMONG_OTHERS);
  const note = (change: (lines: string[]) => void) => {
    const lines: string[] = whole.log.checkpoint.split('\n');
    change(lines);
    return lines.join('\n');
  };
  const withNote = (what: string, checkpoint: string) => ({
    [`log: ${what}`]: forged(AMONG_OTHERS, (c) => (c.log.checkpoint = checkpoint), { keepLog: true }),
  });
  const withProof = (what: string, change: (proof: string[]) => void) => ({
    [`log: ${what}`]: forged(AMONG_OTHERS, (c) => change(c.log.proof), { keepLog: true }),
  });
  const withEntries = (what: string, change: (content: Content) => void, given?: Forging) => ({
    [`entries: ${what}`]: forged(AMONG_OTHERS, change, given),
  });
  const [origin = '', size = '', root = ''] = whole.log.checkpoint.split('\n');
  const by = (signer: typeof station, of = origin) =>
    signCheckpoint({ origin: of, size: Number(size), root: Buffer.from(root, 'base64') }, signer.privateKey);
  const foreignLine = by(stranger).split('\n')[4];
  const kept = { keepLog: true } as const;
  return [
    ...variants({
      ...withProof('a hash more in the proof', (proof) => proof.push(Buffer.alloc(32).toString('base64'))),
      ...withProof('a hash less', (proof) => proof.pop()),
      ...withProof('no proof', (proof) => proof.splice(0)),
      ...withProof('hashes in another order', (proof) => proof.reverse()),
      ...withProof('a hash changed', (proof) => (proof[0] = Buffer.alloc(32, 9).toString('base64'))),
      ...withProof('a short hash', (proof) => (proof[0] = 'AAAA')),
      ...withProof('unused bits in a hash', (proof) => {
        proof[0] = `${proof[0]?.slice(0, 42)}${nextSign(proof[0]?.slice(0, 43) ?? '')}=`;
      }),
      ...withNote(
        'another size',
        note((lines) => (lines[1] = String(Number(size) + 1))),
      ),
      ...withNote(
        'a zero in front of the size',
        note((lines) => (lines[1] = `0${size}`)),
      ),
      ...withNote(
        'a size beyond 2^53',
        note((lines) => (lines[1] = '9999999999999999')),
      ),
      ...withNote(
        'another root',
        note((lines) => (lines[2] = Buffer.alloc(32).toString('base64'))),
      ),
      ...withNote(
        'another origin',
        note((lines) => (lines[0] = 'plugmark/log/other')),
      ),
      ...withNote('another origin that is signed', by(station, 'plugmark/log/other')),
      ...withNote(
        'an extension line',
        note((lines) => lines.splice(3, 0, 'extension')),
      ),
      ...withNote(
        'no signature',
        note((lines) => lines.splice(4, 1)),
      ),
      ...withNote('signed by a stranger', by(stranger)),
      ...withNote(
        'signed under another name',
        note((lines) => (lines[4] = lines[4]?.replace(origin, 'other') ?? '')),
      ),
      ...withNote(
        'another key hash',
        note(
          (lines) =>
            (lines[4] =
              lines[4]?.replace(/ (\S)(\S+)$/, (_all, one, rest) => ` ${nextSign(one)}${rest}`) ?? ''),
        ),
      ),
      ...withNote(
        'a hyphen for a dash',
        note((lines) => (lines[4] = lines[4]?.replace('—', '-') ?? '')),
      ),
      ...withNote('no line feed at the end', whole.log.checkpoint.trimEnd()),
      ...withEntries('one dropped', (c) => c.entries.splice(4, 1)),
      ...withEntries('the last dropped, proof and all as they were', (c) => c.entries.pop(), kept),
      ...withEntries('two exchanged', (c) => c.entries.splice(1, 2, c.entries[2], c.entries[1])),
      ...withEntries('one twice', (c) => c.entries.splice(3, 0, c.entries[3])),
      ...withEntries('one of another job', (c) => (c.entries[3].stream = 'job:WO-2')),
      ...withEntries('one by somebody else', (c) => (c.entries[3].by = 'station'), kept),
      ...withEntries('all at other places', (c) => shifted(c.entries, 'seq'), kept),
      ...withEntries('a place of the background', (c) => (c.entries[0].seq = c.background.at(-1).seq)),
      ...withEntries('numbers from 2', (c) => shifted(c.entries, 'n')),
      ...withEntries('a number of a stream wrong', (c) => (c.entries[5].n = 7)),
    }),
    ...variants(
      withNote('a signature of somebody else beside it', `${whole.log.checkpoint}${foreignLine}\n`),
      'authentic',
    ),
  ];
};

const background = () => {
  const one = (what: string, change: (content: Content) => void, given?: Forging) => ({
    [`background: ${what}`]: forged(WHOLE, change, given),
  });
  const moved = (content: Content, by: number) => {
    for (const entry of content.entries) entry.seq += by;
  };
  const insert = (content: Content, event: object) => {
    const last = content.background.at(-1);
    moved(content, 1);
    content.background.push({ ...structuredClone(last), seq: last.seq + 1, n: last.n + 1, event });
  };
  return variants({
    ...one('in another order', (c) => c.background.reverse()),
    ...one('the first missing', (c) => c.background.shift()),
    ...one('the first of a later number', (c) => shifted(c.background, 'n')),
    ...one('set up twice', (c) => insert(c, c.background[0].event)),
    ...one('of another stream', (c) => (c.background[1].stream = 'job:WO-1')),
    ...one('another name of the station', (c) => (c.station = 'bay 9')),
    ...one('no word of the technician', (c) => (c.technicianSignature = 'no-key')),
    ...one('no key of the technician', (c) => (c.background[1].event.key = null)),
    ...one("a stranger's key for the technician", (c) => {
      c.background[1].event.key = publicJwk(stranger.privateKey);
    }),
    ...one('the key revoked', (c) =>
      insert(c, {
        type: 'key-revoked',
        kid: kidOf(station),
        from: '2026-01-01T00:00:00.000Z',
        reason: 'lost',
        because: { _sd: [digestOf('x')] },
      }),
    ),
    ...one('another key since', (c) =>
      insert(c, {
        type: 'key-replaced',
        key: publicJwk(stranger.privateKey),
        because: { _sd: [digestOf('x')] },
      }),
    ),
    ...one('an instrument missing', (c) =>
      c.background.splice(
        c.background.findIndex(({ event }: Content) => event.type === 'instrument-recorded'),
        1,
      ),
    ),
    ...one('an instrument otherwise', (c) => {
      c.entries[0].event.instruments[0].resolution = 0.0001;
    }),
    ...one('an instrument recorded only afterwards', (c) => {
      const last = c.background.at(-1);
      last.seq = c.entries.at(-1).seq + 1;
    }),
    ...one('signed by a stranger throughout', () => {}, { signers: [stranger, technician] }),
  });
};

/** The same with digests of texts that nobody knows. */
const withOtherDigests = (event: Content): Content =>
  JSON.parse(
    JSON.stringify(event)
      .replaceAll('"_sd":["', '"_sd":["A')
      .replaceAll(/("_sd":\["A.{42})./g, '$1'),
  );

const contents = () => {
  const one = (what: string, change: (content: Content) => void, given?: Forging) => ({
    [`contents: ${what}`]: forged(WHOLE, change, given),
  });
  const last = (content: Content) => content.entries.at(-1).event;
  const readings = (content: Content) =>
    content.entries.filter(({ event }: Content) => event.type === 'readings');
  return [
    ...variants({
      ...one('opened twice', (c) => (c.entries[3].event = withOtherDigests(c.entries[0].event))),
      ...one('not opened at its beginning', (c) => (c.entries[0].event = c.entries[1].event), {
        disclosures: disclosures.slice(0, 1),
      }),
      ...one('the order of another job', (c) => (c.entries[0].event.order.job = 'WO-9')),
      ...one('closed otherwise than the summary says', (c) => (last(c).complete = false)),
      ...one('closed complete with an open question', (c) => (c.summary.openQuestions = 1)),
      ...one('closed complete without a torque', (c) => {
        Object.assign(c.summary.cylinders[1].torque, { state: 'todo', judgement: null });
      }),
      ...one('a cylinder less in the summary', (c) => c.summary.cylinders.pop()),
      ...one('a verdict in the summary that no entry has', (c) => {
        c.summary.cylinders[0].torque.judgement.value = 27.5;
      }),
      ...one('samples that cannot be read', (c) => (readings(c)[0].event.counts = 'gA==')),
      ...one('a sample less than counted', (c) => (readings(c)[0].event.count += 1)),
      ...one('times that run back', (c) => {
        const { event } = readings(c).find(({ event: r }: Content) => r.count > 2);
        // Steps of 1, then of -4 microseconds.
        event.times = Buffer.from([2, 9, ...Array(event.count - 3).fill(0)]).toString('base64');
      }),
    }),
  ];
};

const clock = () => {
  const one = (what: string, change: (content: Content) => void) => ({
    [`clock: ${what}`]: forged(WHOLE, change),
  });
  const later = (entry: Content, seconds: number) => {
    entry.at = new Date(Date.parse(entry.at) + seconds * 1000).toISOString();
  };
  const from = (content: Content, n: number, seconds: number) => {
    for (const entry of content.entries) if (entry.n >= n) later(entry, seconds);
  };
  return [
    ...variants({
      ...one('the monotonic clock runs back', (c) => (c.entries[8].monoUs = 1)),
      ...one('a sample from after it was written', (c) => {
        const { event } = c.entries.find((entry: Content) => entry.event.type === 'readings');
        const [startUs, count] = [event.startUs + 3_600_000_000, event.count];
        Object.assign(
          event,
          encodeSamples({
            atUs: Array.from({ length: count }, (_, i) => startUs + i * 10_000),
            counts: Array(count).fill(0),
          }),
        );
      }),
    }),
    ...variants(
      {
        ...one('set ahead by an hour', (c) => from(c, 9, 3600)),
        ...one('set back by an hour', (c) => from(c, 9, -3600)),
        ...one('set ahead by just 2 s', (c) => from(c, 9, 2)),
        ...one('set ahead by 2.001 s', (c) => from(c, 9, 2.001)),
        ...one('set back for one entry', (c) => later(c.entries[6], -60)),
        ...one('dated back by 30 days', (c) => from(c, 1, -30 * 86_400)),
      },
      'authentic',
    ),
  ];
};

/** Well formed, logged and signed, and not what the samples give. */
const judging = () => {
  const one = (what: string, change: (content: Content) => void) => ({
    [`judging: ${what}`]: forged(WHOLE, change),
  });
  const event = (content: Content, type: string) =>
    content.entries.find((entry: Content) => entry.event.type === type).event;
  return variants(
    {
      ...one('another peak', (c) => (event(c, 'pull-detected').peakNm += 0.1)),
      ...one('another verdict, also in the summary', (c) => {
        event(c, 'pull-placed').judgement.value += 0.1;
        c.summary.cylinders[0].torque.judgement.value += 0.1;
      }),
      ...one('another scale of the wrench', (c) => {
        for (const { event: linked } of c.entries)
          if (linked.type === 'tool-linked' && linked.tool === 'wrench') linked.description.exponent = -3;
      }),
      ...one('a wider window', (c) => (c.entries[0].event.torqueWindow.acceptUpper = 29.9)),
      ...one('a smaller uncertainty in a budget', (c) => (c.budgets[0].expanded /= 2)),
      ...one('an attempt more in the summary', (c) => (c.summary.cylinders[0].torque.attempts = 2)),
      ...one('samples of nothing', (c) => {
        const { event: readings } = c.entries.find((entry: Content) => entry.event.type === 'readings');
        const zeros = Buffer.alloc(readings.count).toString('base64');
        readings.counts = zeros;
      }),
    },
    'judging',
  );
};

/** All of them, each under a name of its own. */
export const hostileRecords = (): readonly Variant[] => [
  ...bits(),
  ...writing(),
  ...noRecord(),
  ...headers(),
  ...signatures(),
  ...weakKeys(),
  ...json(),
  ...form(),
  ...texts(),
  ...log(),
  ...background(),
  ...contents(),
  ...clock(),
  ...judging(),
];

function shifted(entries: Content, name: 'seq' | 'n'): void {
  for (const entry of entries) entry[name] += 1;
}
