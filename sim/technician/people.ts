import { CAREFUL, type Habits, HURRIED } from './habits.ts';

/** The technicians that can be asked for by name. The shares are assumptions. */
export const PEOPLE = {
  careful: CAREFUL,
  hurried: { ...HURRIED, skips: 0, checks: 0, overlooks: 0 },
  'clicks-twice': { ...CAREFUL, clicksTwice: 0.4 },
  'stops-short': { ...CAREFUL, stopsShort: 0.4 },
  overpulls: { ...CAREFUL, overpulls: 0.25 },
  skips: { ...CAREFUL, skips: 1 },
  /** A bit of everything that can be put right. */
  mixed: {
    hurries: 0.1,
    clicksTwice: 0.1,
    stopsShort: 0.12,
    overpulls: 0.06,
    knocks: 0.08,
    loosensWithWrench: 0.3,
    skips: 0,
    checks: 0,
    overlooks: 0,
  },
  /** Goes back to plugs that are done. */
  checks: { ...CAREFUL, checks: 0.25 },
  /** Stops short and does not notice. */
  overlooks: { ...CAREFUL, stopsShort: 0.3, overlooks: 0.7 },
  /** Everything at once. */
  careless: { ...HURRIED, clicksTwice: 0.15, stopsShort: 0.15, knocks: 0.2, skips: 0.5, overlooks: 0.5 },
} as const satisfies Readonly<Record<string, Habits>>;

export type PersonName = keyof typeof PEOPLE;

export const isPerson = (name: string): name is PersonName => Object.hasOwn(PEOPLE, name);
