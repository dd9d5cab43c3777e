/** The calibration calendar as iCalendar (RFC 5545), for any calendar program. */
import { toHex, utf8 } from '../evidence/platform/bytes.ts';
import { sha256 } from '../evidence/platform/hash.ts';
import { ENGLISH, inLanguage } from '../words/catalogue.ts';
import { type CalendarLine, cyclesAre, USUAL_MONTHS } from './calendar.ts';

/** Octets in a line, its end not counted (3.1). */
const LINE_OCTETS = 75;
const ALARM_DAYS = 14;

/**
 * One all-day event for each instrument that has a due day; today where that is over. `madeAt` is an ISO time; `station`
 * names the calendar.
 */
export function icalendar(lines: readonly CalendarLine[], station: string, madeAt: string): string {
  const events = lines.flatMap((line) => (line.due === null ? [] : eventOf(line, line.due, station, madeAt)));
  const all = [
    'BEGIN:VCALENDAR',
    'VERSION:2.0',
    'PRODID:-//plugmark//calibration calendar//EN',
    'CALSCALE:GREGORIAN',
    ...events,
    'END:VCALENDAR',
  ];
  return all.map((line) => `${folded(line)}\r\n`).join('');
}

function eventOf(line: CalendarLine, due: string, station: string, madeAt: string): readonly string[] {
  const name = line.serial === null ? line.tool : `${line.tool} ${line.serial}`;
  const today = madeAt.slice(0, 10);
  const overdue = due < today;
  const facts = [
    overdue ? `Overdue since ${due}.` : '',
    line.onDataSheetSince === null
      ? `Certificate ${line.certificate ?? 'none'}, calibrated ${line.calibrated ?? 'never'}.`
      : `No certificate; on its data sheet since ${line.onDataSheetSince}.`,
    line.byUsualMonths ? `Nobody named a day: ${USUAL_MONTHS} months are usual.` : '',
    line.cycleLimit === null
      ? `${line.cycles} cycles since.`
      : `${line.cycles} of ${line.cycleLimit} cycles used.`,
    inLanguage(ENGLISH, cyclesAre),
    line.outOfTolerance === null
      ? ''
      : `Out of tolerance on ${line.outOfTolerance.on}, impact assessment ${line.outOfTolerance.impact}: due now.`,
    line.next === null ? '' : `By what was found, the next interval is ${line.next.days} days.`,
  ];
  return [
    'BEGIN:VEVENT',
    `UID:${uidOf(`${station}/${name}/${line.certificate ?? ''}`)}@plugmark.invalid`,
    `DTSTAMP:${utc(madeAt)}`,
    `DTSTART;VALUE=DATE:${(overdue ? today : due).replaceAll('-', '')}`,
    `SUMMARY:${escaped(`${overdue ? 'OVERDUE: calibrate' : 'Calibrate'} ${name}`)}`,
    `DESCRIPTION:${escaped(facts.filter((one) => one !== '').join('\n'))}`,
    'TRANSP:TRANSPARENT',
    'BEGIN:VALARM',
    'ACTION:DISPLAY',
    `DESCRIPTION:${escaped(`${name} is due for calibration`)}`,
    trigger(due, madeAt),
    'END:VALARM',
    'END:VEVENT',
  ];
}

/** Days ahead; an hour after the calendar was written where that is over, because an alarm in the past never sounds. */
function trigger(due: string, madeAt: string): string {
  const madeMs = Date.parse(madeAt);
  return Date.parse(due) - ALARM_DAYS * DAY_MS > madeMs
    ? `TRIGGER:-P${ALARM_DAYS}D`
    : `TRIGGER;VALUE=DATE-TIME:${utc(new Date(madeMs + HOUR_MS).toISOString())}`;
}

const HOUR_MS = 3_600_000;
const DAY_MS = 24 * HOUR_MS;
const utc = (at: string) => at.replace(/[-:]/g, '').replace(/\.\d+Z$/, 'Z');

/** The same for the same instrument and certificate, so that an import again replaces the event. */
const uidOf = (name: string) => toHex(sha256(utf8(name))).slice(0, 32);

/** 3.3.11: backslash, semicolon, comma and line break; other control characters have no place in a text. */
function escaped(text: string): string {
  return text
    .replace(/[\\;,]/g, (character) => `\\${character}`)
    .replace(/\r\n|\r|\n/g, '\\n')
    .replace(/\p{Cc}/gu, ' ');
}

/** 3.1: no line is longer than 75 octets; a longer one goes on behind a line break and a space, never inside a character. */
function folded(line: string): string {
  const parts: string[] = [];
  let part = '';
  let octets = 0;
  for (const character of line) {
    const more = utf8(character).length;
    if (octets + more > LINE_OCTETS) {
      parts.push(part);
      part = ' ';
      octets = 1;
    }
    part += character;
    octets += more;
  }
  return [...parts, part].join('\r\n');
}
