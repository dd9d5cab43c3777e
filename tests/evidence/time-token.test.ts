import { rolldown } from 'rolldown';
import { expect, it } from 'vitest';

it('time stamps are read in a browser as well: the bundle asks for nothing of Node', async () => {
  const bundle = await rolldown({
    input: new URL('../../src/evidence/time-token.ts', import.meta.url).pathname,
    platform: 'browser',
    external: [],
  });
  const { output } = await bundle.generate({ format: 'es', minify: true });
  expect(output.map(({ fileName }) => fileName)).toHaveLength(1);
  const [only] = output;
  expect(only.imports).toEqual([]);
  expect(only.code).not.toMatch(/["'`]node:|\brequire\(|\bBuffer\./);
});
