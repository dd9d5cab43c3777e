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
    { title: 'Cautions', sentences: model.cautions },
    { title: 'What this document proves, and what it does not', sentences: model.proves },
  ];
  sectionsAbreast(sheet, parts, { size: 7.5 });
  fingerprint(sheet, model, qr, attachedAs);
}

function traces(sheet: Sheet, model: ReportModel): void {
  const element = section(sheet, 'Torque over time, every pull given to a cylinder', PLOT_LINE + 24);
  if (model.plots.length === 0) {
    paragraph(sheet, element, 'No pull was given to a cylinder.');
    return;
  }
  const words = legend(sheet, model.torqueWindow.limits, model.torqueWindow.acceptance);
  const placed = { x: PAGE.left + 12, y: sheet.y, width: TEXT_WIDTH - 12, size: 7, colour: GREY };
  sheet.y += text(sheet, element, 'P', words, placed) + 4;
  drawPlots(sheet, element, model.plots, model.torqueWindow.figures);
}

const QR_SIZE = 92;

/** The text inside the QR code: lines that a person can compare with the paper. */
export function qrText(model: ReportModel): string {
  const { digest, signers } = model.fingerprint;
  return `job ${model.job}\nrecord sha-256 ${digest}\nsigned by ${signers.join(', ')}`;
}

function fingerprint(sheet: Sheet, model: ReportModel, qr: QrSquares, attachedAs: string | null): void {
  const element = section(sheet, 'Fingerprint', QR_SIZE);
  const { y } = sheet;
  const width = TEXT_WIDTH - QR_SIZE - 12;
  const lines = group(sheet, element, 'Div');
  const say = (content: string, mono = false) => {
    const placed = { x: PAGE.left, y: sheet.y, width, size: 8, mono, colour: INK };
    sheet.y += text(sheet, lines, 'P', content, placed) + 1.5;
  };
  say('SHA-256 of the signed record:');
  say(inGroups(model.fingerprint.digest), true);
  const { signers, technician, log } = model.fingerprint;
  say(`Signed with the keys of these thumbprints (RFC 7638); ${technician}:`);
  for (const signer of signers) say(signer, true);
  if (log !== null) {
    say(`Root of the station log of ${log.size} entries, as signed in the record's checkpoint:`);
    say(inGroups(log.root), true);
  }
  say(
    attachedAs === null
      ? 'The signed record is not attached to this file. Ask for it: these pages alone prove nothing.'
      : `The signed record is attached to this file as ${attachedAs}. Save it, compute its SHA-256 and compare; then check the signature with the program or any JOSE library.`,
  );
  if (sheet.lacking)
    say('□ stands for a character that no font here has. The signed record contains the character itself.');
  const box = { x: PAGE.left + TEXT_WIDTH - QR_SIZE, y, width: QR_SIZE, height: QR_SIZE };
  drawQr(
    sheet,
    element,
    qr,
    `QR code of the job, the SHA-256 of the record and the key: ${qrText(model)}`,
    box,
  );
  sheet.y = Math.max(sheet.y, y + QR_SIZE);
}

/** Sixty-four digits in groups of eight, so that two people can compare them aloud. */
function inGroups(digest: string): string {
  return (digest.match(/.{1,8}/g) ?? []).join(' ');
}
