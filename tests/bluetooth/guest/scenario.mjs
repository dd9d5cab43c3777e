// Runs in the guest: two peers on bluetoothd play a gauge and a wrench, and plugmark does a whole job over hci1.
import { execFileSync, spawn } from 'node:child_process';
import { copyFileSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { createInterface } from 'node:readline';
import { setTimeout as sleep } from 'node:timers/promises';

const project = process.cwd();
const tools = process.env.TOOLS;
const started = performance.now();
const say = (text) =>
  process.stdout.write(`${((performance.now() - started) / 1000).toFixed(2).padStart(7)} s  ${text}\n`);
let failures = 0;
const check = (what, good, detail = '') => {
  if (!good) failures += 1;
  say(`${good ? 'ok    ' : 'FAILED'} ${what}${detail === '' ? '' : `: ${detail}`}`);
};

/** What must not outlive its section: there is one adapter. */
const running = new Set();

/** A process whose lines can be waited for, those that came before included. */
function program(name, command, args, options = {}) {
  const child = spawn(command, args, { stdio: ['pipe', 'pipe', 'inherit'], ...options });
  if (name === 'plugmark') running.add(child);
  const lines = [];
  const waiting = new Set();
  createInterface({ input: child.stdout }).on('line', (line) => {
    if (process.env.SHOW !== '0') say(`        ${name}: ${line}`);
    lines.push(line);
    for (const look of [...waiting]) look();
  });
  const exit = new Promise((resolve) => child.once('close', resolve));
  let read = 0;
  /** The next line that `wanted` takes; what stood in front of it counts as read. */
  const line = (what, wanted, seconds = 30) =>
    new Promise((resolve, reject) => {
      const timer = setTimeout(() => {
        waiting.delete(look);
        reject(new Error(`${name}: no ${what} within ${seconds} s`));
      }, seconds * 1000);
      const look = () => {
        for (; read < lines.length; read++) {
          let found;
          try {
            found = wanted(lines[read]);
          } catch (error) {
            clearTimeout(timer);
            waiting.delete(look);
            read += 1;
            return reject(error);
          }
          if (!found) continue;
          clearTimeout(timer);
          waiting.delete(look);
          read += 1;
          return resolve(found);
        }
      };
      waiting.add(look);
      look();
    });
  return {
    line,
    exit,
    lines,
    write: (text) => child.stdin.write(`${text}\n`),
    end: () => child.stdin.end(),
    child,
  };
}

async function peer(adapter, quantity, name, serial, more = []) {
  const script = `${project}/tests/bluetooth/guest/peer.py`;
  const running = program(name, '/usr/bin/python3', ['-u', script, adapter, quantity, name, serial, ...more]);
  const said = (what, seconds) =>
    running.line(
      what,
      (line) => {
        const found = JSON.parse(line);
        if (found.error !== undefined) throw new Error(`${name}: ${line}`);
        return found.say === what && found;
      },
      seconds,
    );
  const { address } = await said('ready');
  return {
    name,
    serial,
    address,
    said,
    advertise: async () => {
      running.write('{"do":"advertise"}');
      await said('done');
    },
    hide: async () => {
      running.write('{"do":"hide"}');
      await said('done');
    },
    drop: async () => {
      running.write('{"do":"drop"}');
      await said('done');
    },
    power: async (on) => {
      running.write(JSON.stringify({ do: 'power', on }));
      await said('done');
    },
    send: async (counts, everyMs) => {
      running.write(JSON.stringify({ do: 'send', counts, everyMs }));
      await said('sent', 60);
    },
    end: () => running.end(),
  };
}

const RISE_SAMPLES = 150;
/** Nobody goes from plug to plug faster; a pull that comes sooner is asked about. */
const PAUSE_MS = 4_000;

/**
 * A pull by a click-type wrench at 100 Hz: rest, the rise of a seat that hardens, the click and its fall, let-off, rest. Rise
 * and fall are plain: emulation delivers in bunches, and what is left of them has to show that the plug turned and that
 * the wrench clicked.
 */
function pull(peak) {
  const counts = [];
  const to = (value, steps) => {
    const from = counts.at(-1) ?? 0;
    for (let i = 1; i <= steps; i++) counts.push(Math.round(from + ((value - from) * i) / steps));
  };
  to(0, 60);
  for (let i = 1; i <= RISE_SAMPLES; i++) counts.push(Math.round(peak * (i / RISE_SAMPLES) ** 2));
  to(Math.round(0.8 * peak), 2);
  to(Math.round(0.8 * peak), 10);
  to(0, 20);
  to(0, 40);
  return counts;
}

/** A peer whose adapter is switched off under it: nothing is said to the other end. */
const adapter = (name, state) => execFileSync(`${tools}/bin/hciconfig`, [name, state]);

/** Runs plugmark to its end and gives what it said. */
async function plugmark(args, options = {}) {
  const { prefix = [], env = {} } = options;
  const [command, ...rest] = [...prefix, process.execPath, cli, ...args];
  const ran = program('plugmark', command, rest, {
    stdio: ['ignore', 'pipe', 'pipe'],
    env: { ...process.env, NOBLE_HCI_DEVICE_ID: '1', ...env },
  });
  let problem = '';
  ran.child.stderr.on('data', (text) => {
    problem += text;
  });
  const code = await Promise.race([ran.exit, sleep(120_000).then(() => 'never ended')]);
  ran.child.kill('SIGKILL');
  return { code, said: ran.lines.join('\n'), problem: problem.trim() };
}

/** What the log of the station holds of a tool's readings, and of its gaps. */
async function logged(tool) {
  const { openStationLog } = await import(`${project}/${cli.replace('src/cli/bin.js', 'db/log.js')}`);
  const { decodeSamples } = await import(`${project}/${cli.replace('src/cli/bin.js', 'src/pull/trace.js')}`);
  const log = await openStationLog('/run/job/data/station.db');
  const events = log.entries(`job:${order.job}`).map(({ event }) => event);
  log.close();
  const own = events.filter((event) => event.tool === tool);
  return {
    counts: own
      .filter(({ type }) => type === 'readings')
      .flatMap((event) => [...decodeSamples(event).value.counts]),
    missed: own.filter(({ type }) => type === 'readings-missed'),
    description: own.find(({ type }) => type === 'tool-linked').description,
  };
}

/** Whether `got` is what was sent, save for parts that were under way when a link ended; how many of those. */
function lostOf(sent, got) {
  let at = 0;
  for (const count of got) {
    while (at < sent.length && sent[at] !== count) at += 1;
    if (at === sent.length) return undefined;
    at += 1;
  }
  return sent.length - got.length;
}

async function section(name, run) {
  say(`-- ${name}`);
  try {
    await run();
  } catch (error) {
    check(name, false, error.message);
  } finally {
    for (const child of running) child.kill('SIGKILL');
    running.clear();
  }
}

const cli = process.env.DIST ?? 'dist/src/cli/bin.js';
const gauge = await peer('hci0', 'length', 'Peer gauge', 'PEER-G-1');
const wrench = await peer('hci2', 'torque', 'Peer wrench', 'PEER-W-1');
adapter('hci1', 'up');
mkdirSync('/run/job');
const order = JSON.parse(readFileSync('sim/example/order-4.json', 'utf8'));
writeFileSync('/run/job/order.json', JSON.stringify(order));
const station = JSON.parse(readFileSync('sim/example/station.json', 'utf8'));
station.tools = station.tools.map(({ serial, ...tool }) => ({ ...tool, driver: { use: 'imds' } }));
writeFileSync('/run/job/station.json', JSON.stringify({ ...station, data: 'data' }));
check(
  'the peers have addresses of their own',
  gauge.address !== wrench.address,
  `${gauge.address}, ${wrench.address}`,
);

await section('discovery and adoption', async () => {
  await gauge.advertise();
  const found = await plugmark(['devices', 'scan', '--seconds', '3']);
  check(
    'devices scan shows the gauge with its kind and serial number',
    /caliper +Peer gauge +PEER-G-1/.test(found.said),
    found.problem,
  );
  const adopted = await plugmark([
    'devices',
    'adopt',
    gauge.address,
    '--tool',
    'gauge',
    '--station',
    '/run/job/station.json',
  ]);
  check(
    'devices adopt takes the gauge and says that the link is not authenticated',
    adopted.code === 0 && /not authenticated/.test(adopted.said),
    adopted.problem,
  );
  const nobody = await plugmark(['devices', 'scan', '--seconds', '2'], {
    prefix: ['setpriv', '--reuid', '65534', '--clear-groups'],
  });
  check(
    'a user without the right is told so',
    nobody.code === 2 && /not allowed to use the Bluetooth adapter/.test(nobody.problem),
    nobody.problem.split('\n')[0],
  );
  const caps = [
    'setpriv',
    '--reuid',
    '65534',
    '--clear-groups',
    '--inh-caps',
    '+net_raw,+net_admin',
    '--ambient-caps',
    '+net_raw,+net_admin',
  ];
  const able = await plugmark(['devices', 'scan', '--seconds', '3'], { prefix: caps });
  check(
    'cap_net_raw and cap_net_admin are enough without root',
    /Peer gauge +PEER-G-1/.test(able.said),
    able.problem,
  );
  await gauge.hide();
  await wrench.advertise();
  const second = await plugmark([
    'devices',
    'adopt',
    wrench.address,
    '--tool',
    'wrench',
    '--station',
    '/run/job/station.json',
  ]);
  check('devices adopt takes the wrench', second.code === 0, second.problem);
  const { code } = await plugmark([
    'devices',
    'record',
    wrench.address,
    '--out',
    '/run/job/wrench.capture.jsonl',
    '--seconds',
    '2',
  ]);
  check(
    'devices record writes a capture',
    code === 0 && /"packets":0/.test(readFileSync('/run/job/wrench.capture.jsonl', 'utf8')),
  );
  await wrench.hide();
});

await section('a whole job', async () => {
  const sent = { wrench: [], gauge: [] };
  const job = program(
    'plugmark',
    process.execPath,
    [cli, 'job', '--order', '/run/job/order.json', '--station', '/run/job/station.json', '--plain'],
    { env: { ...process.env, NOBLE_HCI_DEVICE_ID: '1' } },
  );
  const said = (what, pattern, seconds) => job.line(what, (line) => pattern.test(line), seconds);
  const linked = async (tool, since, from) => {
    await said(`link of the ${tool}`, new RegExp(`${tool} +linked`));
    const ms = performance.now() - from;
    check(`${tool}: subscribed ${since}`, ms < 10_000, `after ${ms.toFixed(0)} ms, emulated`);
  };
  await said('start', /session 1 started/, 120);
  await sleep(1500);

  /** Pulls until it is OK: where the emulation stalls, plugmark rightly asks about a pull with a hole in it. */
  const tighten = async (cylinder, peak) => {
    for (let attempt = 1; attempt <= 6; attempt++) {
      await sleep(PAUSE_MS);
      await send(pull(peak));
      const line = await job.line(
        `pull on ${cylinder}`,
        (one) => / torque +(OK|not judged)/.test(one) && one,
        60,
      );
      if (line.includes(`cylinder ${cylinder}  torque  OK`)) return;
      await sleep(3000);
      for (let i = 0; i < 3; i++) {
        // No plug was turned; where that is no answer, it stopped short; nothing where nothing is asked.
        for (const key of ['h', 'u']) {
          job.write(key);
          await sleep(300);
        }
      }
    }
    throw new Error(`no pull on cylinder ${cylinder} was OK`);
  };

  let at = performance.now();
  await gauge.advertise();
  await linked('gauge', 'of waking', at);
  for (const [i] of order.engine.serviceOrder.entries()) {
    sent.gauge.push(7400 + 100 * i);
    await gauge.send(sent.gauge.slice(-1), 10);
    await said('gap', /gap +OK/);
  }
  await gauge.hide();
  await gauge.drop();
  await said('loss of the gauge', /gauge +lost/);

  at = performance.now();
  await wrench.advertise();
  await linked('wrench', 'of waking', at);
  const send = async (counts) => {
    await wrench.send(counts, 10);
    sent.wrench.push(...counts);
  };
  await tighten(1, 2760);
  await tighten(2, 2770);

  say('the wrench ends the link in the middle of a pull');
  await sleep(PAUSE_MS);
  await send(pull(2780).slice(0, 180));
  at = performance.now();
  await wrench.drop();
  await said('loss of the wrench', /wrench +lost/);
  await said('a cut pull that is not judged', /not judged/);
  check('a pull that a lost link cut is not judged', true);
  await linked('wrench', 'of the loss', at);
  await sleep(3000);
  job.write('h');

  say('a thousand readings at 100 Hz');
  await send(Array.from({ length: 1000 }, (_, i) => (i % 7) - 3));

  say('the wrench vanishes without a word');
  adapter('hci2', 'down');
  at = performance.now();
  await said('loss of the silent wrench', /wrench +lost/, 30);
  check(
    'a peer that vanished without a word is noticed',
    true,
    `${(performance.now() - at).toFixed(0)} ms, ${job.lines.findLast((line) => /wrench +lost/.test(line))}`,
  );
  adapter('hci2', 'up');
  await wrench.power(true);
  await wrench.hide().catch((error) => say(`        ${error.message}`));
  at = performance.now();
  await wrench.advertise();
  await linked('wrench', 'of its return', at);

  say('the adapter of the station goes off and on');
  adapter('hci1', 'down');
  await said('loss by the adapter', /wrench +lost/, 30);
  await sleep(3000);
  at = performance.now();
  adapter('hci1', 'up');
  await said('link after the adapter came back', /wrench +linked/, 30);
  check(
    'the adapter off and on is survived',
    true,
    `subscribed ${(performance.now() - at).toFixed(0)} ms after it came back`,
  );

  await tighten(3, 2780);
  await tighten(4, 2750);
  await sleep(1000);
  job.write('s');
  const code = await Promise.race([job.exit, sleep(60_000).then(() => 'none')]);
  check('the job was closed, its record verified, and the program ended', code === 0, `exit ${code}`);
  for (const file of [`${order.job}.record.json`, 'trusted-keys.json'])
    copyFileSync(`/run/job/data/${file}`, `/run/out/${file}`);
  for (const [tool, counts] of Object.entries(sent)) {
    const held = await logged(tool);
    const lost = lostOf(counts, held.counts);
    check(
      `${tool}: every reading in the log was sent, in order, none twice`,
      lost !== undefined,
      `${held.counts.length} of ${counts.length}, ${lost} lost`,
    );
    check(
      `${tool}: what was lost was under way when a link ended, and each loss is a gap in the log`,
      lost <= 110 && held.missed.length === (tool === 'wrench' ? 3 : 0),
      `${held.missed.length} gaps`,
    );
    check(
      `${tool}: the record says that the link was not authenticated`,
      held.description.link.authenticated === false,
    );
  }
});

await section('an adapter that noble has for itself (user channel)', async () => {
  await wrench.hide().catch(() => {});
  await gauge.advertise();
  execFileSync(`${tools}/usr/bin/btmgmt`, ['-i', 'hci1', 'power', 'off'], { stdio: 'ignore' });
  const found = await plugmark(['devices', 'scan', '--seconds', '3'], { env: { HCI_CHANNEL_USER: '1' } });
  check('devices scan works over it', /Peer gauge +PEER-G-1/.test(found.said), found.problem);
  await gauge.hide();
});

gauge.end();
wrench.end();
await section('a tool that asks for encryption', async () => {
  adapter('hci1', 'up');
  const secret = await peer('hci0', 'length', 'Secret gauge', 'PEER-G-2', ['encrypt']);
  await secret.advertise();
  execFileSync(`${tools}/usr/bin/btmgmt`, ['-i', 'hci1', 'power', 'off'], { stdio: 'ignore' });
  const found = await plugmark(['devices', 'scan', '--seconds', '3'], { env: { HCI_CHANNEL_USER: '1' } });
  check(
    'its serial number is read, or it is said why not',
    /PEER-G-2|not read/.test(found.said),
    found.said.split('\n').at(-1),
  );
  secret.end();
});
say(failures === 0 ? 'all passed' : `${failures} failed`);
process.exit(failures === 0 ? 0 : 1);
