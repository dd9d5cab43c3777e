import { describe, expect, it } from 'vitest';
import { newStudyInputState, pressedStudy, type StudyOut } from '../../src/ui/study-input-state.ts';
import type { StudyView } from '../../src/ui/study-view.ts';
import { STUDIES, studyOf } from './study-views.ts';

const study = (name: string): StudyView => STUDIES[name] ?? expect.fail(`no study ${name}`);

/** What the keys lead to, one after the other; `painted` is what is before the eyes. */
function pressing(keys: readonly string[], view: StudyView, painted: StudyView | null = view) {
  let input = newStudyInputState(false);
  const outs: StudyOut[] = [];
  for (const key of keys) {
    const after = pressedStudy(input, key === 'C-c' ? { key: 'c', ctrl: true } : { key }, view, painted);
    input = after.input;
    if (after.out !== null) outs.push(after.out);
  }
  return { input, outs };
}
const outs = (keys: readonly string[], name = 'going') => pressing(keys, study(name)).outs;

describe('the keys of a study', () => {
  it('take back, pause, leave', () => {
    expect(outs(['u', 'E', 'q', 'C-c'])).toEqual(['back', 'pause', 'quit', 'quit']);
    expect(outs(['x', 'enter', 'up', 'escape'])).toEqual([]);
  });

  it('type a figure: all up to Enter belongs to it', () => {
    expect(outs([...'0.75', 'enter'])).toEqual([{ typed: '0.75' }]);
    expect(outs([...'.030 in', 'enter'])).toEqual([{ typed: '.030 in' }]);
    expect(outs([...'0.7', 'backspace', '8', 'enter'])).toEqual([{ typed: '0.8' }]);
  });

  it('drop a figure by any other key, and do nothing else with it', () => {
    for (const key of ['escape', 'u', 'e', 'q', 'up']) {
      const after = pressing([...'0.7', key], study('going'));
      expect(after).toMatchObject({ outs: [], input: { figure: '' } });
    }
    expect(outs([...'0.7', 'C-c'])).toEqual(['quit']);
  });

  it('record what is whole, and nothing else', () => {
    expect(outs(['enter'], 'whole')).toEqual(['record']);
    expect(outs(['u'], 'whole')).toEqual(['back']);
    expect(outs(['enter'], 'going')).toEqual([]);
  });

  it('take or set aside what is asked about, once it is in sight', () => {
    expect(outs(['enter', 'u'], 'asked')).toEqual(['take', 'back']);
    expect(pressing(['enter', 'u'], study('asked'), study('going')).outs).toEqual([]);
    expect(pressing(['u'], study('going'), study('asked')).outs).toEqual([]);
    const another = { ...study('asked'), asked: { value: 98, lower: 0.2, upper: 3 } };
    expect(pressing(['enter'], another, study('asked')).outs).toEqual([]);
  });

  it('touch no reading that was not in sight when they were pressed', () => {
    const newer = studyOf({ taken: 5 });
    expect(pressing(['u'], newer, studyOf({ taken: 4 })).outs).toEqual([]);
    expect(pressing(['enter'], study('whole'), studyOf({ taken: 89 })).outs).toEqual([]);
    expect(pressing(['u'], newer, null).outs).toEqual([]);
    expect(pressing(['e', 'q'], newer, null).outs).toEqual(['pause', 'quit']);
  });

  it('turn the bell and the help on and off', () => {
    expect(pressing(['m', '?'], study('going')).input).toMatchObject({ quiet: true, help: true });
    expect(pressing(['m', '?', '?', 'm'], study('going')).input).toMatchObject({ quiet: false, help: false });
  });

  it('scroll the result, and leave it', () => {
    expect(pressing(['down', 'down', 'up', 'up', 'up', 'down'], study('result')).input.from).toBe(1);
    expect(outs(['0', 'u', 'e'], 'result')).toEqual([]);
    expect(outs(['enter', 'q'], 'result')).toEqual(['quit', 'quit']);
  });
});
