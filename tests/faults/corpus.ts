/** Whole inputs of every kind that the program reads, and the commands that read them. */
import { cpSync, existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { exampleFile } from '../../src/files/input.ts';
import { BIN, ran, started } from './part.ts';
import { typedStation } from './typed-station.ts';

export interface Input {
  readonly what: string;
  readonly bytes: Buffer;
  /** Name of the mutated file in the folder of the case. */
  readonly file: string;
  /** Files beside it, which stay as they are. */
  readonly beside?: readonly (readonly [name: string, bytes: Buffer])[];
  readonly argv: (file: string, folder: string) => readonly string[];
  /** Which words of an answer may not come of a changed file. */
  readonly never?: RegExp;
}

const example = (name: string) => readFileSync(exampleFile(name));

/** A station with a closed demo job, a job left open, a backup and a package, made once. */
export async function corpusIn(
  folder: string,
): Promise<{ readonly inputs: readonly Input[]; readonly data: string }> {
  const demo = join(folder, 'demo');
  await must(['demo', '--fast', '--direct', '--cylinders', '4', '--out', demo]);
  const note = join(folder, 'note');
  await must(['log', 'checkpoint', '--data', demo, '--out', note]);
  const bundle = join(folder, 'package');
  await must(['package', '--data', demo, '--out', bundle]);
  const record = readdirSync(demo).find((name) => name.endsWith('.record.json')) ?? '';
  const trust = readFileSync(join(demo, 'trusted-keys.json'));
  const recordBytes = readFileSync(join(demo, record));
  const { station, order } = typedStation(folder);
  const opened = started(process.execPath, [BIN, 'job', '--order', order, '--station', station, '--plain']);
  await opened.says('gauge  linked');
  opened.kill('SIGINT');
  await opened.ended;
  const data = join(folder, 'data');
  const csv = Buffer.from(
    `time_s,torque_Nm\n${Array.from({ length: 300 }, (_, i) => `${i / 100},${i < 150 ? i / 6 : 0}`).join('\n')}\n`,
  );
  const profile = example('profile-wrench.json');
  const json = JSON.stringify;
  const index = readdirSync(bundle).find((name) => name.endsWith('.json') && name.includes('index')) ?? '';
  const packed = readdirSync(bundle, { recursive: true, withFileTypes: true })
    .filter((one) => one.isFile())
    .map((one) => join(one.parentPath, one.name).slice(bundle.length + 1));
  const inPackage = (name: string): Input => ({
    what: `package: ${name.replace(/\d+/g, 'N')}`,
    bytes: readFileSync(join(bundle, name)),
    file: join('package', name),
    beside: packed
      .filter((other) => other !== name)
      .map((other) => [join('package', other), readFileSync(join(bundle, other))] as const),
    argv: (_file, own) => ['verify', join(own, 'package'), '--trust', join(demo, 'trusted-keys.json')],
  });
  const inputs: Input[] = [
    {
      what: 'record, verified',
      bytes: recordBytes,
      file: 'r.record.json',
      argv: (file) => ['verify', file, '--trust', join(demo, 'trusted-keys.json')],
      never: /^(Authentic|AUTHENTIC)/m,
    },
    {
      what: 'record, printed',
      bytes: recordBytes,
      file: 'r.record.json',
      argv: (file, own) => [
        'paper',
        file,
        '--trust',
        join(demo, 'trusted-keys.json'),
        '--out',
        join(own, 'out'),
      ],
    },
    {
      what: 'record, shared',
      bytes: recordBytes,
      file: 'r.record.json',
      argv: (file) => ['share', file, '--without', 'plate'],
    },
    {
      what: 'record, for recovery',
      bytes: recordBytes,
      file: 'r/r.record.json',
      argv: (_f, own) => [
        'recover',
        '--records',
        join(own, 'r'),
        '--data',
        demo,
        '--out',
        join(own, 'new.db'),
      ],
    },
    {
      what: 'trust list',
      bytes: trust,
      file: 'trust.json',
      argv: (file) => ['verify', join(demo, record), '--trust', file],
    },
    {
      what: 'checkpoint',
      bytes: readFileSync(note),
      file: 'note',
      argv: (file) => ['log', 'check', file, '--data', demo],
    },
    {
      what: 'station file',
      bytes: readFileSync(station),
      file: 'station.json',
      argv: (file) => ['jobs', '--station', file],
    },
    {
      what: 'station file, doctor',
      bytes: example('station-calibrated.json'),
      file: 'station.json',
      beside: [
        ['wrench.dcc.xml', example('wrench.dcc.xml')],
        ['gauge-certificate.json', example('gauge-certificate.json')],
      ],
      argv: (file) => ['specifications', 'check', '--station', file],
    },
    {
      what: 'work order',
      bytes: readFileSync(order),
      file: 'order.json',
      argv: (file) => ['window', '--order', file, '--station', station],
    },
    {
      what: 'work order, 8 cylinders',
      bytes: example('order-8.json'),
      file: 'order.json',
      argv: (file) => [
        'specifications',
        'add',
        '--order',
        file,
        '--data',
        data,
        '--name',
        'A name that is there',
      ],
    },
    {
      what: 'calibration certificate, XML',
      bytes: example('wrench.dcc.xml'),
      file: 'wrench.dcc.xml',
      argv: (file) => ['certificates', 'keep', file, '--data', data],
    },
    {
      what: 'calibration certificate',
      bytes: example('gauge-certificate.json'),
      file: 'c.json',
      argv: (file) => ['certificates', 'keep', file, '--data', data],
    },
    {
      what: 'profile',
      bytes: profile,
      file: 'p.json',
      argv: (file) => ['driver', 'check', file, '--hex', '00000000'],
    },
    {
      what: 'profile of a gauge',
      bytes: example('profile-gauge.json'),
      file: 'p.json',
      argv: (file) => ['driver', 'check', file, '--hex', '01020304'],
    },
    { what: 'trace', bytes: csv, file: 't.csv', argv: (file) => ['pulls', file] },
    {
      what: 'trace, replayed',
      bytes: csv,
      file: 't.csv',
      argv: (file, own) => ['replay', file, '--out', join(own, 'out'), '--plain'],
    },
    {
      what: 'log, restored',
      bytes: readFileSync(join(demo, 'station.db')),
      file: 'b.db',
      argv: (file, own) => ['restore', file, '--data', join(own, 'data')],
    },
    {
      what: 'log, checked',
      bytes: readFileSync(join(demo, 'station.db')),
      file: 'data/station.db',
      argv: (_file, own) => ['log', 'check', '--data', join(own, 'data')],
    },
    {
      what: 'log, asked',
      bytes: readFileSync(join(demo, 'station.db')),
      file: 'data/station.db',
      argv: (_file, own) => ['ask', '--data', join(own, 'data')],
    },
    {
      what: 'log, recovered',
      bytes: readFileSync(join(demo, 'station.db')),
      file: 'data/station.db',
      argv: (_file, own) => ['recover', '--data', join(own, 'data'), '--out', join(own, 'new.db')],
    },
    {
      what: 'routine',
      bytes: example('routine.json'),
      file: 'routine.json',
      beside: [
        [
          'station.json',
          Buffer.from(json({ ...JSON.parse(readFileSync(station, 'utf8')), routine: 'routine.json' })),
        ],
      ],
      argv: (_file, own) => ['jobs', '--station', join(own, 'station.json')],
    },
    {
      what: 'bonds',
      bytes: Buffer.from(json({ form: 'plugmark/bonds/1', bonds: {} })),
      file: 'bluetooth-bonds.json',
      argv: () => ['schema', 'bonds'],
    },
    ...(index === '' ? packed.slice(0, 1) : [index]).map(inPackage),
    ...packed
      .filter((name) => /record\.json$|\.csv$|\.txt$|entries/.test(name))
      .slice(0, 3)
      .map(inPackage),
  ];
  if (!existsSync(data)) throw new Error('the station has no data');
  mkdirSync(join(folder, 'spare'), { recursive: true });
  writeFileSync(join(folder, 'spare', 'note'), readFileSync(note));
  cpSync(data, join(folder, 'spare', 'data'), { recursive: true });
  return { inputs, data };
}

async function must(argv: readonly string[]): Promise<void> {
  const { code, err, out } = await ran(argv, { patienceMs: 120_000 });
  if (code !== 0) throw new Error(`${argv.join(' ')}: ${code} ${err}${out}`);
}
