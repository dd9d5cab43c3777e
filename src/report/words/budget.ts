/** The lines of an uncertainty budget in words. */
import type { InstrumentInUse } from '../../instrument/instrument.ts';
import type { AmountSource, Cause } from '../../metrology/term.ts';
import { phrases, w } from '../../words/catalogue.ts';

export const CAUSE_WORDS: Readonly<Record<Cause, string>> = phrases({
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
});

/** Where the amount of a line comes from. */
export function amountSourceWords(source: AmountSource): string {
  switch (source.kind) {
    case 'certificate':
      return w`certificate ${source.number}, ${source.laboratory}`;
    case 'station-file':
      return source.basis;
    case 'own-readings':
      return w`${source.count} readings, ${source.basis}`;
    case 'device':
      return ofDevice();
    case 'step':
      return w`step of the readings`;
    case 'samples':
      return w`its samples and its zero`;
    case 'adapter':
      return w`measured on the adapter`;
    case 'usual-share':
      return w`a quarter of the limit, not stated`;
    case 'bend':
      return w`its bend`;
    case 'work-order':
      return source.basis;
    case 'assumption':
      return w`assumed, because nobody states it`;
  }
}

const ofDevice = (): string => w`published by the device itself`;

/** Where the promise of an instrument without a certificate comes from. */
export const promiseWords = ({ basis, promiseOfDevice }: InstrumentInUse): string =>
  promiseOfDevice === true ? ofDevice() : basis;
