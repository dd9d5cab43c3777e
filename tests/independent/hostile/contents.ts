/** Entries that contradict one another or the clock, and such as only judging again finds. */
import { encodeSamples } from '../../../src/pull/trace.ts';
import { type Content, type Forging, forged } from './forged.ts';
import { WHOLE } from './valid.ts';
import { disclosures, variants } from './variant.ts';

const entryOf = (content: Content, type: string) =>
  content.entries.find(({ event }: Content) => event.type === type);

/** In the opening and in the background alike. */
function setSerial(content: Content, serial: string): void {
  for (const one of content.entries[0].event.instruments) one.serial = serial;
  for (const { event } of content.background)
    if (event.type === 'instrument-recorded') event.instrument.serial = serial;
}

/** The same with digests of texts that nobody knows. */
const withOtherDigests = (event: Content): Content =>
  JSON.parse(
    JSON.stringify(event)
      .replaceAll('"_sd":["', '"_sd":["A')
      .replaceAll(/("_sd":\["A.{42})./g, '$1'),
  );

export const contents = () => {
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
      ...one('opened on another day than its certificates were looked at', (c) => {
        c.entries[0].event.basis.on = '2026-03-01';
      }),
      ...one('a specification that the station never recorded', (c) => {
        c.entries[0].event.order.specification.torque = '25-31 N·m';
      }),
      ...one('an entry of the program by the technician', (c) => {
        entryOf(c, 'session-started').by = 'technician';
      }),
      ...one('an entry of the technician by the program', (c) => (c.entries.at(-1).by = 'station')),
      ...one('an entry of the program by a name that is withheld', (c) => {
        entryOf(c, 'session-started').by = { _sd: ['A'.repeat(43)] };
      }),
      ...one('a tool that the order does not have', (c) => {
        entryOf(c, 'tool-linked').event.tool = 'other';
      }),
      ...one('a tool that measures something else', (c) => {
        const { description } = entryOf(c, 'tool-linked').event;
        description.quantity = description.quantity === 'torque' ? 'length' : 'torque';
      }),
      ...one('a tool of another serial number over the air', (c) => {
        setSerial(c, 'S-1');
        const { description } = entryOf(c, 'tool-linked').event;
        Object.assign(description, { serial: 'S-2' });
        description.link.kind = 'bluetooth-le';
      }),
      ...one('a step of figures beside the samples', (c) => (readings(c)[0].event.exponent = -2)),
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

export const clock = () => {
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
      ...one('a reading from after it was written', (c) => {
        const measured = entryOf(c, 'gap-measured');
        measured.event.atUs = measured.monoUs + 1;
      }),
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
        ...one('dated back by three hours', (c) => from(c, 1, -3 * 3600)),
      },
      'authentic',
    ),
  ];
};

/** Well formed, logged and signed, and not what the samples give. */
export const judging = () => {
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
