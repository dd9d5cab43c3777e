import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { progress, watched } from '../../../src/cli/terminal/progress.ts';

let nowMs = 0;
let shown = '';
const { isTTY, columns } = process.stderr;
beforeEach(() => {
  nowMs = 0;
  shown = '';
  process.stderr.isTTY = true;
  vi.spyOn(performance, 'now').mockImplementation(() => nowMs);
  vi.spyOn(process.stderr, 'write').mockImplementation((text) => {
    shown += String(text);
    return true;
  });
});
afterEach(() => {
  vi.restoreAllMocks();
  process.stderr.isTTY = isTTY;
  process.stderr.columns = columns;
});
const at = (ms: number, work: () => void) => {
  nowMs = ms;
  work();
};

describe('a progress line', () => {
  it('stays away in the first second, however many things are done', () => {
    const bar = progress('records', 5000);
    at(900, () => bar.at(4000));
    bar.end();
    expect(shown).toBe('');
  });

  it('says after a second how many are done, of how many, and the time left, also of few', () => {
    const bar = progress('records', 4);
    at(3_000, () => bar.at(1));
    expect(shown).toContain('1 of 4 records, 9 s left');
    at(400_000, () => bar.at(2));
    expect(shown).toContain('2 of 4 records, 7 min left');
    bar.end();
    expect(shown.endsWith('\r\u001b[K')).toBe(true);
  });

  it('never gets longer than the line of the terminal', () => {
    process.stderr.columns = 40;
    const bar = progress('jobs read for the history', 100_000);
    at(2_000, () => bar.at(50_000));
    expect(shown.replace('\r\u001b[K', '')).toHaveLength(39);
  });

  it('is not there where nobody can see it', () => {
    process.stderr.isTTY = false;
    const bar = progress('records', 4);
    at(3_000, () => bar.at(1));
    bar.end();
    expect(shown).toBe('');
  });

  it('goes when what it watches is done, and comes again for the next', () => {
    const watch = watched('entries');
    at(0, () => watch(1, 3));
    at(2_000, () => watch(2, 3));
    at(2_050, () => watch(3, 3));
    expect(shown).toMatch(/2 of 3 entries, 1 s left\r\u001b\[K$/);
    shown = '';
    at(2_100, () => watch(1, 2));
    expect(shown).toBe('');
  });
});
