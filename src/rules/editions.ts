/** From the name that a job signed to the edition of the rules that judges it. */
import { z } from 'zod';
import { load } from '../evidence/platform/program.ts';
import type { JobEvent } from '../job/event.ts';
import { editionIn, OPEN_EDITION } from '../job/rules.ts';
import { judgeAgain, outcomeOf } from './judge.ts';
import { againSchema, type Judge, outcomeSchema } from './judged.ts';

/** `newer`: only a later version of the program knows it. `unknown`: no version ever wrote that name. */
export type Edition = Judge | 'newer' | 'unknown';

const open: Judge = { judgeAgain, outcomeOf };

export function editionOf(rules: string): Edition {
  const edition = editionIn(rules);
  if (edition === null) return 'unknown';
  if (edition === OPEN_EDITION) return open;
  return edition < OPEN_EDITION ? closed(edition) : 'newer';
}

const loaded = new Map<number, Judge>();

function closed(edition: number): Judge {
  const before = loaded.get(edition);
  if (before !== undefined) return before;
  const judge = judgeIn(`./edition-${edition}/judge.js`, import.meta.url);
  loaded.set(edition, judge);
  return judge;
}

const functionSchema = z.custom<(events: readonly JobEvent[]) => unknown>(
  (value) => typeof value === 'function',
);
const moduleSchema = z.object({ judgeAgain: functionSchema, outcomeOf: functionSchema });

/** The judge in a bundle; loaded only when a record asks for it. */
export function judgeIn(bundle: string, from: string): Judge {
  const { judgeAgain, outcomeOf } = moduleSchema.parse(load(bundle, from));
  return {
    judgeAgain: (events) => againSchema.parse(judgeAgain(events)),
    outcomeOf: (events) => outcomeSchema.parse(outcomeOf(events)),
  };
}
