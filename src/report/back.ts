import { w } from '../words/catalogue.ts';
import type { ReportModel } from './model.ts';
import { drawPlots, legend, PLOT_LINE } from './plot-drawing.ts';
import { drawQr, type QrSquares } from './qr.ts';
import {
  GREY,
  group,
  INK,
  PAGE,
  paragraph,
  type Sheet,
  section,
  sectionsAbreast,
  TEXT_WIDTH,
  text,
} from './sheet.ts';

/** What it rests on: the pulls as curves, cautions, what it proves, and the fingerprint. */
export function drawBack(sheet: Sheet, model: ReportModel, qr: QrSquares, attachedAs: string | null): void {
  traces(sheet, model);
  const parts = [
    { title: w`Cautions`, sentences: model.cautions },
    { title: w`What this document proves, and what it does not`, sentences: model.proves },
  ];
  // Together with the fingerprint, so that no page holds nothing but that.
  sectionsAbreast(sheet, parts, { size: 7.5 }, FINGERPRINT);
  fingerprint(sheet, model, qr, attachedAs);
}

function traces(sheet: Sheet, model: ReportModel): void {
  const element = section(sheet, w`Torque over time, every pull given to a cylinder`, PLOT_LINE + 24);
  if (model.plots.length === 0) {
    paragraph(sheet, element, w`No pull was given to a cylinder.`);
    return;
  }
  const words = legend(sheet, model.torqueWindow.limits, model.torqueWindow.acceptance);
  const placed = { x: PAGE.left + 12, y: sheet.y, width: TEXT_WIDTH - 12, size: 7, colour: GREY };
  sheet.y += text(sheet, element, 'P', words, placed) + 4;
  drawPlots(sheet, element, model);
}

const QR_SIZE = 92;
/** With its heading and what may stand below the code. */
const FINGERPRINT = QR_SIZE + 44;

/** The text inside the QR code: lines that a person can compare with the paper. */
export function qrText(model: ReportModel): string {
  const { digest, signers } = model.fingerprint;
  return [w`job ${model.job}`, w`record SHA-256 ${digest}`, w`signed by ${signers.join(', ')}`].join('\n');
}

function fingerprint(sheet: Sheet, model: ReportModel, qr: QrSquares, attachedAs: string | null): void {
  const element = section(sheet, w`Fingerprint`, QR_SIZE);
  const { y } = sheet;
  const width = TEXT_WIDTH - QR_SIZE - 12;
  const lines = group(sheet, element, 'Div');
  const say = (content: string, mono = false) => {
    const placed = { x: PAGE.left, y: sheet.y, width, size: 8, mono, colour: INK };
    sheet.y += text(sheet, lines, 'P', content, placed) + 1.5;
  };
  for (const { words, mono } of fingerprintLines(model, { as: attachedAs })) say(words, mono);
  if (sheet.lacking)
    say(w`□ stands for a character that no font here has. The signed record contains the character itself.`);
  const box = { x: PAGE.left + TEXT_WIDTH - QR_SIZE, y, width: QR_SIZE, height: QR_SIZE };
  drawQr(
    sheet,
    element,
    qr,
    w`QR code of the job, the SHA-256 of the record and the key: ${qrText(model)}`,
    box,
  );
  sheet.y = Math.max(sheet.y, y + QR_SIZE);
}

/** What identifies the record behind these pages, line by line; digests and keys in letters of one width. */
export function fingerprintLines(
  { fingerprint }: ReportModel,
  /** The name of the file inside; null for none; `text` where there are no pages that could carry one. */
  attached: { readonly as: string | null } | 'text',
): readonly { readonly words: string; readonly mono: boolean }[] {
  const { digest, signers, technician, log, otherCopies } = fingerprint;
  const plain = (words: string) => ({ words, mono: false });
  const code = (words: string) => ({ words, mono: true });
  return [
    plain(w`SHA-256 of the signed record:`),
    code(inGroups(digest)),
    plain(w`Signed with the keys of these thumbprints (RFC 7638); ${technician}:`),
    ...signers.map(code),
    ...(log === null
      ? []
      : [
          plain(w`Root of the station log of ${log.size} entries, as signed in the record's checkpoint:`),
          code(inGroups(log.root)),
        ]),
    ...(attached === 'text' ? [] : [plain(attachedText(attached.as))]),
    ...(otherCopies === '' ? [] : [plain(otherCopies)]),
  ];
}

const attachedText = (name: string | null): string =>
  name === null
    ? w`The signed record is not attached to this file. Ask for it: these pages alone prove nothing.`
    : w`The signed record is attached to this file as ${name}. To check it, open the page verify.html in a browser and drop this file on it; it needs no network. Or save the record, compute its SHA-256 and compare; then check the signature with the program or any JOSE library.`;

/** Sixty-four digits in groups of eight, so that two people can compare them aloud. */
function inGroups(digest: string): string {
  return (digest.match(/.{1,8}/g) ?? []).join(' ');
}
