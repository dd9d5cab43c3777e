import { decoderOf } from '../../../drivers/profile/decoder.ts';
import type { Layout } from '../../../drivers/profile/layout-schema.ts';

export const bytes = (hex: string) => Buffer.from(hex.replaceAll(' ', ''), 'hex');
export const read = (layout: Layout, hex: string) => decoderOf(layout)(bytes(hex));
export const readText = (layout: Layout, text: string) => decoderOf(layout)(Buffer.from(text, 'latin1'));

export const NM = { is: 'value', scale: '0.01', unit: 'N·m' };
