import { createHash } from 'node:crypto';
import { w } from '../words/catalogue.ts';
import { drawBack, qrText } from './back.ts';
import { drawCustomerSheet } from './customer-drawing.ts';
import { collected, newSheet } from './document.ts';
import type { FontSources } from './fonts/fonts.ts';
import { drawFront } from './front.ts';
import { drawFurniture } from './furniture.ts';
import { drawHead } from './head.ts';
import type { ReportModel } from './model.ts';
import { qrSquares } from './qr.ts';
import { ANYBODY, madeFor, type PaperReader } from './reader.ts';
import { type Doc, PAGE } from './sheet.ts';

/** The signed record that the PDF carries inside it. */
export interface Attachment {
  /** Left out, the PDF says that it carries no record. */
  readonly recordBytes?: Uint8Array;
  /** File name of the record, for example `JOB-7.plugmark.json`. */
  readonly recordName: string;
  /** Whether what the paper's own fonts lack is drawn with those of the machine; then the bytes depend on the machine. */
  readonly fonts?: FontSources;
  /** Whom the model was made for: pages and model are in one language. */
  readonly reader?: PaperReader;
  /** The program that draws; that of the record unless given. */
  readonly drawnBy?: string;
}

/**
 * The record as a tagged PDF, A4. The same model and record give the same bytes.
 * Throws when the record's bytes do not have the digest that the pages print, which only a bug can bring about.
 */
export async function writePdf(
  model: ReportModel,
  { recordBytes, recordName, fonts = 'own', drawnBy, reader = ANYBODY }: Attachment,
): Promise<Uint8Array> {
  if (recordBytes !== undefined && sha256(recordBytes) !== model.fingerprint.digest)
    throw new Error('the record to attach does not have the digest that the report prints');
  const attachedAs = recordBytes === undefined ? null : safeName(recordName);
  const madeAt = new Date(model.madeAt);
  const { program, marks } = model;
  const title = madeFor(reader, () => w`Spark plug job record ${model.job}`);
  const sheet = await newSheet({ title, program, drawnBy: drawnBy ?? program, madeAt, marks, fonts, reader });
  const { page } = model.customer.shop;
  const codeText = madeFor(reader, () => qrText(model));
  const qr = await qrSquares(codeText);
  const forCustomer = page === '' ? qr : await qrSquares(page);
  madeFor(reader, () => {
    drawCustomerSheet(sheet, model, {
      qr: forCustomer,
      qrWords: page === '' ? codeText : page,
      attached: attachedAs !== null,
    });
    sheet.doc.addPage();
    sheet.y = PAGE.top;
    drawHead(sheet, model);
    drawFront(sheet, model);
    drawBack(sheet, model, qr, attachedAs);
    const footer = w`Job ${model.job} · Record SHA-256 ${model.fingerprint.digest.slice(0, 16)}...`;
    drawFurniture(sheet, { footer, program, marks });
    if (recordBytes !== undefined && attachedAs !== null)
      attach(sheet.doc, recordBytes, { name: attachedAs, madeAt });
  });
  sheet.root.end();
  return collected(sheet.doc);
}

/** A file name without folders or characters that any file system refuses. */
function safeName(name: string): string {
  return name.replace(/[^A-Za-z0-9._-]+/g, '_').replace(/^\.+/, '') || 'record.json';
}

function attach(
  doc: Doc,
  bytes: Uint8Array,
  { name, madeAt }: { readonly name: string; readonly madeAt: Date },
): void {
  const options = {
    name,
    type: 'application/json',
    description: w`The signed record that these pages are a reading of`,
    relationship: 'Source',
    creationDate: madeAt,
    modifiedDate: madeAt,
  };
  doc.file(Buffer.from(bytes), options);
}

function sha256(bytes: Uint8Array): string {
  return createHash('sha256').update(bytes).digest('hex');
}
