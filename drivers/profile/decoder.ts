import { byteDecoder } from './byte-decoder.ts';
import { type Scaling, scalingOf } from './figure.ts';
import type { Decoder } from './frame.ts';
import type { Layout } from './layout-schema.ts';
import { textDecoder } from './text-decoder.ts';

/** The one decoder of a layout: data in, steps out, no code of anybody's in between. */
export const decoderOf = (layout: Layout): Decoder =>
  layout.of === 'bytes' ? byteDecoder(layout) : textDecoder(layout);

/** How the values of a profile that has been checked become counts. */
export function valueScaling(layout: Layout): Scaling {
  const scaling = scalingOf(layout, 'value');
  if (scaling === undefined) throw new Error('a checked layout has a value');
  return scaling;
}
