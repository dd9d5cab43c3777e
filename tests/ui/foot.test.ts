import { expect, it } from 'vitest';
import { toolsLine } from '../../src/ui/foot.ts';
import { glyphsFor } from '../../src/ui/glyphs.ts';
import { jobWith, viewOf } from './fixtures.ts';

const shown = (waits: boolean, columns: number) =>
  toolsLine({ ...viewOf(jobWith(0)), waits }, false, columns, glyphsFor(false))
    .map(({ text }) => text)
    .join('');

it('says at any width that the job waits for the log, in the place of what is on disk', () => {
  for (const columns of [60, 80, 120]) {
    expect(shown(false, columns)).toMatch(/\d+ entries on disk/);
    expect(shown(true, columns)).toContain('WAITING FOR THE LOG');
    expect(shown(true, columns)).not.toContain('on disk');
  }
});
