// Builds build/plugmark_VERSION_amd64.deb: the packed file of npm, a Node of its own, man pages and completions. Needs dpkg-deb.
//
// There is no unit for systemd, because nothing of plugmark runs without a person in front of it.
import { execFileSync } from 'node:child_process';
import {
  chmodSync,
  copyFileSync,
  cpSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  realpathSync,
  renameSync,
  rmSync,
  statSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

const ROOT = fileURLToPath(new URL('../..', import.meta.url));
const OUT = join(ROOT, 'build');
const { version, description, author } = JSON.parse(readFileSync(join(ROOT, 'package.json'), 'utf8'));
const { npm_execpath: npm } = process.env;
/** Of the dependencies' binaries those for other systems. */
const NOT_SHIPPED = /\/prebuilds\/(?!linux-x64)[^/]+$/;

if (process.platform !== 'linux' || process.arch !== 'x64' || npm === undefined) {
  console.error('npm run deb: the Debian package is built by npm on Linux on x64.');
  process.exit(2);
}

const scratch = mkdtempSync(join(tmpdir(), 'plugmark-deb-'));
try {
  process.umask(0o022);
  const tree = join(scratch, 'tree');
  program(tree);
  forTheShell(tree);
  papers(tree);
  control(tree);
  console.log(built(tree));
} finally {
  rmSync(scratch, { recursive: true, force: true });
}

/** /usr/lib/plugmark: the program as npm packs it, and the Node of the development installation. */
function program(tree) {
  execFileSync(process.execPath, [npm, 'pack', '--silent', '--pack-destination', scratch], {
    cwd: ROOT,
    stdio: ['ignore', 'ignore', 'inherit'],
  });
  execFileSync('tar', ['xzf', `plugmark-${version}.tgz`], { cwd: scratch });
  const home = join(tree, 'usr/lib/plugmark');
  cpSync(join(scratch, 'package'), join(home, 'app'), {
    recursive: true,
    filter: (path) => !NOT_SHIPPED.test(path),
  });
  copyFileSync(realpathSync(process.execPath), join(home, 'node'));
  chmodSync(join(home, 'node'), 0o755);
  put(join(tree, 'usr/bin/plugmark'), readFileSync(new URL('debian/plugmark', import.meta.url)), 0o755);
}

function forTheShell(tree) {
  const bin = join(tree, 'usr/lib/plugmark/app/dist/src/cli/bin.js');
  const plugmark = (...args) => execFileSync(process.execPath, [bin, ...args]);
  put(join(tree, 'usr/share/bash-completion/completions/plugmark'), plugmark('completion', 'bash'));
  put(join(tree, 'usr/share/zsh/vendor-completions/_plugmark'), plugmark('completion', 'zsh'));
  put(join(tree, 'usr/share/fish/vendor_completions.d/plugmark.fish'), plugmark('completion', 'fish'));
  const man = join(tree, 'usr/share/man');
  plugmark('manual', '--out', man);
  execFileSync('gzip', ['-9nr', man]);
}

/** Licences; those of the dependencies are in their folders. */
function papers(tree) {
  const doc = join(tree, 'usr/share/doc/plugmark');
  put(join(doc, 'copyright'), readFileSync(join(ROOT, 'LICENSE')));
  const node = dirname(dirname(realpathSync(process.execPath)));
  put(join(doc, 'node-LICENSE'), readFileSync(join(node, 'LICENSE')));
  put(join(doc, 'README.md'), readFileSync(join(ROOT, 'README.md')));
}

function control(tree) {
  const kib = Math.ceil(bytesBelow(tree) / 1024);
  const text = readFileSync(new URL('debian/control', import.meta.url), 'utf8')
    .replace('@VERSION@', version)
    .replace('@AUTHOR@', author)
    .replace('@SIZE@', String(kib))
    .replace('@DESCRIPTION@', description.replace(/\.$/, ''));
  put(join(tree, 'DEBIAN/control'), text);
  for (const name of ['postinst', 'prerm'])
    put(join(tree, 'DEBIAN', name), readFileSync(new URL(`debian/${name}`, import.meta.url)), 0o755);
}

function built(tree) {
  mkdirSync(OUT, { recursive: true });
  const name = `plugmark_${version}_amd64.deb`;
  const since = execFileSync('git', ['log', '-1', '--format=%ct'], { cwd: ROOT, encoding: 'utf8' }).trim();
  execFileSync('dpkg-deb', ['--root-owner-group', '-Zxz', '--build', tree, join(scratch, name)], {
    env: { ...process.env, SOURCE_DATE_EPOCH: since },
    stdio: ['ignore', 'ignore', 'inherit'],
  });
  const path = join(OUT, name);
  copyFileSync(join(scratch, name), `${path}.part`);
  renameSync(`${path}.part`, path);
  return `build/${name}: ${Math.round(statSync(path).size / 1e6)} MB, Node ${process.versions.node} inside`;
}

function put(path, content, mode = 0o644) {
  mkdirSync(dirname(path), { recursive: true });
  writeFileSync(path, content, { mode });
}

function bytesBelow(folder) {
  return readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .reduce((sum, { parentPath, name }) => sum + statSync(join(parentPath, name)).size, 0);
}
