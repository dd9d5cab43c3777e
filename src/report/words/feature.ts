import type { PlugFeature } from '../../plug/feature.ts';
import { phrases } from '../../words/catalogue.ts';

export const FEATURE_WORDS: Readonly<Record<PlugFeature, string>> = phrases({
  thread: 'thread',
  pitch: 'pitch',
  reach: 'reach',
  seat: 'seat',
  hex: 'hexagon',
  'heat-range': 'heat range',
  resistor: 'resistor',
});

export const featuresText = (features: readonly PlugFeature[]): string =>
  features.map((feature) => FEATURE_WORDS[feature]).join(', ');
