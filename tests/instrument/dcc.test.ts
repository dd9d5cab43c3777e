import { existsSync, readdirSync, readFileSync } from 'node:fs';
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
    [
      'two instruments of which none is asked for',
      changed(
        '</dcc:items>',
        `<dcc:item><dcc:identifications><dcc:identification><dcc:issuer>manufacturer</dcc:issuer><dcc:value>W-2</dcc:value></dcc:identification></dcc:identifications></dcc:item></dcc:items>`,
      ),
      '"EXAMPLE-W-1", "W-2"',
    ],
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

  const REFERENCE = String.raw`<si:valueXMLList>10.00 20.00 36.00 60.00</si:valueXMLList>
                  <si:unitXMLList>\newton\metre</si:unitXMLList>`;
  const READINGS = REFERENCE.replace('10.00 20.00 36.00 60.00', '10.04 20.07 36.14 60.21');
  const noErrors = (xml: string) => xml.replace(ERROR_QUANTITY, '');
  const uncertain = `<si:expandedUnc><si:uncertaintyXMLList>0.1 0.16 0.27 0.42</si:uncertaintyXMLList>
    <si:coverageFactorXMLList>2</si:coverageFactorXMLList></si:expandedUnc>`;

  it.each<[string, string, string]>([
    [
      'readings in N·m with reference values in mm',
      noErrors(changed(REFERENCE, REFERENCE.replace('\\newton\\metre', '\\milli\\metre'))),
      'do not go together',
    ],
    [
      'fewer reference values than readings',
      noErrors(changed('10.00 20.00 36.00 60.00', '10.00 20.00 36.00')),
      'do not go together',
    ],
    [
      'one list in several units',
      changed(READINGS, READINGS.replace('\\newton\\metre', '\\newton\\metre \\milli\\newton\\metre')),
      'several units',
    ],
    ['a figure with words behind it', changed('60.21', '60.21x'), 'no number'],
    ['a figure with a comma', changed('60.21', '60,21'), 'no number'],
    ['no item', changed(/<dcc:item>[\s\S]*<\/dcc:item>/, ''), '0 items'],
    ['no number', changed(/<dcc:uniqueIdentifier>.*<\/dcc:uniqueIdentifier>/, ''), 'uniqueIdentifier'],
    [
      'no laboratory',
      changed(/<dcc:calibrationLaboratory>[\s\S]*<\/dcc:calibrationLaboratory>/, ''),
      'laboratory',
    ],
    [
      'errors of another number of points',
      changed('0.04 0.07 0.14 0.21', '0.04 0.07 0.14 0.21 0.3'),
      'differ in length',
    ],
    [
      'a list of coverage factors that is too short',
      changed('<si:coverageFactorXMLList>2<', '<si:coverageFactorXMLList>2 2<'),
      'k',
    ],
  ])('is refused for %s', (_what, xml, said) => {
    const problem = refused(xml);
    expect(`${problem?.message} ${problem?.where}`).toContain(said);
  });

  it('works out readings that are not printed from references and errors', () => {
    const xml = changed(/<dcc:quantity refType="basic_measuredValue">[\s\S]*?<\/dcc:quantity>/, '');
    expect(read(xml)).toEqual(read(EXAMPLE));
  });

  it('takes the uncertainty where it stands: with the errors, else with the readings, else with the references', () => {
    const at = (piece: string) => noErrors(changed(piece, piece + uncertain));
    for (const piece of [READINGS, REFERENCE]) expect(read(at(piece))).toEqual(read(EXAMPLE));
  });

  it('goes by the end of the calibration, else by its beginning', () => {
    const day = (xml: string) => {
      const out = read(xml);
      return out.ok ? out.value.date : out.error.message;
    };
    expect(day(changed('<dcc:beginPerformanceDate>2026-03-16', '<dcc:beginPerformanceDate>2026-03-14'))).toBe(
      '2026-03-16',
    );
    expect(
      day(
        changed(/<dcc:endPerformanceDate>.*/, '').replace(
          '<dcc:beginPerformanceDate>2026-03-16',
          '<dcc:beginPerformanceDate>2026-03-14',
        ),
      ),
    ).toBe('2026-03-14');
  });

  it('knows the serial number by its type, else by its maker, and no other number for it', () => {
    const serial = (xml: string) => {
      const out = read(xml);
      return out.ok ? out.value.serial : out.error.message;
    };
    const other = `<dcc:identification refType="basic_inventory"><dcc:issuer>customer</dcc:issuer><dcc:value>INV-9</dcc:value></dcc:identification>`;
    expect(serial(changed('<dcc:identifications>', `<dcc:identifications>${other}`))).toBe('EXAMPLE-W-1');
    const untyped = changed(' refType="basic_serialNumber"', '');
    expect(serial(untyped)).toBe('EXAMPLE-W-1');
    expect(serial(untyped.replace('>manufacturer<', '>customer<'))).toContain('serial number');
  });

  it('of a hybrid takes the unit that it knows, wherever that stands', () => {
    const list = (unit: string, values: string) =>
      `<si:realListXMLList><si:valueXMLList>${values}</si:valueXMLList><si:unitXMLList>${unit}</si:unitXMLList></si:realListXMLList>`;
    const ours = list('\\newton\\metre', '10.04 20.07 36.14 60.21');
    const other = list('\\pound\\foot', '7.4 14.8 26.7 44.4');
    for (const hybrid of [other + ours, ours + other])
      expect(
        read(
          changed(
            /(<dcc:quantity refType="basic_measuredValue">)[\s\S]*?(<\/dcc:quantity>)/,
            `$1<si:hybrid>${hybrid}</si:hybrid>$2`,
          ),
        ),
      ).toEqual(read(EXAMPLE));
  });

  it('of two quantities of one kind takes the first', () => {
    const again = String.raw`<dcc:quantity refType="basic_measurementError"><si:realListXMLList><si:valueXMLList>9 9 9 9</si:valueXMLList><si:unitXMLList>\newton\metre</si:unitXMLList></si:realListXMLList></dcc:quantity></dcc:list>`;
    expect(read(changed('</dcc:list>', again))).toEqual(read(EXAMPLE));
  });

  it('of two serial numbers takes the first', () => {
    const two = changed(
      '</dcc:identifications>',
      `<dcc:identification refType="basic_serialNumber"><dcc:issuer>owner</dcc:issuer><dcc:value>W-9</dcc:value></dcc:identification></dcc:identifications>`,
    );
    expect(read(two)).toEqual(read(EXAMPLE));
  });

  it('passes over a table that holds errors, or readings, and nothing to go with them', () => {
    const alone = (refType: string) =>
      changed(
        '<dcc:list refType="gp_table1">',
        String.raw`<dcc:list><dcc:quantity refType="${refType}"><si:real><si:value>1</si:value><si:unit>\newton\metre</si:unit></si:real></dcc:quantity></dcc:list><dcc:list refType="gp_table1">`,
      );
    for (const refType of ['basic_measurementError', 'basic_measuredValue', 'basic_referenceValue'])
      expect(read(alone(refType))).toEqual(read(EXAMPLE));
  });

  it('passes over quantities in units that it does not know, such as a temperature', () => {
    const warm = String.raw`<dcc:quantity refType="basic_measuredValue"><si:real><si:value>21</si:value><si:unit>\degreecelsius</si:unit></si:real></dcc:quantity>`;
    expect(read(changed('<dcc:list refType="gp_table1">', `<dcc:list refType="gp_table1">${warm}`))).toEqual(
      read(EXAMPLE),
    );
  });

  it('reads thousandths of a newton metre, and metres', () => {
    const first = (unit: string) => {
      const out = read(EXAMPLE.replaceAll('\\newton\\metre', unit));
      return out.ok ? [out.value.unit, out.value.points[0]] : out.error.message;
    };
    expect(first('\\milli\\newton\\metre')).toEqual([
      'N.m',
      { reading: 0.01004, error: 0.00004, expanded: 0.0001, k: 2 },
    ]);
    expect(first('\\metre')).toEqual(['mm', { reading: 10040, error: 40, expanded: 100, k: 2 }]);
    expect(first('\\milli\\metre')).toEqual(['mm', { reading: 10.04, error: 0.04, expanded: 0.1, k: 2 }]);
  });

  it('is refused for an uncertainty of zero, with the field', () => {
    expect(refused(changed('0.10 0.16 0.27 0.42', '0.10 0 0.27 0.42'))).toMatchObject({
      code: 'certificate-not-valid',
      where: 'w.xml: points[1].expanded',
    });
  });
});

describe('a certificate as laboratories write them', () => {
  const points = (xml: string, serials: readonly string[] = []) => {
    const out = certificateFromDcc(xml, 'w.xml', serials);
    return out.ok ? out.value.points : out.error.message;
  };
  const ours = points(EXAMPLE);

  it('with a coverage factor other than 2 keeps it', () => {
    expect(points(changed('<si:coverageFactorXMLList>2<', '<si:coverageFactorXMLList>2.13<'))).toEqual(
      (ours as readonly object[]).map((point) => ({ ...point, k: 2.13 })),
    );
  });

  it('with a standard uncertainty gives twice of it as U', () => {
    const xml = changed(
      /<si:expandedMUXMLList>[\s\S]*<\/si:expandedMUXMLList>/,
      '<si:standardMUXMLList><si:valueStandardMUXMLList>0.05 0.08 0.135 0.21</si:valueStandardMUXMLList></si:standardMUXMLList>',
    );
    expect(points(xml)).toEqual(ours);
  });

  it.each(['\\lbf\\ft', '\\poundforce\\foot', '\\foot\\poundforce', 'lbf·ft', 'lbf ft', 'ft-lb'])(
    'in %s is read in N·m: 1 lbf·ft is 1.3558 N·m',
    (unit) => {
      const [first] = points(EXAMPLE.replaceAll('\\newton\\metre', unit)) as readonly Record<
        string,
        number
      >[];
      expect(first?.['reading']).toBeCloseTo(10.04 * 1.3558179483, 8);
      expect(first?.['expanded']).toBeCloseTo(0.1 * 1.3558179483, 8);
    },
  );

  /** The measurement twice, named after its direction; that which comes first has the errors times ten. */
  const bothWays = (first: string, second: string) => {
    const [measurement = ''] = /<dcc:measurementResult>[\s\S]*<\/dcc:measurementResult>/.exec(EXAMPLE) ?? [];
    const named = (name: string) => measurement.replace('>clockwise<', `>${name}<`);
    return EXAMPLE.replace(
      measurement,
      named(first).replace('0.04 0.07 0.14 0.21', '0.4 0.7 1.4 2.1') + named(second),
    );
  };

  it.each([
    ['counter-clockwise', 'clockwise'],
    ['anticlockwise', 'clockwise'],
    ['Linkslauf', 'Rechtslauf'],
    ['gegen den Uhrzeigersinn', 'im Uhrzeigersinn'],
  ])('with %s before %s is read clockwise', (back, forth) => {
    expect(points(bothWays(back, forth))).toEqual(ours);
    expect(points(bothWays(forth, back))).not.toEqual(ours);
  });

  it('with counter-clockwise points alone is refused, because plugs are tightened clockwise', () => {
    expect(points(changed('>clockwise<', '>counter-clockwise<'))).toContain('counter-clockwise');
  });

  it('with both directions in one table leaves out those below zero', () => {
    const xml = changed('10.04 20.07 36.14 60.21', '10.04 20.07 36.14 -60.21');
    expect(points(xml)).toEqual((ours as readonly object[]).slice(0, 3));
  });

  it('with all but one of its points below zero is refused by a point below zero, not for having too few', () => {
    const xml = changed('10.04 20.07 36.14 60.21', '10.04 -20.07 -36.14 -60.21');
    expect(refused(xml)).toMatchObject({ where: 'w.xml: points[1].reading' });
    expect(points(changed('10.04 20.07 36.14 60.21', '0 20.07 -36.14 -60.21'))).toHaveLength(2);
  });

  it('with a part that is listed below its item is still for one instrument', () => {
    const part = `<dcc:subItems><dcc:item><dcc:identifications><dcc:identification refType="basic_serialNumber"><dcc:value>PART-1</dcc:value></dcc:identification></dcc:identifications></dcc:item></dcc:subItems>`;
    const out = read(changed('</dcc:item>', `${part}</dcc:item>`));
    expect(out).toEqual(read(EXAMPLE));
  });

  it('is read without the space around its texts', () => {
    const spaced = EXAMPLE.replace('>EXAMPLE-W-1<', '>\n   EXAMPLE-W-1  <')
      .replace('>EXAMPLE-2026-0117<', '> EXAMPLE-2026-0117 <')
      .replace('>10.04 20.07 36.14 60.21<', '>  10.04\n 20.07   36.14\t60.21 <');
    expect(read(spaced)).toEqual(read(EXAMPLE));
  });

  it.each([
    ['refType="basic_counterclockwise"', 'list'],
    ['id="linksgang"', 'list'],
    ['refType="ccw_run"', 'measurementResult'],
    ['id="run-ccw"', 'result'],
  ])('with %s on its %s is for the other direction', (attribute, element) => {
    const xml = EXAMPLE.replace('>clockwise<', '>run 1<').replace(
      new RegExp(`<dcc:${element}(?: refType="gp_table1")?>`),
      `<dcc:${element} ${attribute}>`,
    );
    expect(points(xml)).toContain('counter-clockwise');
  });

  it('goes by the nearest word for the direction, and by none above its results', () => {
    const inner = changed('<dcc:list refType="gp_table1">', '<dcc:list refType="cw">').replace(
      '>clockwise<',
      '>counter-clockwise<',
    );
    expect(points(inner)).toEqual(ours);
    const outer = changed('>clockwise<', '>run 1<').replace(
      '<dcc:measurementResults>',
      '<dcc:measurementResults id="ccw">',
    );
    expect(points(outer)).toEqual(ours);
  });

  it('measured up and down gives one point a reading, whose U reaches over both', () => {
    const [first, ...others] = points(
      changed('10.04 20.07 36.14 60.21', '10.04 10.04 36.14 60.21'),
    ) as readonly Record<string, number>[];
    // -0.06 to 0.14 and -0.09 to 0.23
    expect(first).toEqual({ reading: 10.04, error: 0.07, expanded: 0.16, k: 2 });
    expect(others).toHaveLength(2);
  });

  it('of a tool that was adjusted gives what holds since, not what was found before', () => {
    const before = `<dcc:influenceConditions><dcc:influenceCondition refType="basic_adjustment">
      <dcc:status>beforeAdjustment</dcc:status><dcc:data>
      ${(/<dcc:list refType="gp_table1">[\s\S]*<\/dcc:list>/.exec(EXAMPLE) ?? [''])[0].replace('0.04 0.07 0.14 0.21', '0.9 0.9 0.9 0.9')}
      </dcc:data></dcc:influenceCondition></dcc:influenceConditions>`;
    expect(points(changed('<dcc:results>', `${before}<dcc:results>`))).toEqual(ours);
  });

  it('for a display and its sensor is read for the one that is asked for', () => {
    const two = changed(
      '</dcc:items>',
      `<dcc:item><dcc:identifications><dcc:identification><dcc:issuer>manufacturer</dcc:issuer><dcc:value>SENSOR-1</dcc:value></dcc:identification></dcc:identifications></dcc:item></dcc:items>`,
    );
    const serial = (wanted: string) => {
      const out = certificateFromDcc(two, 'w.xml', [wanted]);
      return out.ok ? out.value.serial : out.error.message;
    };
    expect(serial('SENSOR-1')).toBe('SENSOR-1');
    expect(serial('EXAMPLE-W-1')).toBe('EXAMPLE-W-1');
    expect(serial('OTHER')).toContain('give the tool');
  });

  it('of schema 2, without types, is known by the names of its quantities', () => {
    const named = (name: string) =>
      `<dcc:quantity><dcc:name><dcc:content lang="en">${name}</dcc:content></dcc:name>`;
    const old = (xml: string) =>
      xml
        .replace('schemaVersion="3.3.0"', 'schemaVersion="2.4.0"')
        .replace('<dcc:quantity refType="basic_referenceValue">', named('reference value'))
        .replace('<dcc:quantity refType="basic_measuredValue">', named('indicated value'))
        .replace('<dcc:quantity refType="basic_measurementError">', named('error of indication'))
        .replace(/<(\/?)si:measurementUncertaintyUnivariateXMLList>/g, '')
        .replaceAll('expandedMUXMLList', 'expandedUncXMLList')
        .replaceAll('valueExpandedMUXMLList', 'uncertaintyXMLList');
    expect(points(old(EXAMPLE))).toEqual(ours);
    const german = old(EXAMPLE)
      .replace('>reference value<', '>Bezugswert<')
      .replace('>indicated value<', '>Anzeige<')
      .replace('>error of indication<', '>Messabweichung<');
    expect(points(german)).toEqual(ours);
  });
});

const PUBLIC = new URL('../../../shared/data/dcc/', import.meta.url);
const publicFiles = existsSync(PUBLIC) ? readdirSync(PUBLIC).filter((name) => name.endsWith('.xml')) : [];

describe.skipIf(publicFiles.length === 0)(
  'public examples (not in this repository; skipped where they are not beside it)',
  () => {
    const text = (name: string) => readFileSync(new URL(name, PUBLIC), 'utf8');
    const inNewtonMetres = (xml: string) =>
      xml.replace(/<si:(unit(?:XMLList)?)>[^<]*</g, '<si:$1>\\newton\\metre<');

    it.each(publicFiles)(
      '%s is of another kind of instrument, and is refused by the name of its unit',
      (name) => {
        expect(refused(text(name))?.message).toMatch(/degrees Celsius|per cent|kilograms/);
      },
    );

    // The silicon sphere has one mass, without anything that it was compared with.
    it.each(publicFiles.filter((name) => !name.startsWith('siliziumkugel')))(
      '%s is read once its units are exchanged',
      (name) => {
        const out = certificateFromDcc(inNewtonMetres(text(name)), name, ['123456789 Ma']);
        expect(out).toMatchObject({ ok: true, value: { unit: 'N.m' } });
        expect(out.ok && out.value.points.length).toBeGreaterThan(3);
      },
    );
  },
);

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
    expect(refused(xml)).toMatchObject({ code: 'dcc-unreadable', where: 'w.xml' });
  });

  it('is read up to a million characters, and no further', () => {
    const long = (characters: number) => EXAMPLE.padEnd(characters);
    expect(read(long(1 << 20)).ok).toBe(true);
    expect(refused(long((1 << 20) + 1))?.message).toContain('too large');
  });

  it('is looked through for its first hundred tables, and no further', () => {
    const empty = (count: number) =>
      changed(
        '<dcc:list refType="gp_table1">',
        `${'<dcc:list/>'.repeat(count)}<dcc:list refType="gp_table1">`,
      );
    expect(read(empty(99))).toEqual(read(EXAMPLE));
    expect(refused(empty(100))?.message).toContain('no result holds readings');
  });

  it('a fault of the program itself is thrown, and not put down to the document', () => {
    expect(() => read(undefined as unknown as string)).toThrow(TypeError);
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
