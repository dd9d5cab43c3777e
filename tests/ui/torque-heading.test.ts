/** The line over the bar on the narrowest screen: the peak is whole in every language and unit; half a figure is another one. */
import { expect, it } from 'vitest';
import { inUnits, SI } from '../../src/quantity/shown.ts';
import { glyphsFor } from '../../src/ui/glyphs.ts';
import { torqueLines } from '../../src/ui/torque-bar.ts';
import { inLanguage, LANGUAGES } from '../../src/words/catalogue.ts';
import { dictionary } from '../../src/words/dictionaries.ts';
import { jobWith, viewOf } from './fixtures.ts';

const IMPERIAL = { torque: '[ft_i].[lbf_av]', length: '[in_i]' } as const;
const glyphs = glyphsFor(false);
const view = viewOf(jobWith(2), { nowNm: 0, peakNm: 26.78 });

const heading = () =>
  torqueLines(view, 60, { bar: 1, scaleFigures: false }, glyphs)[0]
    ?.map(({ text }) => text)
    .join('') ?? '';

it.each(LANGUAGES)('in %s', async (language) => {
  const reader = await dictionary(language);
  for (const [units, peak, limits] of [
    [SI, '26.78', '30.00'],
    [IMPERIAL, '19.75', '22.12'],
  ] as const) {
    const text = inLanguage(reader, () => inUnits(units, heading));
    const written = (figure: string) => (language === 'en' ? figure : figure.replace('.', ','));
    expect(text).toContain(` ${written(peak)} `);
    expect(text).toContain(written(limits));
    expect(text).not.toContain(glyphs.cutMark);
  }
});

it('shows the peak of the last pull, and no torque of now, where the tool does not tell it', () => {
  const between = viewOf(jobWith(2), { nowNm: null, peakNm: 26.78 });
  const text = torqueLines(between, 80, { bar: 1, scaleFigures: false }, glyphs)[0]
    ?.map((span) => span.text)
    .join('');
  expect(text).toContain('peak 26.78');
  expect(text).not.toMatch(/Torque +\d|no reading/);
});
