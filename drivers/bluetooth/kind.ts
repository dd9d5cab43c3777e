import { APPEARANCE, SERVICE } from '../imds/numbers.ts';
import type { Sighting } from '../radio/radio.ts';

const WORDS: ReadonlyMap<number, string> = new Map([
  [APPEARANCE.industrialMeasurementDevice, 'measurement device'],
  [APPEARANCE.torqueTestingDevice, 'torque testing device'],
  [APPEARANCE.caliper, 'caliper'],
  [APPEARANCE.dialIndicator, 'dial indicator'],
  [APPEARANCE.micrometer, 'micrometer'],
  [APPEARANCE.heightGauge, 'height gauge'],
  [APPEARANCE.forceGauge, 'force gauge'],
  [APPEARANCE.industrialTool, 'industrial tool'],
  [APPEARANCE.torqueWrench, 'torque wrench'],
  [APPEARANCE.torqueScrewdriver, 'torque screwdriver'],
]);

/** What a device says it is, by its appearance (Assigned Numbers 2.6.3), else by the service that it offers. */
export function kindOf({ appearance, services }: Pick<Sighting, 'appearance' | 'services'>): string {
  const word = appearance === undefined ? undefined : WORDS.get(appearance);
  if (word !== undefined) return word;
  if (services.includes(SERVICE.industrialMeasurement)) return 'measurement device';
  return appearance === undefined ? 'unknown' : `appearance 0x${appearance.toString(16).padStart(4, '0')}`;
}
