import { spawnSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { expect, it } from 'vitest';

const BIN = fileURLToPath(new URL('../../dist/src/cli/bin.js', import.meta.url));

/** The program under a Node that says it is of this version, and that ends with 9 when a native package is loaded. */
const under = (version: string) =>
  spawnSync(
    process.execPath,
    [
      `--import=data:text/javascript,${encodeURIComponent(
        `Object.defineProperty(process.versions, 'node', { value: '${version}' });
         process.dlopen = () => process.exit(9);`,
      )}`,
      BIN,
      'doctor',
    ],
    { encoding: 'utf8' },
  );

it('an old Node is refused with one sentence and what to do, before anything native is loaded', () => {
  const { status, stdout, stderr } = under('20.20.2');
  expect({ status, stdout }).toEqual({ status: 2, stdout: '' });
  expect(stderr).toMatch(
    /^plugmark: Node 20\.20\.2 is too old; plugmark needs 22\.12 or newer\n {2}Install .+\n$/,
  );
});

it('a Node in the range goes on to the native packages', () => {
  expect(under('22.12.0').status).toBe(9);
});
