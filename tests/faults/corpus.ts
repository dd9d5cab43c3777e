/** Whole inputs of every kind that the program reads, and the commands that read them. */
import { cpSync, existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { captureWriter } from '../../drivers/replay/capture-writer.ts';
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
  const key = join(folder, 'key.pem');
  await must(['keys', 'make', key, '--name', 'Example Foreman']);
  const vkey = (await must(['log', 'vkey', '--data', demo])).trim();
  const bundle = join(folder, 'package');
  await must(['package', '--data', demo, '--out', bundle]);
  const record = readdirSync(demo).find((name) => name.endsWith('.record.json')) ?? '';
  const paper = readdirSync(demo).find((name) => name.endsWith('.pdf')) ?? '';
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
  const exampleStation = JSON.parse(example('station.json').toString());
  const adopted = exampleStation.tools.map((tool: object, i: number) => ({
    ...tool,
    driver: { use: 'imds', address: `c2:00:00:00:00:0${i + 1}` },
  }));
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
      argv: (file) => ['driver', 'check', file, '--bytes', 'a501000000640064ff9c8000'],
    },
    {
      what: 'profile of a gauge',
      bytes: example('profile-gauge.json'),
      file: 'p.json',
      argv: (file) => ['driver', 'check', file, '--bytes', '01020304'],
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
      beside: [['data/a-folder-that-is-there', Buffer.alloc(0)]],
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
      bytes: Buffer.from(
        json({
          form: 'plugmark/bonds/1',
          bonds: {
            'c2:00:00:00:00:01': { key: '0f'.repeat(16), diversifier: '1234', random: '0'.repeat(16) },
          },
        }),
      ),
      file: 'bluetooth-bonds.json',
      beside: [
        ['station.json', Buffer.from(json({ ...exampleStation, tools: adopted }))],
        ['order.json', readFileSync(order)],
      ],
      // Opens the adapter with them; there is none behind the name of the air.
      argv: (_file, own) => [
        'job',
        '--plain',
        '--order',
        join(own, 'order.json'),
        '--station',
        join(own, 'station.json'),
      ],
    },
    {
      what: 'record, shown',
      bytes: recordBytes,
      file: 'r.record.json',
      argv: (file) => ['show', file, '--plain', '--trust', join(demo, 'trusted-keys.json')],
    },
    {
      what: 'record, results',
      bytes: recordBytes,
      file: 'r.record.json',
      argv: (file) => ['results', file, '--trust', join(demo, 'trusted-keys.json')],
    },
    {
      what: 'record, as a page',
      bytes: recordBytes,
      file: 'r.record.json',
      argv: (file, own) => ['page', file, '--out', join(own, 'r.html')],
    },
    {
      what: 'record, countersigned',
      bytes: recordBytes,
      file: 'r.record.json',
      argv: (file) => ['countersign', file, '--key', key],
    },
    {
      what: 'key of a person',
      bytes: readFileSync(key),
      file: 'key.pem',
      beside: [['r.record.json', recordBytes]],
      argv: (file, own) => ['countersign', join(own, 'r.record.json'), '--key', file],
    },
    {
      what: 'paper with its record',
      bytes: readFileSync(join(demo, paper)),
      file: 'r.pdf',
      argv: (file) => ['verify', file, '--trust', join(demo, 'trusted-keys.json')],
    },
    {
      what: 'trust list, to show by',
      bytes: trust,
      file: 'trust.json',
      argv: (file) => ['show', join(demo, record), '--plain', '--trust', file],
    },
    {
      what: 'trust list, to recover by',
      bytes: trust,
      file: 'trust.json',
      argv: (file, own) => [
        ...['recover', '--records', demo, '--data', demo, '--trust', file],
        ...['--out', join(own, 'new.db')],
      ],
    },
    {
      what: 'policy',
      bytes: Buffer.from(`log ${vkey}\nquorum none\n`),
      file: 'insurer.policy',
      argv: (file) => ['verify', join(demo, record), '--policy', file],
    },
    {
      what: 'checkpoint, proven',
      bytes: readFileSync(note),
      file: 'note',
      argv: (file) => ['log', 'prove', 'consistency', file, '--data', demo],
    },
    {
      what: 'certificate, as found',
      bytes: example('gauge-certificate.json'),
      file: 'c.json',
      argv: (file, own) => [
        ...['impact', 'assess', 'gauge', '--as-found', file, '--by', 'Example', '--data', demo],
        ...['--out', join(own, 'out')],
      ],
    },
    {
      what: 'capture',
      bytes: capture(0),
      file: 'rest.jsonl',
      beside: [1, 2, 3, 4].map((i) => [`${i}.jsonl`, capture(500 * i)] as const),
      argv: (file, own) => [
        ...['driver', 'teach', '--unit', 'N.m', '--step', '0.01', '--rest', file],
        ...[1, 2, 3].flatMap((i) => ['--figure', `${5 * i}=${join(own, `${i}.jsonl`)}`]),
        ...['--proof', `2.5=${join(own, '4.jsonl')}`, '--out', join(own, 'my.profile.json')],
      ],
    },
    {
      what: 'scenario',
      bytes: example('scenario.json'),
      file: 'scenario.json',
      // Without the profile beside it nothing is served, and the program ends.
      argv: (file) => ['sim', 'serve', file],
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

/** What a device might have sent, as "devices record" writes it. */
function capture(figure: number): Buffer {
  const of = { service: '185a', uuid: '2c0b', properties: ['notify'] };
  let text = '';
  const writer = captureWriter({ address: 'c0:00:00:00:00:31', characteristics: [of] }, (line) => {
    text += line;
  });
  for (let i = 0; i < 40; i++) {
    const packet = Buffer.alloc(4);
    packet.writeInt32LE(figure + (i % 3));
    writer.packet(of, packet, 20_000 * i);
  }
  writer.end();
  return Buffer.from(text);
}

async function must(argv: readonly string[]): Promise<string> {
  const { code, err, out } = await ran(argv, { patienceMs: 120_000 });
  if (code !== 0) throw new Error(`${argv.join(' ')}: ${code} ${err}${out}`);
  return out;
}
