import { readFileSync } from 'node:fs';
import { bluetoothProfile, parseProfile, serialProfile } from '../../../drivers/profile/file.ts';
import type { Layout } from '../../../drivers/profile/layout-schema.ts';
import type { BluetoothProfile, Profile, SerialProfile } from '../../../drivers/profile/schema.ts';
import { good } from '../bench.ts';

const text = (name: string) => readFileSync(new URL(`../../../sim/example/${name}`, import.meta.url), 'utf8');
const read = (name: string) => good(parseProfile(text(name), name));

export const wrenchProfile = (): BluetoothProfile =>
  good(bluetoothProfile(read('profile-wrench.json'), 'profile-wrench.json'));
export const gaugeProfile = (): BluetoothProfile =>
  good(bluetoothProfile(read('profile-gauge.json'), 'profile-gauge.json'));
export const textProfile = (): SerialProfile =>
  good(serialProfile(read('profile-text.json'), 'profile-text.json'));
/** The wrench's profile as JSON, to be spoilt. */
export const rawProfile = (): Record<string, unknown> => JSON.parse(text('profile-wrench.json'));

/** The wrench's profile with other parts; throws where it is none. */
export const changed = (change: Record<string, unknown>): Profile =>
  good(parseProfile(JSON.stringify({ ...rawProfile(), ...change }), 'changed.json'));

/** A layout of bytes in the wrench's profile. */
export const inBytes = (
  fields: readonly Record<string, unknown>[],
  byteOrder: 'little' | 'big' = 'big',
): Layout => changed({ layout: { of: 'bytes', byteOrder, fields } }).layout;

export const inText = (fields: readonly Record<string, unknown>[]): Layout =>
  changed({ layout: { of: 'text', fields } }).layout;
