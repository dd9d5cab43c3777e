// Installs plugmark as a shop does, and uses it: the packed file, by npm on the Node that runs this script, without a registry,
// without a compiler, as a user who is not root, into a folder with spaces in its name. Prints what it checked; ends with 1 at
// the first thing that is not right.
import assert from 'node:assert/strict';
import { execFileSync, spawnSync } from 'node:child_process';
import {
  chmodSync,
  copyFileSync,
  cpSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  realpathSync,
  rmSync,
  statSync,
  symlinkSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { delimiter, dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { notShipped } from './not-shipped.mjs';

const ROOT = fileURLToPath(new URL('../..', import.meta.url));
const { version, engines } = JSON.parse(readFileSync(join(ROOT, 'package.json'), 'utf8'));
const NOBODY = { uid: 65534, gid: 65534 };
const ROOT_USER = process.getuid?.() === 0;

const { npm_execpath: npm } = process.env;
assert(npm !== undefined, 'start it by: npm run test:install');

const checked = (text) => console.log(`ok  ${text}`);
const filesBelow = (folder) =>
  readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map(({ name }) => name);

const scratch = mkdtempSync(join(tmpdir(), 'plugmark install '));
try {
  const tarball = pack();
  const shop = machine();
  install(shop, tarball);
  use(shop);
  update(shop, tarball);
  refusals(shop);
} finally {
  rmSync(scratch, { recursive: true, force: true });
}

function pack() {
  execFileSync(process.execPath, [npm, 'pack', '--silent', '--pack-destination', scratch], {
    cwd: ROOT,
    stdio: ['ignore', 'ignore', 'inherit'],
  });
  const tarball = join(scratch, `plugmark-${version}.tgz`);
  const names = execFileSync('tar', ['tzf', tarball], { encoding: 'utf8', maxBuffer: 1 << 26 })
    .trim()
    .split('\n');
  const own = names.filter((name) => !name.startsWith('package/node_modules/'));
  for (const name of own)
    assert.match(
      name,
      /^package\/(dist\/.+\.(js|sql|json|xml|jsonl|txt|md|html)|dist\/src\/report\/fonts\/([a-z-]+\.ttf|LICENSE)|package\.json|README\.md|LICENSE)$/,
    );
  for (const name of [
    'dist/src/cli/bin.js',
    'dist/src/web/verify.html',
    'dist/sbom.cdx.json',
    'README.md',
    'LICENSE',
  ])
    assert(own.includes(`package/${name}`), name);
  assert(
    own.some((name) => name.startsWith('package/dist/db/migrations/')),
    'the migrations of the log',
  );
  for (const name of notShipped()) assert(!names.includes(`package/${name}`), name);
  const size = (statSync(tarball).size / 1e6).toFixed(1);
  checked(
    `the packed file holds the program alone, ${size} MB: ${own.length} files of its own, ${names.length - own.length} of its dependencies`,
  );
  return tarball;
}

/** A machine with Node, npm and a shell, and a user who owns nothing but a folder. */
function machine() {
  const bin = join(scratch, 'bin');
  mkdirSync(bin);
  copyFileSync(process.execPath, join(bin, 'node'));
  chmodSync(join(bin, 'node'), 0o755);
  symlinkSync(realpathSync('/bin/sh'), join(bin, 'sh'));
  symlinkSync('/usr/bin/env', join(bin, 'env'));
  cpSync(dirname(dirname(realpathSync(npm))), join(scratch, 'npm'), { recursive: true });
  const home = join(scratch, 'a user');
  mkdirSync(home);
  chmodSync(scratch, 0o755);
  if (ROOT_USER) execFileSync('chown', [`${NOBODY.uid}:${NOBODY.gid}`, home]);
  const run = (command, args) =>
    spawnSync(command, args, {
      cwd: home,
      env: { PATH: bin, HOME: home, LANG: 'C.UTF-8' },
      encoding: 'utf8',
      ...(ROOT_USER && NOBODY),
    });
  const prefix = join(home, 'shop tools');
  return {
    prefix,
    home,
    npm: (...args) => run(join(bin, 'node'), [join(scratch, 'npm', 'bin', 'npm-cli.js'), ...args]),
    plugmark: (...args) => run(join(prefix, 'bin', 'plugmark'), args),
    on: (node, ...args) =>
      run(node, [join(prefix, 'lib', 'node_modules', 'plugmark', 'dist', 'src', 'cli', 'bin.js'), ...args]),
  };
}

function install(shop, tarball) {
  const started = Date.now();
  const { status, stderr } = shop.npm('install', '--global', '--offline', '--prefix', shop.prefix, tarball);
  assert.equal(status, 0, stderr);
  assert.doesNotMatch(stderr, /EBADENGINE|install-scripts|deprecated/);
  const who = ROOT_USER ? 'by a user who is not root' : 'by this user';
  checked(
    `npm install --global, ${who}, offline, no compiler in reach, spaces in the path: ${Math.round((Date.now() - started) / 1000)} s`,
  );
  const strays = filesBelow(shop.prefix).filter((name) => /^(node|node\.exe|config\.gypi|.+\.o)$/.test(name));
  assert.deepEqual(strays, []);
  checked('no second Node came with it, nothing was compiled');
}

function use({ plugmark, home, prefix }) {
  assert.equal(plugmark('--version').stdout, `${version}\n`);
  const { status, stdout } = plugmark('doctor', '--json');
  assert.equal(status, 0, stdout);
  const findings = Object.fromEntries(JSON.parse(stdout).findings.map((one) => [one.name, one]));
  assert.equal(findings.node?.state, 'good');
  assert.equal(findings.database?.state, 'good');
  assert.doesNotMatch(findings.bluetooth?.text ?? '', /not installed/);
  checked('plugmark doctor: Node, SQLite and the Bluetooth part are there');
  const demo = plugmark('demo', '--fast');
  assert.equal(demo.status, 0, demo.stderr);
  assert.doesNotMatch(demo.stdout, /without Bluetooth/);
  checked('plugmark demo --fast works a job over the Bluetooth stack');
  loaded(prefix);
  verified(plugmark, home);
}

/** Whatever a command may need later, all of its files are there: each module of another package that the program names. */
function loaded(prefix) {
  const program = join(prefix, 'lib', 'node_modules', 'plugmark');
  const texts = readdirSync(join(program, 'dist'), { recursive: true })
    .filter((name) => name.endsWith('.js'))
    .map((name) => readFileSync(join(program, 'dist', name), 'utf8'));
  const named = texts.flatMap((text) => [
    ...text.matchAll(/(?:\bfrom |\bimport\(|\bresolve\()'((?!node:)[@a-z][^'\n]*)'/g),
  ]);
  // The first is installed by shops that keep their key in a device, the other where the program runs from its sources.
  const modules = [...new Set(named.map(([, name]) => name))].filter(
    (name) => !['pkcs11js', 'tsx/esm/api'].includes(name),
  );
  assert(modules.includes('pdfkit') && modules.includes('@abandonware/noble/with-bindings'), modules.join());
  const script = `import { createRequire } from 'node:module';
    const require = createRequire(process.cwd() + '/package.json');
    for (const name of ${JSON.stringify(modules)})
      await (name.startsWith('@abandonware') ? require(name) : import(name));`;
  const { status, stderr } = spawnSync(process.execPath, ['--input-type=module', '--eval', script], {
    cwd: program,
    encoding: 'utf8',
  });
  assert.equal(status, 0, stderr);
  checked(`each of the ${modules.length} modules of other packages that it names loads whole`);
}

function verified(plugmark, home) {
  const records = readdirSync(join(home, 'plugmark-demo')).filter((name) => name.endsWith('.record.json'));
  assert(records.length > 0);
  for (const record of records) {
    const { status, stdout } = plugmark(
      'verify',
      '--trust',
      'plugmark-demo/trusted-keys.json',
      `plugmark-demo/${record}`,
    );
    // Authentic; but simulated tools prove nothing.
    assert.equal(status, 1, stdout);
    assert.match(stdout, /Authentic and complete, but NOT PROVEN/);
  }
  checked(`plugmark verify: ${records.length} record(s) authentic and complete, and simulated`);
}

/** As after a new release: the program is replaced, the station's folder is not touched. */
function update({ npm: run, plugmark, prefix, home }, tarball) {
  assert.equal(run('install', '--global', '--offline', '--prefix', prefix, tarball).status, 0);
  const demo = plugmark('demo', '--fast');
  assert.equal(demo.status, 0, demo.stderr);
  checked('installed over itself, the next job goes into the same log');
  verified(plugmark, home);
}

/** Each a sentence and what to do, and no trace of the program. */
function refusals({ plugmark, on, prefix }) {
  const said = ({ status, stderr }, code, pattern) => {
    assert.equal(status, code, stderr);
    assert.match(stderr, pattern);
    assert.match(stderr, /^plugmark: [^\n]+\n {2}[^\n]+\n$/);
  };
  if (ROOT_USER) {
    said(plugmark('demo', '--fast', '--out', '/root/plugmark-demo'), 2, /\/root\/plugmark-demo/);
    checked('a folder that may not be written to: one sentence and what to do');
  }
  const old = oldNode();
  if (old !== null) {
    said(on(old, 'doctor'), 2, /is too old/);
    checked(`${old} is older than ${engines.node}: one sentence and what to do`);
  }
  rmSync(join(prefix, 'lib', 'node_modules', 'plugmark', 'node_modules', '@abandonware'), {
    recursive: true,
  });
  const { status, stdout } = plugmark('doctor', '--json');
  const found = JSON.parse(stdout).findings.find(({ name }) => name === 'bluetooth');
  assert.deepEqual({ status, state: found.state }, { status: 0, state: 'warning' });
  assert.match(found.text, /not installed/);
  assert.match(plugmark('demo', '--fast').stdout, /^[^\n]*not installed[^\n]*without Bluetooth/);
  checked(`without its Bluetooth part: "${found.text}. ${found.next}"`);
}

/** A Node on this machine that plugmark does not run on. */
function oldNode() {
  const [least = 0] = engines.node.match(/\d+/).map(Number);
  for (const folder of (process.env.PATH ?? '').split(delimiter)) {
    const node = join(folder, 'node');
    if (!existsSync(node) || realpathSync(node).startsWith(realpathSync(ROOT))) continue;
    const major = Number(
      spawnSync(node, ['-p', 'process.versions.node'], { encoding: 'utf8' }).stdout.split('.')[0],
    );
    if (major < least) return node;
  }
  return null;
}
