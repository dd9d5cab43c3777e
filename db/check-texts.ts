/** Whether the personal texts beside the entries are those that the log accounts for: each is there, or was forgotten. */
import type { Database } from 'better-sqlite3';
import { z } from 'zod';
import { isStationEntry } from '../src/evidence/entry.ts';
import { forgottenIn } from '../src/evidence/forgotten.ts';
import type { AnyEntry, StationEntry } from '../src/evidence/log.ts';
import { saltedTexts } from '../src/evidence/sharing.ts';
import type { PersonalKind } from '../src/personal.ts';
import { TEXTS_AN_ENTRY } from './entries.ts';

/**
 * `missing`: no entry says that it was forgotten. `back`: one does, and the text is there. `strange`: it lies where no entry
 * has a text. No proof rests on any of them.
 */
export interface TextFault {
  readonly fault: 'missing' | 'back' | 'strange';
  readonly seq: number;
  /** What it is about; null where nobody can tell. */
  readonly kind: PersonalKind | null;
}

interface TextChecker {
  /** Takes the entries one after another. */
  add(entry: AnyEntry): void;
  /** Once all were taken, in the order of the log. */
  faults(): readonly TextFault[];
}

export function textChecker(db: Database): TextChecker {
  const isThere = db.prepare('SELECT 1 FROM disclosures WHERE place = ?').pluck();
  const missing = new Map<number, TextFault>();
  const due = dueTexts(db);
  const forgetting: StationEntry[] = [];
  return {
    add(entry) {
      if (isStationEntry(entry) && entry.event.type === 'texts-forgotten') forgetting.push(entry);
      if (entry.concealed.length === 0) return;
      const { seq } = entry;
      for (const [i, { kind, salt }] of saltedTexts(entry).entries()) {
        const place = seq * TEXTS_AN_ENTRY + i;
        if (salt === null) missing.set(place, { fault: 'missing', seq, kind });
        else due.take(place);
      }
    },
    faults() {
      const back: TextFault[] = [];
      for (const [seq, texts] of forgottenIn(forgetting))
        for (const [text, kind] of texts) {
          const place = seq * TEXTS_AN_ENTRY + text;
          if (missing.get(place)?.kind === kind) missing.delete(place);
          if (isThere.get(place) !== undefined) back.push({ fault: 'back', seq, kind });
        }
      return [...missing.values(), ...back, ...due.strange()].sort((a, b) => a.seq - b.seq);
    },
  };
}

const PLACES_A_PAGE = 10_000;

/** Goes through the places of the table beside those that are due, both in order. */
function dueTexts(db: Database) {
  const page = db.prepare('SELECT place FROM disclosures WHERE place > ? ORDER BY place LIMIT ?').pluck();
  const strange: number[] = [];
  let places: readonly number[] = [];
  let at = 0;
  let before = -1;
  const next = (): number | null => {
    if (at === places.length) {
      places = z.array(z.int()).parse(page.all(before, PLACES_A_PAGE));
      at = 0;
    }
    return places[at] ?? null;
  };
  const step = (place: number) => {
    before = place;
    at++;
  };
  return {
    take(place: number) {
      for (let there = next(); there !== null && there <= place; there = next()) {
        step(there);
        if (there < place) strange.push(there);
      }
    },
    strange(): readonly TextFault[] {
      for (let there = next(); there !== null; there = next()) {
        step(there);
        strange.push(there);
      }
      return strange.map((place) => ({
        fault: 'strange',
        seq: Math.floor(place / TEXTS_AN_ENTRY),
        kind: null,
      }));
    },
  };
}
