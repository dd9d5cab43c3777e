/** Answers about the station itself: doctor, keys, log, backups, devices, profiles, specifications. */
import { z } from 'zod';
import type { Checked } from '../../../db/backup.ts';
import type { TextFault } from '../../../db/check-texts.ts';
import type { Recovered } from '../../../db/recover.ts';
import type { Candidate } from '../../../drivers/bluetooth/survey.ts';
import type { Frame } from '../../../drivers/profile/frame.ts';
import type { Profile } from '../../../drivers/profile/schema.ts';
import { thumbprint } from '../../evidence/jwk.ts';
import type { Finding as Held } from '../../evidence/kept-checkpoints.ts';
import type { StationState } from '../../evidence/station.ts';
import { personalKindSchema } from '../../personal.ts';
import type { Finding } from '../station/health/finding.ts';
import { answer, count, quantity, reason, time } from './answer.ts';

export const doctorAnswer = answer('doctor', {
  sound: z.boolean().describe('Nothing is bad.'),
  findings: z
    .array(
      z.strictObject({
        name: z.string().describe('What was looked at.'),
        state: z
          .enum(['good', 'warning', 'bad'])
          .describe('Good, something less is possible like this, or plugmark cannot work like this.'),
        text: z.string().describe('What was seen.'),
        next: z.string().exactOptional().describe('What to do; with everything that is not good.'),
      }),
    )
    .describe('What was looked at, in this order.'),
}).describe('What "plugmark doctor --json" prints.');

export type DoctorAnswer = {
  readonly form: 'plugmark/doctor/1';
  readonly sound: boolean;
  readonly findings: readonly Finding[];
};

const revoked = z
  .strictObject({
    from: time.describe('From when on.'),
    reason: z
      .enum(['retired', 'lost', 'compromised'])
      .describe('Why. A `compromised` key may have signed under any date.'),
  })
  .nullable()
  .describe('Not to be believed any more; null where it was not revoked.');

export const keysListAnswer = answer('keys-list', {
  station: z
    .array(
      z.strictObject({
        kid: z.string().describe('Thumbprint of the key (RFC 7638).'),
        since: time.describe('When the station took it.'),
        until: time.nullable().describe('When the next key took its place; null where none did.'),
        signs: z.boolean().describe('The station signs with it now.'),
        revoked,
      }),
    )
    .describe('Keys of the station, the earliest first.'),
  people: z
    .array(
      z.strictObject({
        person: z.string().describe('Name of the technician.'),
        kid: z
          .string()
          .nullable()
          .describe('Thumbprint of the key (RFC 7638); null where there is none any more.'),
        revoked,
        earlier: z
          .array(z.strictObject({ kid: z.string().describe('Thumbprint of the key (RFC 7638).'), revoked }))
          .describe('Keys that this person signed with before.'),
      }),
    )
    .describe('Keys of technicians; a name that was forgotten is `withheld`.'),
  technicians: z
    .enum(['sign', 'do-not-sign'])
    .nullable()
    .describe('Whether technicians sign; null where nothing was decided: whoever has a key signs.'),
  trustList: z.string().describe("File of the station's trust list."),
}).describe('What "plugmark keys list --json" prints.');

export function listedKeys(state: StationState, trustList: string): z.infer<typeof keysListAnswer> {
  const revokedOf = (kid: string | null) => (kid === null ? undefined : state.revoked.get(kid)) ?? null;
  return {
    form: 'plugmark/keys-list/1',
    station: state.keys.map(({ kid, since }, i) => {
      const until = state.keys[i + 1]?.since ?? null;
      return { kid, since, until, signs: until === null && !state.revoked.has(kid), revoked: revokedOf(kid) };
    }),
    people: state.people.map(({ name, key, earlierKeys }) => {
      const kid = key === null ? null : thumbprint(key);
      const earlier = earlierKeys
        .map((jwk) => thumbprint(jwk))
        .map((one) => ({ kid: one, revoked: revokedOf(one) }));
      return { person: name, kid, revoked: revokedOf(kid), earlier };
    }),
    technicians: state.technicians,
    trustList,
  };
}

/** A checkpoint that was kept, held against the log. */
const checkpoint = z.strictObject({
  entries: count.describe('How many entries of the log it stands for.'),
  finding: z
    .enum(['extends', 'other-log', 'not-signed', 'cut', 'diverged'])
    .describe(
      'The log begins with these entries; it is of another log; no key of this station signed it; entries are gone; or entries were changed, removed or added.',
    ),
  from: count.nullable().describe('The first entry that may be concerned; null where none is.'),
  to: count.nullable().describe('The last entry that may be concerned; null where none is.'),
});
const checkpointOf = (held: Held): z.infer<typeof checkpoint> => ({
  entries: held.size,
  finding: held.kind,
  from: 'from' in held ? held.from : null,
  to: 'to' in held ? held.to : null,
});

export const logCheckAnswer = answer('log-check', {
  entries: count.describe('How many entries the log has.'),
  fault: z
    .strictObject({
      entry: count.describe('Number of the entry.'),
      message: z.string().describe('What is wrong with it.'),
    })
    .nullable()
    .describe('The first entry that is not as it was written; null where all are.'),
  texts: z
    .array(
      z.strictObject({
        entry: count.describe('Number of the entry.'),
        fault: z
          .enum(['missing', 'back', 'strange'])
          .describe(
            '`missing`: deleted, and not with "plugmark forget". `back`: forgotten, and there again. `strange`: it belongs to nothing in the entry.',
          ),
        kind: personalKindSchema.nullable().describe('What it is about; null where nobody can tell.'),
      }),
    )
    .describe('Personal texts that are not as the log says; no proof rests on them.'),
  checkpoints: z
    .array(checkpoint)
    .describe('Kept checkpoints, those of the station first; empty where an entry is at fault.'),
}).describe('What "plugmark log check --json" prints.');

export const checkedLog = (
  entries: number,
  fault: { readonly seq: number; readonly message: string } | null,
  texts: readonly TextFault[],
  held: readonly Held[],
): z.infer<typeof logCheckAnswer> => ({
  form: 'plugmark/log-check/1',
  entries,
  fault: fault && { entry: fault.seq, message: fault.message },
  texts: texts.map(({ seq, fault: what, kind }) => ({ entry: seq, fault: what, kind })),
  checkpoints: held.map(checkpointOf),
});

export const backupAnswer = answer('backup', {
  file: z.string().describe('File of the copy.'),
  entries: count.describe('How many entries it holds.'),
  jobs: count.describe('How many jobs it holds.'),
  lastAt: time.nullable().describe('Time of its last entry; null where it has none.'),
}).describe('What "plugmark backup --json" prints.');

export const backedUp = (file: string, { entries, jobs, lastAt }: Checked): z.infer<typeof backupAnswer> => ({
  form: 'plugmark/backup/1',
  file,
  entries,
  jobs,
  lastAt,
});

export const recoverAnswer = answer('recover', {
  file: z.string().describe('File of the new log.'),
  entries: count.describe('How many entries it holds.'),
  fromRecords: count.describe('How many of them came from records.'),
  fromRecordsAlone: z.boolean().describe('Nothing could be read of the damaged log.'),
  leftOut: z
    .array(z.string())
    .describe('Records that were not used: they cannot be read, or are not known to be of this log.'),
  lost: z
    .array(
      z.strictObject({
        from: count.describe('The first entry.'),
        to: count.describe('The last entry.'),
      }),
    )
    .describe('Entries that nothing holds any more.'),
  beside: z
    .strictObject({
      entries: count.describe('How many there are.'),
      file: z.string().nullable().describe('Their file; null where there are none.'),
    })
    .describe('Entries behind the first gap, in a file of their own.'),
  cutJobs: z.array(z.string()).describe('Jobs that the new log holds in part or not at all.'),
  checkpoints: z.array(checkpoint).describe('Signed checkpoints, held against the new log.'),
}).describe('What "plugmark recover --json" prints.');

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
  devices: z
    .array(
      z.strictObject({
        address: z.string().describe('Its Bluetooth address.'),
        name: z.string().describe('The name that it sends.'),
        kind: z.string().describe('What it says that it is; `unknown` where it says nothing.'),
        rssiDbm: z
          .number()
          .nullable()
          .describe('Strength of its signal in dBm; null where it is not measured.'),
        services: z.array(z.string()).describe('UUIDs of the services that it announces.'),
        serial: z.string().nullable().describe('Its serial number; null where it was not read.'),
        noSerial: reason
          .nullable()
          .describe('Why its serial number was not read; null where it was or nobody asked.'),
      }),
    )
    .describe('Devices in reach, the strongest first.'),
}).describe('What "plugmark devices scan --json" prints.');

export type ScanAnswer = z.infer<typeof devicesScanAnswer>;
export type DeviceAnswer = ScanAnswer['devices'][number];
export const deviceOf = (
  { address, name, kind, rssi, services }: Candidate,
  serial: Pick<DeviceAnswer, 'serial' | 'noSerial'>,
): DeviceAnswer => ({ address, name, kind, rssiDbm: rssi ?? null, services: [...services], ...serial });

export const driverCheckAnswer = answer('driver-check', {
  title: z.string().describe('Title of the profile.'),
  source: z.string().describe('Where the profile comes from.'),
  quantity,
  link: z.enum(['bluetooth-le', 'serial']).describe('How the device is reached.'),
  service: z
    .string()
    .nullable()
    .describe('UUID of the service that the readings come from; null of a serial port.'),
  characteristic: z
    .string()
    .nullable()
    .describe('UUID of the characteristic that the readings come from; null of a serial port.'),
  frames: z
    .array(
      z.strictObject({
        bytes: z.string().describe('The frame, in hexadecimal.'),
        counter: count.nullable().describe('Its counter; null where the profile has none.'),
        noValue: z.string().nullable().describe('Why it has no value; null where it has one.'),
        unit: z.string().nullable().describe('The unit that the frame tells; null where it tells none.'),
        torquesNm: z
          .array(z.number().nullable())
          .exactOptional()
          .describe('Of a wrench: its torques in N·m; null where the device sent none.'),
        anglesDeg: z
          .array(z.number().nullable())
          .exactOptional()
          .describe('Of a wrench that sends its angle: the angles in degrees; null where it sent none.'),
        gapsMm: z
          .array(z.number().nullable())
          .exactOptional()
          .describe('Of a gauge: its gaps in mm; null where the device sent none.'),
      }),
    )
    .describe('The frames that the profile reads in the bytes.'),
}).describe('What "plugmark driver check --json" prints.');

export const checkedProfile = (
  { title, source, quantity, link }: Profile,
  frames: readonly {
    readonly bytes: string;
    readonly frame: Frame;
    readonly values: readonly (number | null)[];
    readonly anglesDeg: readonly (number | null)[] | undefined;
  }[],
): z.infer<typeof driverCheckAnswer> => ({
  form: 'plugmark/driver-check/1',
  title,
  source,
  quantity,
  link: link.kind,
  service: link.kind === 'serial' ? null : link.service,
  characteristic: link.kind === 'serial' ? null : link.characteristic,
  frames: frames.map(({ bytes, frame, values, anglesDeg }) => ({
    bytes,
    counter: frame.counter ?? null,
    noValue: frame.noValue ?? null,
    unit: frame.unit ?? null,
    ...(quantity === 'torque' ? { torquesNm: [...values] } : { gapsMm: [...values] }),
    ...(anglesDeg !== undefined && { anglesDeg: [...anglesDeg] }),
  })),
});
