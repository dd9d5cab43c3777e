// Runs in the guest: two peers on bluetoothd play a gauge and a wrench, and plugmark does a whole job over hci1.
import { execFileSync } from 'node:child_process';
import { copyFileSync, mkdirSync, readFileSync, statSync, writeFileSync } from 'node:fs';
import { setTimeout as sleep } from 'node:timers/promises';
import { watch, witnessed } from './monitor.mjs';
import { endPlugmark, peer, plugmark, say, start } from './processes.mjs';

const tools = process.env.TOOLS;
let failures = 0;
const check = (what, good, detail = '') => {
  if (!good) failures += 1;
  say(`${good ? 'ok    ' : 'FAILED'} ${what}${detail === '' ? '' : `: ${detail}`}`);
};

/** Slow, so that readings which the emulation bunches leave little doubt about the top. */
const RISE_SAMPLES = 300;
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

/**
 * The answer after which a whole tightening of a loose plug is what comes next, for that is what the peer sends again: the
 * plug was backed out, or none was turned; else that it stopped short.
 */
function answerTo(line) {
  const keys = [...(/ ask (.*)/.exec(line)?.[1] ?? '').matchAll(/\[([a-z])\]/g)].map(([, key]) => key);
  return ['b', 'h', 'g'].find((key) => keys.includes(key));
}

/** A peer whose adapter is switched off under it: nothing is said to the other end. */
const adapter = (name, state) => execFileSync(`${tools}/bin/hciconfig`, [name, state]);
/** What the log of the station holds of a tool: its readings, apart where a gap is recorded, and its links. */
async function logged(tool) {
  const { openStationLog } = await import('/project/dist/db/log.js');
  const { decodeSamples } = await import('/project/dist/src/pull/trace.js');
  const log = await openStationLog('/run/job/data/station.db');
  const events = log.entries(`job:${order.job}`).map(({ event }) => event);
  log.close();
  const parts = [[]];
  const gaps = [];
  const links = [];
  for (const event of events.filter((one) => one.tool === tool)) {
    if (event.type === 'readings') parts.at(-1).push(...decodeSamples(event).value.counts);
    if (event.type === 'tool-linked') links.push(event.description.link);
    if (event.type !== 'readings-missed') continue;
    gaps.push(event);
    parts.push([]);
  }
  return { parts, gaps, links };
}

const same = (a, b) => a.length === b.length && a.every((count, i) => count === b[i]);

async function section(name, run) {
  say(`-- ${name}`);
  try {
    await run();
  } catch (error) {
    check(name, false, error.message);
  } finally {
    endPlugmark();
  }
}

// The gauge gives its serial number to nobody without encryption; the wrench asks for none.
const gauge = await peer('hci0', 'length', 'Peer gauge', 'PEER-G-1', ['encrypt']);
const wrench = await peer('hci2', 'torque', 'Peer wrench', 'PEER-W-1');
adapter('hci1', 'up');
mkdirSync('/run/job');
const order = JSON.parse(readFileSync('sim/example/order-4.json', 'utf8'));
writeFileSync('/run/job/order.json', JSON.stringify(order));
const station = JSON.parse(readFileSync('sim/example/station.json', 'utf8'));
station.tools = station.tools.map(({ serial, ...tool }) => ({ ...tool, driver: { use: 'imds' } }));
writeFileSync('/run/job/station.json', JSON.stringify({ ...station, data: 'data', routine: 'none' }));
check(
  'the peers have addresses of their own',
  gauge.address !== wrench.address,
  `${gauge.address}, ${wrench.address}`,
);

const adopt = ({ address }, tool) =>
  plugmark(['devices', 'adopt', address, '--tool', tool, '--station', '/run/job/station.json']);
const SEEN = /caliper +Peer gauge +PEER-G-1/;
const NOBODY = ['setpriv', '--reuid', '65534', '--clear-groups'];
const RIGHTS = ['--inh-caps', '+net_raw,+net_admin', '--ambient-caps', '+net_raw,+net_admin'];

await section('discovery and adoption', async () => {
  await gauge.advertise();
  const found = await plugmark(['devices', 'scan', '--seconds', '3']);
  check('devices scan shows the gauge with its kind and serial number', SEEN.test(found.said), found.problem);
  const adopted = await adopt(gauge, 'gauge');
  check(
    'devices adopt takes the gauge, over a link that is encrypted and not authenticated, and says so',
    adopted.code === 0 && /link is encrypted .* not authenticated/.test(adopted.said),
    adopted.problem,
  );
  const nobody = await plugmark(['devices', 'scan', '--seconds', '2'], { prefix: NOBODY });
  check(
    'a user without the right is told so',
    nobody.code === 2 && /not allowed to use the Bluetooth adapter/.test(nobody.problem),
    nobody.problem.split('\n')[0],
  );
  const able = await plugmark(['devices', 'scan', '--seconds', '3'], { prefix: [...NOBODY, ...RIGHTS] });
  check('cap_net_raw and cap_net_admin are enough without root', SEEN.test(able.said), able.problem);
  check(
    'each of the three links paired for itself, because none was told to keep a key',
    gauge.pairings() === 3,
    `${gauge.pairings()} pairings`,
  );
  await gauge.hide();
  await wrench.advertise();
  const second = await adopt(wrench, 'wrench');
  check(
    'devices adopt takes the wrench, over a link without encryption, and says so',
    second.code === 0 && /not encrypted and not authenticated/.test(second.said),
    second.problem,
  );
  const out = '/run/job/wrench.capture.jsonl';
  const { code } = await plugmark(['devices', 'record', wrench.address, '--out', out, '--seconds', '2']);
  check('devices record writes a capture', code === 0 && /"packets":0/.test(readFileSync(out, 'utf8')));
  await wrench.hide();
});

await section('a whole job', async () => {
  const endWatch = await watch(tools);
  const pairedBefore = gauge.pairings();
  /** What the tools were given to send; a new part begins where a link ends. */
  const sent = { wrench: [[]], gauge: [[]] };
  const job = start([
    'job',
    '--order',
    '/run/job/order.json',
    '--station',
    '/run/job/station.json',
    '--plain',
  ]);
  const said = (what, pattern, seconds) => job.line(what, (line) => pattern.test(line) && line, seconds);
  const linked = async (tool, since, from) => {
    await said(`link of the ${tool}`, new RegExp(`${tool} +linked`));
    const ms = performance.now() - from;
    // Emulation is ten times slower than a machine, and bluetoothd takes 2 s to end a link.
    check(`${tool}: subscribed ${since}`, ms < 10_000, `after ${ms.toFixed(0)} ms, emulated`);
  };
  const send = async (tool, counts) => {
    sent[tool === wrench ? 'wrench' : 'gauge'].at(-1).push(...counts);
    await tool.send(counts);
  };
  await said('start', /session 1 started/, 120);
  await sleep(1500);

  const measure = async (cylinders) => {
    for (const i of cylinders) {
      await send(gauge, [7400 + 100 * i]);
      await said('gap', /gap +OK/);
    }
  };
  let at = performance.now();
  await gauge.advertise();
  await linked('gauge', 'of waking', at);
  await measure([0, 1]);
  at = performance.now();
  await gauge.drop();
  await said('loss of the gauge', /gauge +lost/);
  sent.gauge.push([]);
  await linked('gauge', 'of the loss', at);
  await measure([2, 3]);
  check(
    'beside a kernel that pairs too no key is kept: each link of the gauge paired for itself',
    gauge.pairings() === pairedBefore + 2,
    `${gauge.pairings() - pairedBefore} pairings`,
  );
  await gauge.hide();
  await gauge.drop();
  await said('loss of the gauge', /gauge +lost/);

  at = performance.now();
  await wrench.advertise();
  await linked('wrench', 'of waking', at);
  let again = 0;
  /**
   * Pulls until it is OK. Where the host of the emulation stalls, readings come so late that they may have been anything:
   * plugmark sees no click, sees several pulls, or has to ask. So a pull may be repeated, but only where plugmark took it
   * for no proof, and five times at most.
   */
  const tighten = async (cylinder, peak) => {
    for (let attempt = 1; attempt <= 6; attempt++) {
      await sleep(PAUSE_MS);
      await send(wrench, pull(peak));
      const lines = await job.untilQuiet(
        `pull on ${cylinder}`,
        / torque +(OK|NOT OK|UNDECIDED|not judged)/,
        60,
      );
      if (lines.some((line) => line.includes(`cylinder ${cylinder}  torque  OK`))) return;
      const judged = lines.find((line) => !/ (UNDECIDED|not judged) /.test(line));
      if (judged !== undefined) throw new Error(`plugmark judged it otherwise: ${judged}`);
      again += 1;
      const answer = lines.map(answerTo).findLast((key) => key !== undefined);
      if (answer === undefined) continue;
      await sleep(3000);
      job.write(answer);
    }
    throw new Error(`no pull on cylinder ${cylinder} was OK`);
  };
  await tighten(1, 2760);
  await tighten(2, 2770);

  say('the wrench ends the link in the middle of a pull');
  await sleep(PAUSE_MS);
  await send(wrench, pull(2780).slice(0, 300));
  at = performance.now();
  await wrench.drop();
  await said('loss of the wrench', /wrench +lost/);
  sent.wrench.push([]);
  const cut = await said('the pull', / torque +(OK|NOT OK|not judged)/);
  check('a pull that a lost link cut is not judged', /not judged .*its end is missing/.test(cut));
  await linked('wrench', 'of the loss', at);
  await sleep(3000);
  job.write('h');

  say('a thousand readings at 100 Hz');
  await send(
    wrench,
    Array.from({ length: 1000 }, (_, i) => (i % 7) - 3),
  );

  say('the wrench vanishes without a word');
  adapter('hci2', 'down');
  at = performance.now();
  const lost = await said('loss of the silent wrench', /wrench +lost/, 30);
  sent.wrench.push([]);
  check(
    'a peer that vanished without a word is noticed because it does not answer',
    /it stopped answering/.test(lost),
    `${(performance.now() - at).toFixed(0)} ms`,
  );
  adapter('hci2', 'up');
  await wrench.power(true);
  await wrench.hide().catch((error) => say(`        ${error.message}`));
  at = performance.now();
  await wrench.advertise();
  await linked('wrench', 'of its return', at);
  await send(
    wrench,
    Array.from({ length: 100 }, (_, i) => (i % 3) - 1),
  );
  await sleep(1000);

  say('the adapter of the station goes off and on');
  adapter('hci1', 'down');
  await said('loss by the adapter', /wrench +lost/, 30);
  sent.wrench.push([]);
  await sleep(3000);
  at = performance.now();
  adapter('hci1', 'up');
  await linked('wrench', 'of the adapter coming back', at);

  await tighten(3, 2780);
  await tighten(4, 2750);
  await sleep(1000);
  job.write('s');
  const code = await Promise.race([job.exit, sleep(60_000).then(() => 'none')]);
  check('the job was closed, its record verified, and the program ended', code === 0, `exit ${code}`);
  say(`        pulls that the emulation stalled in and plugmark took for no proof: ${again}`);
  for (const file of [`${order.job}.record.json`, 'trusted-keys.json'])
    copyFileSync(`/run/job/data/${file}`, `/run/out/${file}`);

  await endWatch();
  const witness = witnessed();
  for (const [tool, { address }, links, encrypted] of [
    ['wrench', wrench, 4, undefined],
    ['gauge', gauge, 2, true],
  ]) {
    const held = await logged(tool);
    const { counts, encrypted: times } = witness(address);
    const kept = held.parts.flat();
    check(
      `${tool}: all that the adapter gave to the host is in the log, in order, and nothing else`,
      kept.length > 0 && same(kept, counts),
      `${kept.length} of ${counts.length}; ${sent[tool].flat().length} sent`,
    );
    // What a tool has handed over when its link ends may never leave it; that is the end of a part, and nowhere else.
    check(
      `${tool}: what the air lost was under way when a link ended, and a gap with its length stands there`,
      held.parts.length === links &&
        held.parts.every((part, i) => same(part, sent[tool][i].slice(0, part.length))) &&
        same(held.parts.at(-1), sent[tool].at(-1)) &&
        held.gaps.every(({ fromUs, toUs }) => toUs > fromUs),
      `${held.gaps.length} gaps; ${held.parts.map((part, i) => `${part.length}/${sent[tool][i]?.length}`).join(' ')}`,
    );
    check(
      `${tool}: the record says what protected each link, and that none was authenticated`,
      held.links.length === links &&
        held.links.every((link) => link.encrypted === encrypted && link.authenticated === false) &&
        times === (encrypted ? links : 0),
      `${held.links.length} links, ${times} of them encrypted by the adapter's word`,
    );
  }
});

/** The kernel gives an adapter away only while nobody else has it up, and bluetoothd turns on whatever appears. */
async function freed() {
  await sleep(3000);
  execFileSync(`${tools}/usr/bin/btmgmt`, ['-i', 'hci1', 'power', 'off'], { stdio: 'ignore' });
}

await section('an adapter that noble has for itself (user channel)', async () => {
  await wrench.hide().catch((error) => say(`        ${error.message}`));
  await gauge.advertise();
  await freed();
  const env = { HCI_CHANNEL_USER: '1' };
  const found = await plugmark(['devices', 'scan', '--seconds', '3'], { env });
  check('devices scan works over it, and pairs', SEEN.test(found.said), found.problem);
  const pairedBefore = gauge.pairings();
  await freed();
  writeFileSync('/run/job/order-2.json', JSON.stringify({ ...order, job: 'EX-4002' }));
  const args = ['job', '--order', '/run/job/order-2.json', '--station', '/run/job/station.json', '--plain'];
  const job = start(args, env);
  const linked = (which) => job.line(which, (line) => /gauge +linked/.test(line), 120);
  await linked('first link');
  await gauge.drop();
  await job.line('loss', (line) => /gauge +lost/.test(line));
  await linked('second link');
  await gauge.send([7500]);
  await job.line('gap', (line) => /gap +OK/.test(line));
  const { mode } = statSync('/run/job/bluetooth-bonds.json');
  check(
    'a bonded gauge is paired with once; its key, which the owner alone can read, encrypts the second link',
    gauge.pairings() === pairedBefore + 1 && (mode & 0o777) === 0o600,
    `${gauge.pairings() - pairedBefore} pairings, mode ${(mode & 0o777).toString(8)}`,
  );
});

gauge.end();
wrench.end();
say(failures === 0 ? 'all passed' : `${failures} failed`);
process.exit(failures === 0 ? 0 : 1);
