import { w } from '../words/catalogue.ts';
import type { CustomerSheet, OldPlugRow } from './customer-sheet.ts';
import { facts, warnings } from './head.ts';
import { type Logo, logoIn } from './logo.ts';
import type { ReportModel } from './model.ts';
import { drawQr, type QrSquares } from './qr.ts';
import {
  decoration,
  GREY,
  group,
  INK,
  PAGE,
  paragraph,
  room,
  type Sheet,
  section,
  TEXT_WIDTH,
  tagged,
  text,
} from './sheet.ts';
import { type Cell, type Column, startHeight, table } from './table.ts';
import { VERDICT_WORD } from './verdict.ts';

/** What the first page has besides the model. */
interface OfFile {
  readonly qr: QrSquares;
  readonly qrWords: string;
  /** Whether the record is inside, so that the file can be checked by itself. */
  readonly attached: boolean;
}

/** The first page, for the customer to keep. The proof is on those behind it. */
export function drawCustomerSheet(sheet: Sheet, model: ReportModel, ofFile: OfFile): void {
  title(sheet, model);
  warnings(sheet, model);
  twoColumns(sheet, model.customer);
  plugs(sheet, model);
  oldPlugs(sheet, model.customer);
  const next = section(sheet, w`Next change of the plugs`, 12);
  paragraph(sheet, next, model.customer.nextChange, { size: 9 });
  ending(sheet, model, ofFile);
}

const LOGO = { width: 126, height: 43 } as const;

function title(sheet: Sheet, model: ReportModel): void {
  const { name, address, page, logo } = model.customer.shop;
  const head = group(sheet, sheet.root, 'Sect');
  const top = sheet.y;
  const picture = logoIn(logo);
  let x: number = PAGE.left;
  if (picture !== null) x += drawLogo(sheet, picture, name, top) + 10;
  const boxX = PAGE.left + TEXT_WIDTH * 0.56;
  const width = boxX - x - 12;
  let y = top + text(sheet, head, 'P', name, { x, y: top, width, size: 13, bold: true, lines: 2 });
  for (const line of [...address, ...(page === '' ? [] : [page])])
    y += text(sheet, head, 'P', line, { x, y, width, size: 8, colour: GREY, lines: 1 });
  const boxWidth = PAGE.left + TEXT_WIDTH - boxX;
  const inBox = { x: boxX + 8, width: boxWidth - 16 };
  const word = text(sheet, head, 'P', model.status.word, {
    ...inBox,
    y: top + 4,
    size: 13,
    bold: true,
    lines: 2,
  });
  const body = text(sheet, head, 'P', model.status.text, { ...inBox, y: top + 4 + word, size: 8, lines: 3 });
  const height = word + body + 9;
  decoration(sheet, () => sheet.doc.lineWidth(1.4).rect(boxX, top, boxWidth, height).stroke(INK));
  sheet.y = Math.max(y, top + height, picture === null ? 0 : top + LOGO.height) + 8;
  const heading = { x: PAGE.left, y: sheet.y, width: TEXT_WIDTH, size: 17, bold: true, lines: 1 };
  sheet.y += text(sheet, head, 'H1', w`Spark plugs: job ${model.job}`, heading) + 4;
}

/** Returns the width that it took. */
function drawLogo(sheet: Sheet, { png, width, height }: Logo, name: string, y: number): number {
  const scale = Math.min(LOGO.width / width, LOGO.height / height);
  const [wide, high] = [width * scale, height * scale];
  const bbox = [PAGE.left, y, PAGE.left + wide, y + high];
  tagged(sheet, sheet.root, 'Figure', { alt: w`Logo of ${name}`, bbox, placement: 'Block' }, () => {
    sheet.doc.image(png, PAGE.left, y, { width: wide, height: high });
  });
  return wide;
}

function twoColumns(sheet: Sheet, { facts: all }: CustomerSheet): void {
  const element = group(sheet, sheet.root, 'Sect');
  const half = Math.ceil(all.length / 2);
  const width = TEXT_WIDTH / 2 - 6;
  const { y } = sheet;
  const left = facts(sheet, element, all.slice(0, half), PAGE.left, y, width);
  const right = facts(sheet, element, all.slice(half), PAGE.left + width + 12, y, width);
  sheet.y = y + Math.max(left, right);
}

function plugs(sheet: Sheet, model: ReportModel): void {
  const { positions, customer, torqueWindow, gapWindow } = model;
  const columns: readonly Column[] = [
    { title: positions.column, share: 60, heads: true },
    { title: w`Verdict`, share: 120 },
    { title: gapWindow === null ? w`Gap` : w`Gap, limits ${gapWindow.limits}`, share: 140, align: 'right' },
    { title: w`Torque, limits ${torqueWindow.limits}`, share: 140, align: 'right' },
  ];
  const rows = customer.plugs.map(({ position, verdict, gap, torque }): Cell[] => [
    { text: position, bold: true },
    { text: VERDICT_WORD[verdict], verdict, bold: verdict !== 'ok' },
    { text: gap },
    { text: torque },
  ]);
  const element = section(sheet, w`Each new plug`, startHeight(sheet, columns, rows));
  table(sheet, element, columns, rows);
  sheet.y += 3;
}

const oldColumns = (): readonly Column[] => [
  { title: w`Old plugs of`, share: 130, heads: true },
  { title: w`How they looked`, share: 170 },
  { title: w`What we recommend`, share: 220 },
];

function oldPlugs(sheet: Sheet, { oldPlugs: all }: CustomerSheet): void {
  if (all.length === 0) return;
  const columns = oldColumns();
  const rows = alike(all).map(([first, where]): Cell[] => [
    { text: where, bold: true },
    { text: first.looks, condition: first.condition },
    { text: first.advice || w`nothing` },
  ]);
  const element = section(sheet, w`What the old plugs showed`, startHeight(sheet, columns, rows));
  table(sheet, element, columns, rows);
  sheet.y += 3;
  const words = w`The look of a plug is a hint and no diagnosis.`;
  paragraph(sheet, element, words, { size: 7, colour: GREY });
}

/** Plugs that looked the same are one row. */
function alike(rows: readonly OldPlugRow[]): readonly (readonly [OldPlugRow, string])[] {
  const byLook = new Map<string, [OldPlugRow, string[]]>();
  for (const row of rows) {
    const there = byLook.get(row.looks);
    if (there === undefined) byLook.set(row.looks, [row, [row.position]]);
    else there[1].push(row.position);
  }
  return [...byLook.values()].map(([first, where]) => [first, where.join(', ')]);
}

const QR_SIZE = 74;
const BELOW = 106;

/** What the page is worth, the names that go under it, and the code, at the foot of the page. */
function ending(sheet: Sheet, model: ReportModel, { qr, qrWords, attached }: OfFile): void {
  room(sheet, BELOW);
  const element = group(sheet, sheet.root, 'Sect');
  const top = PAGE.height - PAGE.bottom - BELOW;
  const width = TEXT_WIDTH - QR_SIZE - 16;
  const worth = w`The figures behind each verdict, what they prove and what they do not, and the cautions are on the pages behind this one. The signed record is the evidence.`;
  const check = attached
    ? w`To check this file yourself, open the page verify.html in a browser and drop the file on it. Take the page from the shop, or from anybody who has plugmark.`
    : '';
  const y =
    top +
    text(sheet, element, 'P', `${worth} ${check}`.trim(), {
      x: PAGE.left,
      y: top,
      width,
      size: 7.5,
      colour: GREY,
      lines: 5,
    });
  const each = (width - 16) / model.customer.signatures.length;
  model.customer.signatures.forEach((name, i) => {
    const x = PAGE.left + i * (each + 16);
    const lineY = y + 44;
    decoration(sheet, () =>
      sheet.doc
        .lineWidth(0.6)
        .moveTo(x, lineY)
        .lineTo(x + each, lineY)
        .stroke(INK),
    );
    text(sheet, element, 'P', w`${name} (date, signature)`, {
      x,
      y: lineY + 3,
      width: each,
      size: 7.5,
      lines: 2,
    });
  });
  const box = { x: PAGE.left + TEXT_WIDTH - QR_SIZE, y: top, width: QR_SIZE, height: QR_SIZE };
  drawQr(sheet, element, qr, w`QR code: ${qrWords}`, box);
  const caption = {
    x: box.x - 20,
    y: top + QR_SIZE + 1,
    width: QR_SIZE + 20,
    size: 6,
    colour: GREY,
    lines: 2,
  };
  text(sheet, element, 'P', qrWords.split('\n')[0] ?? '', { ...caption, align: 'right' });
  sheet.y = PAGE.height - PAGE.bottom;
}
