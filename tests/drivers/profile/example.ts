import { readFileSync } from 'node:fs';
import { parseProfile } from '../../../drivers/profile/file.ts';
import type { Profile } from '../../../drivers/profile/schema.ts';
import { good } from '../bench.ts';

const text = (name: string) => readFileSync(new URL(`../../../sim/example/${name}`, import.meta.url), 'utf8');

export const wrenchProfile = (): Profile =>
  good(parseProfile(text('profile-wrench.json'), 'profile-wrench.json'));
export const gaugeProfile = (): Profile =>
  good(parseProfile(text('profile-gauge.json'), 'profile-gauge.json'));
/** The wrench's profile as JSON, to be spoilt. */
export const rawProfile = (): Record<string, unknown> => JSON.parse(text('profile-wrench.json'));
