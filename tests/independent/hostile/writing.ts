/** Files in another writing, cut, damaged, swollen, or no record at all; and content that says two things at once. */
import { fileOf } from '../../evidence/forge.ts';
import { contentOf, signedText } from './forged.ts';
import { WHOLE } from './valid.ts';
import { disclosures, first, jws, second, signed, text, variants } from './variant.ts';

function flipped(bytes: Buffer, bit: number): Buffer {
  const copy = Buffer.from(bytes);
  copy[bit >> 3] = (copy[bit >> 3] ?? 0) ^ (1 << (bit & 7));
  return copy;
}

/** One bit of the payload, of a header, of a signature, of a disclosure, and of the ends. */
export const bits = () => {
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

export const writing = () =>
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

export const noRecord = () =>
  variants(
    {
      nothing: '',
      'plain text': 'torque 27 N·m',
      'another JSON': '{"form":"plugmark/work-order/1"}\n',
      'a list': '[]\n',
      null: 'null',
      'a compact SD-JWT': `${[first.protected, jws.payload, first.signature].join('.')}~${disclosures.join('~')}~`,
      'a compact SD-JWT without its last tilde': `${[first.protected, jws.payload, first.signature].join('.')}~${disclosures.join('~')}`,
      'a compact JWS': 'eyJhbGciOiJFZERTQSJ9.e30.AAAA',
      'a byte order mark before a record': `\uFEFF${text}`,
      'brackets without end': '['.repeat(1 << 20),
      'a name twice, in another writing': text.replace('{"payload":"', '{ "payload":"","payload":"'),
    },
    'unreadable',
  );

/** Signed content with something else in the place of a piece of its text. */
const rewritten = (from: string | RegExp, to: string) => {
  const changed = signed.replace(from, to);
  if (changed === signed) throw new Error(`nothing to replace: ${from}`);
  return signedText(changed, { disclosures });
};

export const json = () =>
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
