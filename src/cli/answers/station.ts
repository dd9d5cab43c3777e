/** Answers about the station itself: doctor, keys, log, backups, devices, profiles, specifications. */
import { z } from 'zod';
import type { Checked } from '../../../db/backup.ts';
import type { Recovered } from '../../../db/recover.ts';
import type { Candidate } from '../../../drivers/bluetooth/survey.ts';
import type { Packet } from '../../../drivers/profile/packet.ts';
import type { Profile } from '../../../drivers/profile/schema.ts';
import { thumbprint } from '../../evidence/jwk.ts';
import type { Finding as Held } from '../../evidence/kept-checkpoints.ts';
import type { StationState } from '../../evidence/station.ts';
import type { Finding } from '../station/health/finding.ts';
import { answer, count, quantity, reason, time } from './answer.ts';

export const doctorAnswer = answer('doctor', {
  sound: z.boolean(),
  findings: z.array(
    z.strictObject({
      name: z.string(),
      state: z.enum(['good', 'warning', 'bad']),
      text: z.string(),
      next: z.string().exactOptional(),
    }),
  ),
});

export type DoctorAnswer = {
  readonly form: 'plugmark/doctor/1';
  readonly sound: boolean;
  readonly findings: readonly Finding[];
};

const revoked = z.strictObject({ from: time, reason: z.enum(['retired', 'lost', 'compromised']) }).nullable();

export const keysListAnswer = answer('keys-list', {
  station: z.array(
    z.strictObject({ kid: z.string(), since: time, until: time.nullable(), signs: z.boolean(), revoked }),
  ),
  people: z.array(z.strictObject({ person: z.string(), kid: z.string().nullable(), revoked })),
  /** Null: nothing was decided; who has a key signs. */
  technicians: z.enum(['sign', 'do-not-sign']).nullable(),
  trustList: z.string(),
});

export function listedKeys(state: StationState, trustList: string): z.infer<typeof keysListAnswer> {
  const revokedOf = (kid: string | null) => (kid === null ? undefined : state.revoked.get(kid)) ?? null;
  return {
    form: 'plugmark/keys-list/1',
    station: state.keys.map(({ kid, since }, i) => {
      const until = state.keys[i + 1]?.since ?? null;
      return { kid, since, until, signs: until === null && !state.revoked.has(kid), revoked: revokedOf(kid) };
    }),
    people: [...state.people].map(([person, jwk]) => {
      const kid = jwk === null ? null : thumbprint(jwk);
      return { person, kid, revoked: revokedOf(kid) };
    }),
    technicians: state.technicians,
    trustList,
  };
}

/** A checkpoint that was kept, held against the log. */
const checkpoint = z.strictObject({
  entries: count,
  finding: z.enum(['extends', 'other-log', 'not-signed', 'cut', 'diverged']),
  /** The first and the last entry that may be concerned. */
  from: count.nullable(),
  to: count.nullable(),
});
const checkpointOf = (held: Held): z.infer<typeof checkpoint> => ({
  entries: held.size,
  finding: held.kind,
  from: 'from' in held ? held.from : null,
  to: 'to' in held ? held.to : null,
});

export const logCheckAnswer = answer('log-check', {
  entries: count,
  /** The first entry that is not as it was written; null where all are. */
  fault: z.strictObject({ entry: count, message: z.string() }).nullable(),
  /** Those of the station first; empty where an entry is at fault. */
  checkpoints: z.array(checkpoint),
});

export const checkedLog = (
  entries: number,
  fault: { readonly seq: number; readonly message: string } | null,
  held: readonly Held[],
): z.infer<typeof logCheckAnswer> => ({
  form: 'plugmark/log-check/1',
  entries,
  fault: fault && { entry: fault.seq, message: fault.message },
  checkpoints: held.map(checkpointOf),
});

export const backupAnswer = answer('backup', {
  file: z.string(),
  entries: count,
  jobs: count,
  lastAt: time.nullable(),
});

export const backedUp = (file: string, { entries, jobs, lastAt }: Checked): z.infer<typeof backupAnswer> => ({
  form: 'plugmark/backup/1',
  file,
  entries,
  jobs,
  lastAt,
});

export const recoverAnswer = answer('recover', {
  file: z.string(),
  entries: count,
  fromRecords: count,
  fromRecordsAlone: z.boolean(),
  /** Records that are not known to be of this log. */
  leftOut: z.array(z.string()),
  /** Stretches of entries that nothing holds any more. */
  lost: z.array(z.strictObject({ from: count, to: count })),
  /** Entries behind the first gap, in a file of their own. */
  beside: z.strictObject({ entries: count, file: z.string().nullable() }),
  cutJobs: z.array(z.string()),
  checkpoints: z.array(checkpoint),
});

export const recovered = (
  report: Recovered,
  file: string,
  beside: string,
  unread: readonly string[],
): z.infer<typeof recoverAnswer> => ({
  form: 'plugmark/recover/1',
  file,
  entries: report.kept,
  fromRecords: report.fromRecords,
  fromRecordsAlone: report.fromRecordsAlone,
  leftOut: [...unread, ...report.leftOut],
  lost: report.lost.map(({ from, to }) => ({ from, to })),
  beside: { entries: report.beside, file: report.beside === 0 ? null : beside },
  cutJobs: [...report.cutJobs],
  checkpoints: report.checkpoints.map(checkpointOf),
});

export const devicesScanAnswer = answer('devices-scan', {
  devices: z.array(
    z.strictObject({
      address: z.string(),
      name: z.string(),
      kind: z.string(),
      rssiDbm: z.number().nullable(),
      services: z.array(z.string()),
      serial: z.string().nullable(),
      /** Why its serial number was not read. */
      noSerial: reason.nullable(),
    }),
  ),
});

export type ScanAnswer = z.infer<typeof devicesScanAnswer>;
export type DeviceAnswer = ScanAnswer['devices'][number];
export const deviceOf = (
  { address, name, kind, rssi, services }: Candidate,
  serial: Pick<DeviceAnswer, 'serial' | 'noSerial'>,
): DeviceAnswer => ({ address, name, kind, rssiDbm: rssi ?? null, services: [...services], ...serial });

export const driverCheckAnswer = answer('driver-check', {
  title: z.string(),
  source: z.string(),
  quantity,
  /** The characteristic that the readings come from. */
  service: z.string(),
  characteristic: z.string(),
  packets: z.array(
    z.strictObject({
      bytes: z.string(),
      counter: count.nullable(),
      noValue: z.string().nullable(),
      /** One of these two, by the quantity; null where the device sent no value. */
      torquesNm: z.array(z.number().nullable()).exactOptional(),
      gapsMm: z.array(z.number().nullable()).exactOptional(),
    }),
  ),
});

export const checkedProfile = (
  profile: Profile,
  packets: readonly {
    readonly bytes: string;
    readonly packet: Packet;
    readonly values: readonly (number | null)[];
  }[],
): z.infer<typeof driverCheckAnswer> => ({
  form: 'plugmark/driver-check/1',
  title: profile.title,
  source: profile.source,
  quantity: profile.quantity,
  service: profile.readings.service,
  characteristic: profile.readings.characteristic,
  packets: packets.map(({ bytes, packet, values }) => ({
    bytes,
    counter: packet.counter ?? null,
    noValue: packet.noValue ?? null,
    ...(profile.quantity === 'torque' ? { torquesNm: [...values] } : { gapsMm: [...values] }),
  })),
});
