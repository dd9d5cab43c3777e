import { afterEach, describe, expect, it } from 'vitest';
import { z } from 'zod';
import { askChoice, askObject, askText, askYes, promptFor } from '../../../src/cli/terminal/questions.ts';
import { seatSchema } from '../../../src/plug/specification.ts';
import { ENGLISH, speak } from '../../../src/words/catalogue.ts';
import { dictionary } from '../../../src/words/dictionaries.ts';
import { answering } from '../answers.ts';

describe('a question with a proposed answer', () => {
  it('shows it without what would steer the terminal, and takes it as it is', async () => {
    const usual = 'Bay\u001b[2J\u009b\u202e 1';
    const { dialogue, prompts } = answering({});
    expect(await askText(dialogue, z.string(), 'Station', usual)).toBe(usual);
    expect(prompts).toEqual(['Station [Bay[2J 1]: ']);
  });

  it('says what Enter means where nothing is proposed', () => {
    expect([promptFor('Lot', undefined, true), promptFor('Lot')]).toEqual(['Lot (Enter: none): ', 'Lot: ']);
  });
});

describe('a question in the language of its reader', () => {
  afterEach(() => speak(ENGLISH));

  it('offers the choices of a file in his words, takes these and those of the file, and gives those of the file', async () => {
    speak(await dictionary('de'));
    for (const answer of ['Kegel', 'k', 'conical', 'con']) {
      const { dialogue, prompts } = answering({ Sitz: answer });
      expect(await askChoice(dialogue, seatSchema, 'Sitz', 'gasket')).toBe('conical');
      expect(prompts).toEqual(['Sitz: Dichtring, Kegel [Dichtring]: ']);
    }
    expect(await askChoice(answering({}).dialogue, seatSchema, 'Sitz', 'gasket')).toBe('gasket');
  });

  it('takes yes without its accent, and by its first letter, also of what is true or false', async () => {
    speak(await dictionary('es'));
    for (const answer of ['sí', 'si', 'S', 'y', 'yes']) {
      expect(await askYes(answering({ '¿': answer }).dialogue, '¿Otra?', 'no')).toBe(true);
      const { dialogue } = answering({ resistor: answer });
      expect(
        await askObject(
          { dialogue, wordings: {}, later: new Set() },
          z.strictObject({ resistor: z.boolean() }),
        ),
      ).toEqual({
        resistor: true,
      });
    }
  });

  it('says in his language what is wrong with an answer', async () => {
    speak(await dictionary('de'));
    const { dialogue, lines } = answering({ Sitz: ['flach', '', 'Kegel'], Teil: ['', 'x'.repeat(9), 'x'] });
    await askChoice(dialogue, seatSchema, 'Sitz');
    await askText(dialogue, z.string().min(1).max(8), 'Teil');
    expect(lines).toEqual([
      '  Nicht übernommen: erwartet wird eines von Dichtring, Kegel',
      '  Nicht übernommen: eine Antwort ist nötig',
      '  Nicht übernommen: eine Antwort ist nötig',
      '  Nicht übernommen: Zu lang: erwartet string mit <=8 Zeichen',
    ]);
  });
});
