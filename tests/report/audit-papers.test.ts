import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { beforeAll, describe, expect, it } from 'vitest';
import { judgeAgain } from '../../src/audit/impact.ts';
import { assess } from '../../src/audit/impact-items.ts';
import { impactsOf } from '../../src/audit/impact-state.ts';
import { openStationFolder } from '../../src/cli/station/station.ts';
import type { LogEntry, StationEntry } from '../../src/evidence/log.ts';
import type { StationEvent } from '../../src/evidence/station-event.ts';
import { foldAll } from '../../src/job/fold.ts';
import { disputePaper } from '../../src/report/dispute.ts';

import { judgedAgainCsv } from '../../src/report/impact-csv.ts';
import { impactPaper } from '../../src/report/impact-paper.ts';
import type { Paper, Part } from '../../src/report/paper.ts';
import { writePaper } from '../../src/report/paper-pdf.ts';
import { paperLines } from '../../src/report/paper-text.ts';
import { inLanguage } from '../../src/words/catalogue.ts';
import { pullRow, setupsOf, setupWith } from '../audit/rows.ts';
import { CHECKED, certificate, workIn, wrenchWith } from '../audit/shop.ts';
import { PSEUDO, unspoken } from '../words/pseudo.ts';
import { hasPoppler, pages, poppler } from './poppler.ts';

const VAN = { vin: 'ZZ9EXAMP1PM000104', plate: 'EXAMPLE 4', description: '<van> & "crane"' };
const FOUND = certificate('AF-1', '2026-09-01', { error: -1.1 });

let jobs: readonly (readonly LogEntry[])[] = [];
let station: readonly StationEntry[] = [];
beforeAll(async () => {
  const folder = mkdtempSync(join(tmpdir(), 'plugmark-test-'));
  await workIn(folder, [
    { job: 'J-1', on: '2026-02-03', peaks: [27, 27, 27, 29.2], vehicle: VAN },
    { job: 'J-2', on: '2026-05-20', peaks: [27, 27, 27, 27], vehicle: VAN },
    {
      job: 'J-3',
      on: '2026-09-20',
      peaks: [27, 27, 27, 27],
      vehicle: VAN,
      wrench: wrenchWith(certificate('CAL-2', '2026-09-01')),
    },
  ]);
  const { log } = await openStationFolder(folder);
  jobs = log.streams().map((stream) => log.entries(stream));
  station = log.stationEntries();
  log.close();
  rmSync(folder, { recursive: true });
});

/** The station's entries with an impact assessment that touches J-1. */
function assessedEntries(...then: readonly StationEvent[]): readonly StationEntry[] {
  const digest = 'a'.repeat(64);
  const item = {
    job: 'J-1',
    on: '2026-02-03',
    vin: VAN.vin,
    plate: VAN.plate,
    fleet: null,
    sort: 'out' as const,
    attempts: [
      {
        cylinder: 4,
        quantity: 'torque' as const,
        number: 4,
        source: 'linked' as const,
        sort: 'out' as const,
        was: 29.23,
        value: 30.33,
        expanded: 0.3,
        lowerLimit: 25,
        upperLimit: 30,
        covered: true,
      },
    ],
  };
  const made: StationEvent = {
    type: 'assessment-made',
    assessment: 'IA-1',
    tool: 'wrench',
    serial: 'EXAMPLE-W-1',
    asFound: 'AF-1',
    digest,
    lastGood: { number: 'CAL-1', date: '2026-01-12' },
    foundOn: '2026-09-01',
    from: '2026-01-12',
    to: '2026-09-01',
    sources: ['linked'],
    attempts: 8,
    stillIn: 7,
    doubtful: 0,
    out: 1,
    items: [item],
  };
  const found: StationEvent = { type: 'as-found-recorded', tool: 'wrench', asFound: FOUND, digest };
  const last = station.at(-1);
  if (last === undefined) throw new Error('no station');
  const more = [found, made, ...then].map(
    (event, i): StationEntry => ({
      ...last,
      seq: 10_000 + i,
      n: last.n + 1 + i,
      at: `2026-10-02T10:0${i}:00.000Z`,
      by: 'Quality One',
      event,
    }),
  );
  return [...station, ...more];
}

const RECALL: StationEvent = {
  type: 'item-decided',
  assessment: 'IA-1',
  job: 'J-1',
  decision: 'recall',
  because: 'plug too tight',
};

const LOG = { size: 99, root: 'ab'.repeat(32) };
const context = { log: LOG, program: 'plugmark test' };

const impactIn = (entries: readonly StationEntry[]) => {
  const [one] = impactsOf(entries);
  if (one === undefined) throw new Error('no impact assessment');
  return one;
};
function linesOf(part: Part): readonly string[] {
  switch (part.kind) {
    case 'text':
      return part.paragraphs;
    case 'facts':
      return part.facts.map(({ label, value }) => `${label}: ${value}`);
    case 'table':
      return [part.note, ...part.rows.map((row) => row.map(({ text }) => text).join(' | '))];
    case 'chart':
      return [part.chart.words];
  }
}

/** Everything that a paper says, a line a row. */
const saidBy = (paper: Paper) =>
  [
    `${paper.status.word}. ${paper.status.text}`,
    ...paper.facts.map(({ label, value }) => `${label}: ${value}`),
    ...paper.parts.flatMap((part) => [
      `## ${part.kind === 'chart' ? part.chart.title : part.title}`,
      ...linesOf(part),
    ]),
  ].join('\n');

describe('the paper of an impact assessment', () => {
  it('names the clauses that ask for it, what was found beside the last check, and the vehicle', () => {
    const text = saidBy(impactPaper(impactIn(assessedEntries()), context));
    expect(text).toContain('ISO 9001:2015, 7.1.5.2');
    expect(text).toContain('IATF 16949, 7.1.5.2.1');
    expect(text).toContain('30.00 | 0.00 | 0.20 | -1.10 | 0.20 | MOVED');
    expect(text).toContain('J-1 | 2026-02-03 | ZZ9EXAMP1PM000104 | EXAMPLE 4 | OUT | 4 |  | NOT DECIDED');
    expect(text).toContain('J-1 | 4 | pull 4 | 29.23 | 30.33 | 0.30 | 25.00 to 30.00 N·m | OUT');
    expect(text).toContain(
      'PROOFS DO NOT HOLD. Of 8 proofs 7 still in, 0 doubtful, 1 out; 1 job touched, 1 open.',
    );
  });

  it('keeps a job open that is recalled, and shows each decision with its reason', () => {
    const called = saidBy(impactPaper(impactIn(assessedEntries(RECALL)), context));
    expect(called).toContain('RECALL, not redone yet');
    const done = assessedEntries(RECALL, {
      ...RECALL,
      decision: 'redone',
      redoneIn: 'J-2',
      because: 'new plug',
    });
    const text = saidBy(impactPaper(impactIn(done), context));
    expect(text).toContain('J-1 | recall | plug too tight | Quality One');
    expect(text).toContain('J-1 | redone in J-2 | new plug | Quality One');
    expect(text).toContain('0 open');
  });
});

describe('the list of every attempt', () => {
  it('has one row for each, judged again or not', () => {
    const setup = setupWith(wrenchWith(CHECKED));
    const rows = [
      pullRow(setup, 29.2),
      pullRow(setup, 12, { kind: 'run-down', result: null, valueSi: null, expanded: null, side: null }),
    ];
    const judged = judgeAgain(rows, { certificate: FOUND, setups: setupsOf(setup) });
    const { items, sorted } = assess(judged);
    expect(items).toHaveLength(1);
    const [head, first, second] = judgedAgainCsv(sorted).trim().split('\r\n');
    expect(head).toContain('Verdict then,Value with the error found');
    expect(first).toMatch(/,yes,CAL-1,.*,29\.2,0\.2\d*,OK,30\.3,0\.2\d*,NotOK,differs,\d\.?\d*,OUT,yes$/);
    expect(second).toMatch(/,no,CAL-1,.*,,yes$/);
  });

  it('sorts what jobs rest on and nothing else, so that its sorts add up to what the impact assessment counts', () => {
    const setup = setupWith(wrenchWith(CHECKED));
    const rows = [
      // Too tight then and with the found error; tried again on the same plug, and right.
      pullRow(setup, 31, { number: 1, last: false }),
      pullRow(setup, 27, { number: 2 }),
      // Right, until a re-hit behind it that in truth went above the window.
      pullRow(setup, 27, { number: 3, cylinder: 2 }),
      pullRow(setup, 29.2, { number: 4, cylinder: 2, kind: 'rehit', last: false, first: false }),
      // Never right.
      pullRow(setup, 31, { number: 5, cylinder: 3 }),
      // Right, and void with its job.
      pullRow(setup, 27, { stream: 'job:J-9', job: 'J-9', voided: true }),
    ];
    const { sorted, stillIn, doubtful, out } = assess(
      judgeAgain(rows, { certificate: FOUND, setups: setupsOf(setup) }),
    );
    const [head = '', ...lines] = judgedAgainCsv(sorted).trim().split('\r\n');
    // Some heads hold a comma, in quotation marks.
    const cells = (line: string) => line.split(/,(?=(?:[^"]*"[^"]*")*[^"]*$)/);
    const column = (name: string) => lines.map((line) => cells(line)[cells(head).indexOf(name)]);
    expect(column('Proof then')).toEqual(['no', 'yes', 'yes', 'no', 'no', 'no']);
    expect(column('Sort')).toEqual(['', 'STILL IN', 'SEE PULL 4', 'OUT', '', '']);
    expect(column('With both')).toEqual(['NotOK', 'OK', 'OK', 'differs', 'NotOK', 'OK']);
    expect([stillIn, doubtful, out]).toEqual([1, 0, 1]);
  });
});

describe('the file of a claim', () => {
  const paper = (entries = station, which = jobs) =>
    disputePaper({
      claim: 'W-17',
      jobs: which.map((own) => {
        const state = foldAll(own.map(({ event }) => event));
        if (state === null) throw new Error('no job');
        return { state, entries: own };
      }),
      station: { name: 'Example bay', entries, impacts: impactsOf(entries) },
      log: LOG,
      program: 'plugmark test',
      madeAt: '2026-11-25T12:00:00.000Z',
    });
  const since = (text: string, job: string) =>
    text.split('## ').find((part) => part.startsWith(`Job ${job}: what has been learned since`)) ?? '';

  it('says what was known on the day: figures with their source, and the calibration in force', () => {
    const text = saidBy(paper());
    expect(text).toContain('Torque as printed: 25-30 N·m, threads dry');
    expect(text).toContain('Source: Invented figures for trying the program.');
    expect(text).toContain('INVENTED SPECIFICATION');
    expect(text).toContain('wrench | EXAMPLE-W-1 | certificate CAL-1, Example Laboratory, 2026-01-12 |');
    expect(text).toContain('ALL PROOFS HOLD');
  });

  it('puts what was learned later beside it, and leaves the day as it was', () => {
    const text = saidBy(paper(assessedEntries(RECALL)));
    expect(text).toContain('PROOFS IN QUESTION');
    expect(text).toMatch(/4 \| OK \| 0\.750 .* \| 29\.2\d ± 0\.20 N·m OK/);
    expect(since(text, 'J-1')).toContain('cylinder 4 30.33 ± 0.30 N·m OUT');
    expect(since(text, 'J-1')).toContain('decided by Quality One: recall. plug too tight');
    expect(since(text, 'J-1')).toContain('Job J-2 was opened on the same vehicle');
    expect(since(text, 'J-1')).toContain('certificate CAL-2 of 2026-09-01');
    expect(since(text, 'J-2')).toContain('every proof of this job still holds');
  });

  it('lists the jobs once, and under each says which came next', () => {
    const text = saidBy(paper());
    const list = text.split('## ').find((part) => part.startsWith('The jobs on this vehicle')) ?? '';
    expect(list.match(/^J-\d \|/gm)).toEqual(['J-1 |', 'J-2 |', 'J-3 |']);
    expect(since(text, 'J-1')).toContain(
      'Job J-2 was opened on the same vehicle, and closed complete; 1 more followed, see "The jobs on this vehicle".',
    );
    expect(since(text, 'J-1')).not.toContain('Job J-3');
    expect(since(text, 'J-2')).toContain('Job J-3 was opened on the same vehicle, and closed complete.');
    expect(saidBy(paper(station, jobs.slice(0, 1)))).not.toContain('The jobs on this vehicle');
  });

  it('puts nothing in question that was measured under the newer certificate', () => {
    expect(since(saidBy(paper(assessedEntries())), 'J-3')).toContain('Nothing.');
  });

  it('says when a job was not completed', () => {
    const open = jobs.map((own) => own.filter(({ event }) => event.type !== 'job-closed'));
    expect(saidBy(paper(station, open))).toContain(
      'NOT ALL PROVEN. 3 jobs on this vehicle: 0 complete and proven, 3 not',
    );
  });

  it('is the same file, byte for byte, from the same log', async () => {
    const [first, second] = [await writePaper(() => paper()), await writePaper(() => paper())];
    expect(Buffer.from(first).equals(second)).toBe(true);
  });

  it.runIf(hasPoppler)('reads as it was written, in another program', async () => {
    const pdf = await writePaper(() => paper(assessedEntries(RECALL)));
    const text = poppler('pdftotext', pdf, ['-layout', '{pdf}', '-']);
    expect(text).toContain('File on a claim');
    expect(text).toContain('<van> & "crane"');
    expect(text).toContain(`Page ${pages(pdf)} of ${pages(pdf)}`);
    expect(poppler('pdfinfo', pdf, ['{pdf}'])).toMatch(/Tagged:\s+yes/);
  });
});

/** What the fixtures and the log have themselves: names, numbers, codes of clauses and of units. */
const FACTS: readonly (string | RegExp)[] = [
  // As the source prints them.
  /0\.7-0\.8|M14x1\.25/,
  /plugmark verify FOLDER --trust YOUR-LIST\.json|plugmark impact/,
  /ZZ9EXAMP1PM000104|EXAMPLE-W-1|EXAMPLE-[\w-]+|EXAMPLE 4|<van> & "crane"|[Ee]xample [\w ]+/,
  /\b(J|AF|CAL|IA)-\d+\b|N·m|mm|UTC|SHA-256|W-2026-17|\bU\b|VIN|OK\b/,
  /\b(wrench|gauge|station|technician|Technician|Quality|Foreman|One|Two)\b/,
  /\b[0-9a-f]{32,64}\b/,
  /plug too tight|[Ii]nvented figures for trying the program\. Not for any engine|invented/,
];

describe('a paper of the audit desk goes through the catalogue', () => {
  const wordsOf = (make: () => Paper) => [
    ...new Set(
      unspoken(
        inLanguage(PSEUDO, () => paperLines(make(), WIDE).join('\n')),
        FACTS,
      ),
    ),
  ];
  const WIDE = { columns: Number.POSITIVE_INFINITY, ascii: false };

  it('impact assessment', () => {
    expect(wordsOf(() => impactPaper(impactIn(assessedEntries(RECALL)), context))).toEqual([]);
  });

  it('file of a claim', () => {
    const input = {
      claim: 'W-2026-17',
      log: LOG,
      program: 'plugmark test',
      madeAt: '2026-11-01T09:00:00.000Z',
    };
    const entries = assessedEntries(RECALL);
    const all = jobs.map((one) => {
      const state = foldAll(one.map(({ event }) => event));
      if (state === null) throw new Error('no job');
      return { state, entries: one };
    });
    const made = () =>
      disputePaper({
        ...input,
        jobs: all,
        station: { name: 'EXAMPLE 4', entries, impacts: impactsOf(entries) },
      });
    expect(wordsOf(made)).toEqual([]);
  });
});
