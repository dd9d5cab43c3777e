/**
 * A Bluetooth LE controller with peripherals in software, to be put under a host stack in place of its HCI socket, so
 * that the whole of the host runs as it ships. Peripherals are data; simulations act on them through their handles.
 */
export { type Controller, type ControllerOptions, createController } from './controller.ts';
export type { PeripheralDefinition } from './definition.ts';
export type { HciSocketClass } from './hci-socket.ts';
export type { VirtualPeripheral } from './peripheral.ts';
export type { Uuid } from './uuid.ts';
