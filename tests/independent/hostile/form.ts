/** Content that the form does not allow. */
import { kidOf, stranger } from '../../evidence/sample-job.ts';
import { type Content, type Forging, forged } from './forged.ts';
import { WHOLE } from './valid.ts';
import { variants } from './variant.ts';

/** What the form does not allow, however well signed and logged. */
export const form = () => {
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
