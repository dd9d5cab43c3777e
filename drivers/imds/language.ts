import type { Quantity } from '../../src/reading.ts';
import { ok, orThrow, type Result } from '../../src/result.ts';
import type { Arrival } from '../bluetooth/counter.ts';
import type { Language, Opened, Opening, Unfit } from '../bluetooth/language.ts';
import type { Clock } from '../driver.ts';
import { describe } from './describe.ts';
import { FORMATS, type QuantityFormat, SERVICE } from './numbers.ts';
import { keepUnconfirmed } from './unconfirmed.ts';
import { decodeValue } from './value.ts';

/** The Bluetooth SIG's own language for such tools: the Industrial Measurement Device Service (0x185A). */
export function imds(quantity: Quantity): Language {
  const format = FORMATS[quantity];
  return {
    driver: 'imds',
    quantity,
    advertised: SERVICE.industrialMeasurement,
    services: [SERVICE.industrialMeasurement],
    open: (on) => open(format, on),
  };
}

async function open(
  format: QuantityFormat,
  { link, characteristics, clock, put }: Opening,
): Promise<Result<Opened, Unfit>> {
  const described = await describe(link, characteristics, format);
  if (!described.ok) return described;
  const { description, measurement, descriptors, unread } = described.value;
  const raw = (source: string, hex: string) => put({ kind: 'raw', atUs: clock.nowUs(), source, hex });
  for (const { source, hex } of unread) raw(source, hex);
  orThrow(await link.subscribe(measurement, (bytes) => put(arrivalOf(clock, format, bytes))));
  return ok({
    description,
    later: () =>
      keepUnconfirmed(link, characteristics, measurement, descriptors, (source, bytes) =>
        raw(source, hexOf(bytes)),
      ),
  });
}

/** Stamped here, in the turn in which the packet came in. */
function arrivalOf(clock: Clock, format: QuantityFormat, bytes: Uint8Array): Arrival {
  const atUs = clock.nowUs();
  const decoded = decodeValue(format, bytes);
  return decoded.ok
    ? { ...decoded.value, atUs }
    : { kind: 'raw', atUs, source: format.characteristic, hex: hexOf(bytes) };
}

const hexOf = (bytes: Uint8Array) => Buffer.from(bytes).toString('hex');
