import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { certificateFromDcc } from '../../src/instrument/dcc.ts';

const EXAMPLE = readFileSync(new URL('../../sim/example/wrench.dcc.xml', import.meta.url), 'utf8');
const read = (xml: string) => certificateFromDcc(xml, 'w.xml');
const refused = (xml: string) => {
  const out = read(xml);
  return out.ok ? null : out.error;
};
/** The example with one piece changed; a piece that is not there is a fault of the test. */
const changed = (piece: string | RegExp, by: string) => {
  const out = EXAMPLE.replace(piece, by);
  if (out === EXAMPLE) throw new Error(`nothing like ${piece} in the example`);
  return out;
};
const ERROR_QUANTITY = /<dcc:quantity refType="basic_measurementError">[\s\S]*?<\/dcc:quantity>/;

describe('a digital calibration certificate', () => {
  it('gives whose instrument, by whom, when, and its points', () => {
    expect(read(EXAMPLE)).toEqual({
      ok: true,
      value: {
        number: 'EXAMPLE-2026-0117',
        laboratory: 'Example Calibration Laboratory',
        serial: 'EXAMPLE-W-1',
        date: '2026-03-16',
        unit: 'N.m',
        points: [
          { reading: 10.04, error: 0.04, expanded: 0.1, k: 2 },
          { reading: 20.07, error: 0.07, expanded: 0.16, k: 2 },
          { reading: 36.14, error: 0.14, expanded: 0.27, k: 2 },
          { reading: 60.21, error: 0.21, expanded: 0.42, k: 2 },
        ],
      },
    });
  });

  it('works out errors that are not printed from readings and references', () => {
    const xml = changed(ERROR_QUANTITY, '').replace(
      /(10\.04 20\.07[\s\S]*?<\/si:unitXMLList>)/,
      `$1<si:measurementUncertaintyUnivariateXMLList><si:expandedMUXMLList>
        <si:valueExpandedMUXMLList>0.10 0.16 0.27 0.42</si:valueExpandedMUXMLList>
        <si:coverageFactorXMLList>2 2 2 2</si:coverageFactorXMLList>
        <si:coverageProbabilityXMLList>0.95</si:coverageProbabilityXMLList>
      </si:expandedMUXMLList></si:measurementUncertaintyUnivariateXMLList>`,
    );
    expect(read(xml)).toEqual(read(EXAMPLE));
  });

  it('reads single values as well as lists, and the words of D-SI before 2.2', () => {
    const real = (value: number, u: string) =>
      `<si:real><si:value>${value}</si:value><si:unit>\\newton\\metre</si:unit>${u}</si:real>`;
    const old = (u: number) =>
      `<si:expandedUnc><si:uncertainty>${u}</si:uncertainty><si:coverageFactor>2</si:coverageFactor></si:expandedUnc>`;
    const xml = changed(
      /<dcc:list[\s\S]*<\/dcc:list>/,
      `<dcc:quantity refType="basic_measuredValue">${real(10.04, '')}${real(20.07, '')}</dcc:quantity>
       <dcc:quantity refType="basic_measurementError">${real(0.04, old(0.1))}${real(0.07, old(0.16))}</dcc:quantity>`,
    );
    expect(read(xml)).toMatchObject({
      ok: true,
      value: { points: [{ reading: 10.04, error: 0.04, expanded: 0.1, k: 2 }, { reading: 20.07 }] },
    });
  });

  it('goes by the elements that are there, not by the version', () => {
    expect(read(changed('schemaVersion="3.3.0"', 'schemaVersion="2.4.0"'))).toEqual(read(EXAMPLE));
  });

  it('reads lengths in any of their units as mm', () => {
    const xml = EXAMPLE.replaceAll('\\newton\\metre', '\\micro\\metre');
    expect(read(xml)).toMatchObject({
      ok: true,
      value: { unit: 'mm', points: [{ reading: 0.01004, expanded: 0.0001 }, {}, {}, {}] },
    });
  });

  it.each<[string, string, string]>([
    ['another root', changed(/digitalCalibrationCertificate/g, 'invoice'), 'root'],
    ['no serial number', changed(/<dcc:identification [\s\S]*<\/dcc:identification>/, ''), 'serial number'],
    ['no date', changed(/<dcc:(?:begin|end)PerformanceDate>[^<]*<\/dcc:\w+>/g, ''), 'endPerformanceDate'],
    ['two items', changed('</dcc:items>', '<dcc:item/></dcc:items>'), '2 items'],
    [
      'no uncertainty',
      changed(/<si:measurementUncertainty[\s\S]*?<\/si:measurementUncertainty\w+>/, ''),
      'no expanded uncertainty',
    ],
    ['lists of different length', changed('0.04 0.07 0.14 0.21', '0.04 0.07 0.14'), 'length'],
    ['a figure that is none', changed('10.04', 'ten'), 'no number'],
    [
      'no results',
      changed(/<dcc:measurementResults>[\s\S]*<\/dcc:measurementResults>/, ''),
      'measurementResults',
    ],
    [
      'degrees Celsius',
      EXAMPLE.replaceAll('\\newton\\metre', '\\degreecelsius'),
      'its points are degrees Celsius, not newton metres or millimetres',
    ],
    ['a unit that nobody knows', EXAMPLE.replaceAll('\\newton\\metre', '\\furlong'), 'in the unit \\furlong'],
    ['the wrong name space', EXAMPLE.replaceAll('https://ptb.de/dcc', 'https://example.org/dcc'), 'coreData'],
  ])('is refused for %s, and says what is missing', (_what, xml, said) => {
    expect(refused(xml)).toMatchObject({
      code: 'dcc-unreadable',
      where: 'w.xml',
      message: expect.stringContaining(said),
    });
  });

  it('is refused for an uncertainty of zero, with the field', () => {
    expect(refused(changed('0.10 0.16 0.27 0.42', '0.10 0 0.27 0.42'))).toMatchObject({
      code: 'certificate-not-valid',
      where: 'w.xml: points[1].expanded',
    });
  });
});

describe('hostile input', () => {
  const entities = `<!DOCTYPE x [<!ENTITY a "aaaaaaaaaa"><!ENTITY b "&a;&a;&a;&a;&a;&a;">]>`;

  it.each<[string, string]>([
    ['entities', EXAMPLE.replace('?>', `?>${entities}`)],
    ['entities in other letters', EXAMPLE.replace('?>', `?>${entities.toLowerCase()}`)],
    ['an external document type', EXAMPLE.replace('?>', '?><!DOCTYPE dcc SYSTEM "file:///etc/passwd">')],
    ['an entity that is not declared', EXAMPLE.replace('EXAMPLE-W-1', '&secret;')],
    ['two million characters', EXAMPLE + ' '.repeat(2_000_000)],
    ['nesting without end', `<a>`.repeat(60_000)],
    ['deep nesting that closes', `${'<a>'.repeat(60_000)}${'</a>'.repeat(60_000)}`],
    ['tags that do not close', EXAMPLE.slice(0, 1500)],
    ['nothing', ''],
    ['no XML at all', 'MZ\u0000\u0001'],
  ])('%s is refused and does no harm', (_what, xml) => {
    const began = performance.now();
    expect(refused(xml)).toMatchObject({ code: 'dcc-unreadable', where: 'w.xml' });
    expect(performance.now() - began).toBeLessThan(4000);
  });

  it('is never more than a refusal', () => {
    const cut = fc.tuple(fc.nat(EXAMPLE.length), fc.nat(60), fc.string({ maxLength: 20 }));
    fc.assert(
      fc.property(cut, ([at, length, text]) => {
        const out = read(EXAMPLE.slice(0, at) + text + EXAMPLE.slice(at + length));
        if (out.ok) for (const { expanded } of out.value.points) expect(expanded).toBeGreaterThan(0);
        else expect(out.error.where).toContain('w.xml');
      }),
      { numRuns: 150 },
    );
  });
});
