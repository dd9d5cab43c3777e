import type { Mark } from '../job/proof.ts';
import { clean } from './clean.ts';
import { type FontSources, registerFonts } from './fonts/fonts.ts';
import { WITH_MACHINE_FONTS } from './fonts/lacking.ts';
import { drawBackground } from './furniture.ts';
import { madeFor, type PaperReader } from './reader.ts';
import { type Doc, PAGE, type Sheet } from './sheet.ts';
import { unitsAsKeyword } from './units-keyword.ts';
import { marksText } from './words/index.ts';

/**
 * A tagged PDF/A-3b, A4, at the top of its first page. The same calls give the same bytes: no clock, and streams are not
 * compressed, because two versions of zlib may pack the same text differently.
 */
export async function newSheet(about: {
  readonly title: string;
  readonly program: string;
  /** The program that draws, which may be a later one than made the record. */
  readonly drawnBy: string;
  readonly madeAt: Date;
  readonly marks: readonly Mark[];
  readonly fonts?: FontSources;
  readonly reader: PaperReader;
}): Promise<Sheet> {
  const { default: PDFDocument } = await import('pdfkit');
  const { reader } = about;
  const mark = madeFor(reader, () => marksText(about.marks));
  const producer = xmlSafe(`${about.drawnBy}, pdfkit`);
  const doc = new PDFDocument({
    size: [PAGE.width, PAGE.height],
    margin: 0,
    autoFirstPage: false,
    bufferPages: true,
    compress: false,
    pdfVersion: '1.7',
    subset: 'PDF/A-3b',
    // None: pdfkit would begin with one that is not embedded, and the file would claim what it is not.
    font: '',
    tagged: true,
    lang: reader.dictionary.language,
    displayTitle: true,
    info: {
      Title: xmlSafe(`${mark === '' ? '' : `${mark}: `}${clean(about.title)}`),
      Creator: xmlSafe(about.program),
      Producer: producer,
      Keywords: unitsAsKeyword(reader.units),
      CreationDate: about.madeAt,
    },
  });
  const fontFor = await registerFonts(doc, about.fonts ?? 'own', () => {
    doc.info.Producer = producer + WITH_MACHINE_FONTS;
  });
  const root = doc.struct('Document');
  doc.addStructure(root);
  doc.appendXML(languageXml(reader.dictionary.language));
  doc.on('pageAdded', () => drawBackground(doc, about.marks));
  madeFor(reader, () => doc.addPage());
  return { doc, root, y: PAGE.top, lacking: false, fontFor };
}

/** Beside what pdfkit writes of title and program (XMP, Dublin Core). */
const languageXml = (language: string) => `
        <rdf:Description rdf:about="" xmlns:dc="http://purl.org/dc/elements/1.1/">
            <dc:language><rdf:Bag><rdf:li>${language}</rdf:li></rdf:Bag></dc:language>
        </rdf:Description>
        `;

/** pdfkit copies title and creator into XML as they stand. */
function xmlSafe(text: string): string {
  return text.replace(/[<>&]/g, ' ');
}

/** The bytes of a document whose pages are drawn. */
export async function collected(doc: Doc): Promise<Uint8Array> {
  const chunks: Uint8Array[] = [];
  doc.on('data', (chunk: Uint8Array) => chunks.push(chunk));
  const ended = new Promise<void>((resolve, reject) => {
    doc.on('end', resolve);
    doc.on('error', reject);
  });
  doc.end();
  await ended;
  return Buffer.concat(chunks);
}
