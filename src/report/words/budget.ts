/** The lines of an uncertainty budget in words. */
import type { InstrumentInUse } from '../../instrument/instrument.ts';
import type { AmountSource, Cause } from '../../metrology/term.ts';

export const CAUSE_WORDS: Readonly<Record<Cause, string>> = {
  calibration: 'calibration',
  'calibration-extrapolated': 'calibration, beyond its points',
  'uncorrected-error': 'error, not corrected',
  drift: 'drift since calibration',
  'permissible-deviation': 'permissible deviation',
  'class-laboratory': 'check against its class',
  resolution: 'resolution',
  repeatability: 'repeatability',
  peak: 'peak of the pull',
  'adapter-arm': 'arm of the wrench',
  'adapter-offset': 'offset of the adapter',
  'adapter-angle': 'angle of the adapter',
  'flex-joint': 'joint on the wrench',
  temperature: 'temperature',
  drive: 'square drive',
  'hand-position': 'position of the hand',
  joint: 'hardness of the joint',
  other: 'other',
  'turn-reading': 'step, drift and noise of the angle',
  'turn-tool': 'angle of the tool',
  contact: 'where the plug made contact',
  'wind-up': 'wind-up of the tools',
};

/** Where the amount of a line comes from. */
export function amountSourceWords(source: AmountSource): string {
  switch (source.kind) {
    case 'certificate':
      return `certificate ${source.number}, ${source.laboratory}`;
    case 'station-file':
      return source.basis;
    case 'own-readings':
      return `${source.count} readings, ${source.basis}`;
    case 'device':
      return OF_DEVICE;
    case 'step':
      return 'step of the readings';
    case 'samples':
      return 'its samples and its zero';
    case 'adapter':
      return 'measured on the adapter';
    case 'usual-share':
      return 'a quarter of the limit, not stated';
    case 'bend':
      return 'its bend';
    case 'work-order':
      return source.basis;
    case 'assumption':
      return 'assumed, because nobody states it';
  }
}

const OF_DEVICE = 'published by the device itself';

/** Where the promise of an instrument without a certificate comes from. */
export const promiseWords = ({ basis, promiseOfDevice }: InstrumentInUse): string =>
  promiseOfDevice === true ? OF_DEVICE : basis;
