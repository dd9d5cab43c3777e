import { describe, expect, it } from 'vitest';
import { PEOPLE_EVENTS } from '../../../src/job/event-of-people.ts';
import { reasonCodeSchema } from '../../../src/job/reason.ts';
import { reasonWords } from '../../../src/report/words/index.ts';
import { inLanguage } from '../../../src/words/catalogue.ts';
import { dictionary } from '../../../src/words/dictionaries.ts';

const schema = PEOPLE_EVENTS.find((one) => one.shape.type.value === 'taken-back');
const takenBack = (why: string) => ({ type: 'taken-back', said: 1, why });

describe('a reason', () => {
  it('that was picked from the list is read by each in his own language', async () => {
    expect(schema?.safeParse(takenBack('wrong-key-pressed')).success).toBe(true);
    expect(reasonWords('wrong-key-pressed')).toBe('the wrong key was pressed');
    const words = reasonCodeSchema.options.map(reasonWords);
    for (const language of ['de', 'fr', 'es'] as const) {
      const there = inLanguage(await dictionary(language), () => reasonCodeSchema.options.map(reasonWords));
      expect(there.filter((text, i) => text === words[i])).toEqual([]);
    }
  });

  it('in own words stays as it was said, as in records from before there were codes', async () => {
    for (const own of ['the wrong key was pressed', 'die falsche Taste']) {
      expect(schema?.safeParse(takenBack(own)).success).toBe(true);
      expect(inLanguage(await dictionary('de'), () => reasonWords(own))).toBe(own);
    }
  });
});
