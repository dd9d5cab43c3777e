import { describe, expect, it } from 'vitest';
import { reportLines } from '../../../src/cli/evidence/report-lines.ts';
import { verifyRecord } from '../../../src/evidence/verify.ts';
import { notProvenByAny, notProvenByRecord } from '../../../src/report/words/index.ts';
import { eventfulJob, eventfulStation } from '../../evidence/eventful-job.ts';
import { logOf, seal, station, trusting } from '../../evidence/sample-job.ts';

const file = seal(logOf(eventfulJob(), 'job:WO-1', eventfulStation));
const report = verifyRecord(file, trusting(station));

describe('what a record does not prove', () => {
  it('stands under its checks, and names the tools whose link nobody authenticated', () => {
    const lines = reportLines('x.record.json', report);
    const at = lines.indexOf('  NOT proven by this:');
    const listed = lines.slice(at + 1).map((line) => line.trim());
    expect(listed).toEqual(notProvenByRecord(report));
    expect(listed[0]).toContain('the link of wrench and gauge was not authenticated');
    expect(listed).toEqual(expect.arrayContaining([...notProvenByAny([])]));
    expect(listed.at(-1)).toContain('the clock of the station');
  });

  it.each([
    ['typed', 'what an instrument read: figures of wrench and gauge were typed'],
    ['replayed', 'anything that wrench and gauge would show: the readings came from a recording'],
    ['simulated', 'anything that wrench and gauge would show: there was no instrument'],
  ] as const)('says of %s figures where they came from, and nothing of a link', (source, line) => {
    const { record } = report;
    if (record === null) throw new Error('no record');
    const entries = record.entries.map((entry) =>
      entry.event.type === 'tool-linked' ? { ...entry, event: { ...entry.event, source } } : entry,
    );
    const lines = notProvenByRecord({ ...report, record: { ...record, entries } });
    expect(lines[0]).toBe(line);
    expect(lines.join(' ')).not.toContain('not authenticated');
  });

  it('says that the limits of a single figure are the rule of the shop, not of the maker', () => {
    const { record } = report;
    if (record === null) throw new Error('no record');
    const singleFigure = { percent: 10, setBy: 'B. Boss', basis: 'house rule' };
    const linesOf = (figures: object) => {
      const entries = record.entries.map((entry) => {
        const { event } = entry;
        if (event.type !== 'job-opened') return entry;
        const specification = { ...event.order.specification, ...figures };
        return { ...entry, event: { ...event, order: { ...event.order, specification } } };
      });
      return notProvenByRecord({ ...report, record: { ...record, entries } });
    };
    const line =
      "that the maker allows the torque limits: the source prints 28 N·m alone, and plus/minus 10 % is the SHOP'S own rule";
    expect(linesOf({ torque: '28 N·m', singleFigure })).toContain(line);
    expect(linesOf({ torque: '25-30 N·m', singleFigure })).toEqual(notProvenByRecord(report));
  });

  it('is not listed where nothing of it may be relied on', () => {
    const tampered = verifyRecord(Buffer.from(String(file).replace('"signature":"', '"signature":"A')), {
      keys: [],
    });
    expect(tampered.verdict).toBe('rejected');
    expect(notProvenByRecord(tampered)).toEqual([]);
  });

  it('leaves the times out where a time stamp tells when it was sealed', () => {
    const stamped = { before: '2026-03-03T00:00:00Z', detail: () => 'Sealed before that.' };
    const lines = notProvenByRecord(verifyRecord(file, trusting(station), stamped));
    expect(lines.at(-1)).toContain('The time stamp proves by when it was sealed');
  });
});
