import { bluetoothTool } from '../../../drivers/bluetooth/tool.ts';
import { imds } from '../../../drivers/imds/language.ts';
import type { PeripheralDefinition } from '../../../sim/controller/index.ts';
import type { LinkDescription, Reading } from '../../../src/reading.ts';
import { type Bench, WRENCH, wrench } from '../bench.ts';

/** A wrench that tells its serial number only over a link with the security given. */
export function guarded(
  requires: 'encryption' | 'authentication',
  pairs?: PeripheralDefinition['pairs'],
): PeripheralDefinition {
  const plain = wrench();
  return {
    ...plain,
    ...(pairs !== undefined && { pairs }),
    services: plain.services.map((service) => ({
      ...service,
      characteristics: service.characteristics.map((one) =>
        one.uuid === 0x2a25 ? { ...one, requires } : one,
      ),
    })),
  };
}

/** The adopted wrench, and all that it was heard to say. */
export function listen({ radio, scheduler }: Pick<Bench, 'radio' | 'scheduler'>) {
  const tool = bluetoothTool({
    id: 'wrench',
    language: imds('torque'),
    adopted: WRENCH,
    radio,
    clock: scheduler,
    after: scheduler.after,
    random: () => 0.5,
  });
  const readings: Reading[] = [];
  const reasons: string[] = [];
  const linked: LinkDescription[] = [];
  const states: string[] = [];
  tool.readings$.subscribe((reading) => readings.push(reading));
  tool.link$.subscribe((link) => {
    states.push(link.state);
    if (link.state === 'not-joined') reasons.push(link.problem.message);
    if (link.state === 'linked') linked.push(link.description.link);
  });
  return { tool, readings, reasons, linked, states };
}
