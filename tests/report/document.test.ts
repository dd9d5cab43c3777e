import { expect, test } from 'vitest';
import { collected, newSheet } from '../../src/report/document.ts';
import { ANYBODY } from '../../src/report/reader.ts';

test('the title of a document holds nothing that its XML may not, or that turns the line', async () => {
  const title = 'Record <J-1>\u0001\u001b[2J\u202e of &';
  const sheet = await newSheet({
    title,
    program: 'plugmark',
    drawnBy: 'plugmark',
    madeAt: new Date(0),
    marks: [],
    reader: ANYBODY,
  });
  expect(sheet.doc.info.Title).toBe('Record  J-1 [2J of  ');
  const pdf = Buffer.from(await collected(sheet.doc)).toString('utf8');
  const [, said] = /<dc:title>[\s\S]*?<rdf:li[^>]*>([^<]*)</.exec(pdf) ?? [];
  expect(said).toBe('Record  J-1 [2J of  ');
});
