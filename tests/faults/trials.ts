/** Faults that take a scene of their own, a few of each. */
import { spawnSync } from 'node:child_process';
import { existsSync, mkdirSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { openStationLog } from '../../db/log.ts';
import type { Random } from '../../sim/random.ts';
import { acknowledgedIn, gapsIn, heldAgainst, isNoLog } from './log-facts.ts';
import { BIN, HERE, manners, type Outcome, type Part, pauseMs, pick, ran, started, whole } from './part.ts';
import { typedStation } from './typed-station.ts';

type Trial = (random: Random, folder: string) => Promise<Outcome>;

export const trials: Part = {
  name: 'trials',
  what: 'disk errors, closed terminals, read-only disks, few files, a stopped machine, hostile names',
  cases: 72,
  short: 9,
  prepare: () => ({
    one: (number, random, folder) => pick(random, [ALL[number % ALL.length] ?? diskError])(random, folder),
  }),
};

/** The disk refuses a write or an fsync, once or from then on. */
async function diskError(random: Random, folder: string): Promise<Outcome> {
  const path = join(folder, 'station.db');
  const [call, error] = pick(random, [
    ['fsync', 'EIO'],
    ['fdatasync', 'EIO'],
    ['pwrite64', 'EIO'],
    ['pwrite64', 'ENOSPC'],
    ['ftruncate', 'EIO'],
  ] as const);
  const when = `${whole(random, 1, 40)}${random.chance(0.5) ? '+' : ''}`;
  const strace = [
    '-o',
    join(folder, 'strace'),
    '-e',
    `trace=${call}`,
    '-e',
    `inject=${call}:error=${error}:when=${when}`,
  ];
  const writer = [join(HERE, 'writer.mjs'), path, 'E', '0', '200'];
  const ended = await started('strace', [...strace, process.execPath, ...writer], {
    patienceMs: 60_000,
  }).ended.catch(() => null);
  if (ended === null) return { faults: [], skipped: 'strace is not there' };
  const acknowledged = acknowledgedIn(ended.out);
  const after = await heldAgainst(path, 'E', acknowledged);
  // Before the first acknowledgement there need not be a log.
  const isEarly = acknowledged === 0 && isNoLog(path);
  return {
    faults: [
      ...manners(ended).map((fault) => `${call} ${error} ${when}: ${fault}: ${ended.err.slice(0, 300)}`),
      ...(isEarly ? [] : after.faults.map((fault) => `${call} ${error} ${when}: ${fault}`)),
    ],
    counted: { acknowledged },
  };
}

/** Somebody closes the window of the terminal in the middle of a job on the live screen. */
async function closedTerminal(random: Random, folder: string): Promise<Outcome> {
  if (spawnSync('tmux', ['-V']).status !== 0) return { faults: [], skipped: 'tmux is not there' };
  const { station, order } = typedStation(folder);
  const socket = join(folder, 'tmux');
  const tmux = (...words: string[]) => spawnSync('tmux', ['-S', socket, ...words], { encoding: 'utf8' });
  const pidFile = join(folder, 'pid');
  const line = `'${process.execPath}' '${BIN}' job --order '${order}' --station '${station}' 2> '${join(folder, 'err')}' & echo $! > '${pidFile}'; fg`;
  tmux('-f', '/dev/null', 'new-session', '-d', '-x', '100', '-y', '30', 'bash', '-i');
  tmux('send-keys', `set -m; ${line}`, 'Enter');
  const seen = () => tmux('capture-pane', '-p').stdout;
  for (let i = 0; i < 600 && !seen().includes('entries on disk'); i++) await pauseMs(100);
  const isThere = seen().includes('entries on disk');
  tmux('send-keys', '0.75', 'Enter');
  await pauseMs(random.uniform(0, 600));
  const wasShown = /cylinder 1 .*0\.750/.test(seen());
  const pid = Number(existsSync(pidFile) ? readFileSync(pidFile, 'utf8') : 0);
  tmux('kill-server');
  let gone = false;
  for (let i = 0; i < 100 && !gone; i++) {
    await pauseMs(100);
    gone = pid > 0 && !existsSync(`/proc/${pid}`);
  }
  const path = join(folder, 'data', 'station.db');
  const log = await openStationLog(path);
  const fault = log.check();
  log.close();
  const isLost = wasShown && (await gapsIn(path)) === 0;
  return {
    faults: [
      ...(isLost ? ['a verdict was shown and is not in the log'] : []),
      ...(isThere ? [] : ['the screen never came']),
      ...(gone ? [] : ['the program goes on without a terminal']),
      ...(fault === null ? [] : [`the log: ${fault.message}`]),
    ],
  };
}

/** The file system turns out to be read-only. */
async function readOnly(_random: Random, folder: string): Promise<Outcome> {
  const disk = join(folder, 'disk');
  mkdirSync(disk);
  if (spawnSync('mount', ['-t', 'tmpfs', 'tmpfs', disk]).status !== 0)
    return { faults: [], skipped: 'nothing can be mounted here (root is needed)' };
  try {
    const { station, order } = typedStation(disk);
    const first = started(process.execPath, [BIN, 'job', '--order', order, '--station', station, '--plain']);
    await first.says('gauge  linked');
    first.kill('SIGINT');
    await first.ended;
    spawnSync('mount', ['-o', 'remount,ro', disk]);
    const faults: string[] = [];
    const words: readonly (readonly string[])[] = [
      ['job', '--resume', '--station', station, '--plain'],
      ['jobs', '--station', station],
      ['log', 'check', '--station', station],
      ['keys', 'rotate', '--station', station],
      ['doctor', '--station', station],
      ['ask', '--station', station],
    ];
    for (const argv of words) faults.push(...manners(await ran(argv)).map((fault) => `${argv[0]}: ${fault}`));
    return { faults };
  } finally {
    spawnSync('umount', ['-l', disk]);
  }
}

/** So few files may be open that something fails: which, nobody knows, but it is a sentence. */
async function fewFiles(random: Random, folder: string): Promise<Outcome> {
  const { station } = typedStation(folder);
  const limit = whole(random, 20, 64);
  const argv = pick(random, [
    ['doctor', '--station', station],
    ['jobs', '--station', station],
    ['demo', '--fast', '--direct', '--cylinders', '4', '--out', join(folder, 'demo')],
  ]);
  const line = `ulimit -n ${limit}; exec "$0" "$@"`;
  const ended = await started('bash', ['-c', line, process.execPath, BIN, ...argv], { patienceMs: 60_000 })
    .ended;
  // Node itself may not come up.
  const faults = ended.code === 134 || ended.signal === 'SIGABRT' ? [] : manners(ended);
  return {
    faults: faults.map((fault) => `${limit} files, ${argv[0]}: ${fault}: ${ended.err.slice(0, 200)}`),
  };
}

/** The machine stands still for a while, as in a suspend, and goes on. */
async function stopped(random: Random, folder: string): Promise<Outcome> {
  const { station, order } = typedStation(folder);
  const job = started(process.execPath, [BIN, 'job', '--order', order, '--station', station, '--plain'], {
    patienceMs: 30_000,
  });
  await job.says('gauge  linked');
  job.type('0.75 mm');
  await pauseMs(random.uniform(0, 200));
  job.kill('SIGSTOP');
  await pauseMs(random.uniform(500, 4000));
  job.kill('SIGCONT');
  job.type('0.76 mm');
  await Promise.race([job.says('cylinder 2  gap'), pauseMs(8000)]);
  job.kill('SIGINT');
  const ended = await job.ended;
  return {
    faults: [
      ...manners(ended),
      ...(ended.out.includes('cylinder 2  gap') ? [] : ['it did not go on']),
      ...(ended.code === 5 ? [] : [`it ended with ${ended.code}: ${ended.err}`]),
    ],
  };
}

/** Names from outside that steer terminals, turn lines round, or would be a formula. */
async function hostileNames(_random: Random, folder: string): Promise<Outcome> {
  const name = '=HYPERLINK("x")\u202eevil\u001b[2J<b>&amp;\u0301\u0301\u0301\u0301';
  const { station, order } = typedStation(folder, {
    technician: name.slice(0, 40),
    vehicle: { plate: name.slice(0, 20), description: name },
  });
  const job = started(process.execPath, [BIN, 'job', '--order', order, '--station', station, '--plain'], {
    patienceMs: 30_000,
  });
  await Promise.race([job.says('gauge  linked'), pauseMs(8000)]);
  for (const line of ['0.75 mm', '0.75 mm', '0.75 mm', '0.75 mm', 's', 'y', '']) job.type(line);
  await pauseMs(1500);
  job.kill('SIGINT');
  const ended = await job.ended;
  const faults = [...manners(ended)];
  if (/[\u202a-\u202e\u2066-\u2069]/.test(ended.out)) faults.push('what turns a line round is in the output');
  const data = join(folder, 'data');
  for (const file of existsSync(data) ? readdirSync(data) : []) {
    if (!file.endsWith('.csv')) continue;
    if (/(^|,)"?=/m.test(readFileSync(join(data, file), 'utf8'))) faults.push('a formula in the CSV');
  }
  for (const argv of [['jobs'], ['ask', '--csv'], ['keys', 'list']]) {
    const shown = await ran([...argv, '--station', station]);
    faults.push(...manners(shown));
    if (/[\u202a-\u202e]/.test(shown.out)) faults.push(`${argv[0]}: what turns a line round`);
  }
  return { faults };
}

/** A passphrase is asked for, or comes from the environment: it is in no output, no file and no command line of a child. */
async function secrets(_random: Random, folder: string): Promise<Outcome> {
  const secret = 'correct-horse-battery-9';
  const { station, order } = typedStation(folder);
  const env = { PLUGMARK_PASSPHRASE: secret };
  const job = started(process.execPath, [BIN, 'job', '--order', order, '--station', station, '--plain'], {
    env,
  });
  await job.says('gauge  linked');
  const commandLine = readFileSync(`/proc/${job.pid}/cmdline`, 'utf8');
  job.kill('SIGINT');
  const ended = await job.ended;
  const faults = [...manners(ended)];
  const wrong = await ran(['log', 'checkpoint', '--station', station], {
    env: { PLUGMARK_PASSPHRASE: `${secret}x` },
  });
  if (wrong.code !== 2) faults.push(`a wrong passphrase ends with ${wrong.code}`);
  const files = readdirSync(folder, { recursive: true, withFileTypes: true }).filter((one) => one.isFile());
  for (const one of files)
    if (readFileSync(join(one.parentPath, one.name)).includes(secret))
      faults.push(`the passphrase is in ${one.name}`);
  for (const text of [ended.out, ended.err, wrong.out, wrong.err, commandLine])
    if (text.includes(secret)) faults.push('the passphrase is in an output or a command line');
  return { faults };
}

/** An impact assessment is made while a job is open with the same tool. */
async function besideImpact(_random: Random, folder: string): Promise<Outcome> {
  const { station, order } = typedStation(folder);
  const job = started(process.execPath, [BIN, 'job', '--order', order, '--station', station, '--plain'], {
    patienceMs: 60_000,
  });
  await job.says('gauge  linked');
  const faults: string[] = [];
  for (let i = 1; i <= 4; i++) {
    job.type(`0.7${i} mm`);
    const other = await ran(
      pick(_random, [
        ['impact', 'list', '--station', station],
        ['retention', '--station', station],
        ['calendar', '--station', station],
        ['drift', 'wrench', '--station', station],
      ]),
    );
    faults.push(...manners(other));
  }
  await Promise.race([job.says('cylinder 4  gap'), pauseMs(8000)]);
  job.kill('SIGINT');
  const ended = await job.ended;
  faults.push(...manners(ended));
  if (ended.code !== 5) faults.push(`the job ended with ${ended.code}: ${ended.err}`);
  return { faults };
}

const ALL: readonly Trial[] = [
  diskError,
  closedTerminal,
  readOnly,
  fewFiles,
  stopped,
  hostileNames,
  secrets,
  besideImpact,
  diskError,
];
