import { createHash } from 'node:crypto';
import type { Profile } from './schema.ts';

/** The name of a driver that works by a profile, and exactly by which one: with the SHA-256 of what the profile says. */
export const driverBy = (driver: 'profile' | 'serial', profile: Profile): string =>
  `${driver}?checksum=sha256:${createHash('sha256').update(JSON.stringify(profile)).digest('hex')}`;
