import { canonical } from '../../../src/evidence/canonical.ts';
import { digestOf, disclosureOf } from '../../../src/evidence/disclosures.ts';
import { disclosuresIn, withDisclosures } from '../../../src/evidence/jws.ts';
import { toBase64url } from '../../../src/evidence/platform/bytes.ts';
import { fileOf, jwsOf } from '../../evidence/forge.ts';
import { logOf, seal, wholeJob } from '../../evidence/sample-job.ts';
import { type Content, contentOf, forged } from './forged.ts';
import { WHOLE } from './valid.ts';
import { disclosures, first, jws, second, variants } from './variant.ts';

/** Most are about the plate of the job. */
export const texts = () => {
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
      ...concealed('a digest twice in one list', (c) => vehicle(c).plate._sd.push(plateOf)),
      ...concealed(
        'a hidden element of a list',
        (c) => c.budgets.push({ '...': digestOf(raw([salt, 'EX 200'])) }),
        [...disclosures, raw([salt, 'EX 200'])],
      ),
      ...concealed(
        'a hidden element of a list, its disclosure with a name',
        (c) => c.budgets.push({ '...': digestOf(extra) }),
        [...disclosures, extra],
      ),
      ...concealed(
        'a hidden element of a list with a member more',
        (c) => c.budgets.push({ '...': digestOf(extra), n: 1 }),
        [...disclosures, extra],
      ),
      ...concealed('a plate in the open', (c) => (vehicle(c).plate = 'EX 100'), others),
      ...concealed(
        'a verdict that is concealed',
        (c) => (placed(c).judgement.result = { _sd: [digestOf(disclosureOf(salt, 'OK'))] }),
        [...disclosures, disclosureOf(salt, 'OK')],
      ),
      ...concealed(
        'by whom an entry is, though it is no name',
        (c) => (c.entries[1].by = { _sd: [digestOf(disclosureOf(salt, 'technician'))] }),
        [...disclosures, disclosureOf(salt, 'technician')],
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
