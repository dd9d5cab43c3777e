/** The fonts of one document: its own, and those of the machine that its texts ask for. */
/// <reference path="./opened-font.d.ts" />
import type { Doc } from '../sheet.ts';
import { machineFontFor } from './machine.ts';
import { type Face, ownFont } from './own.ts';
import type { FontFor } from './runs.ts';

/** `own`: the same bytes on every machine. `machine`: what they lack is drawn with fonts that are installed. */
export type FontSources = 'own' | 'machine';

const FACES: readonly Face[] = ['regular', 'bold', 'mono'];

/** Registers the fonts and says which of them draws a character. `onMachineFont` is called once a font of the machine is taken. */
export async function registerFonts(
  doc: Doc,
  sources: FontSources,
  onMachineFont: () => void,
): Promise<FontFor> {
  const { create } = await import('fontkit');
  const own = FACES.map((face) => ({ face, ...ownFont(face, create) }));
  for (const { face, font } of own) doc.registerFont(face, font);
  doc.font('regular');
  const ownFor = (codePoint: number, face: Face): string | undefined =>
    [face, 'regular'].find((one) => own.some((font) => font.face === one && font.characters.has(codePoint)));
  const registered = new Set<string>();
  return (codePoint, face) => {
    const there = ownFor(codePoint, face);
    if (there !== undefined) return there;
    const font = sources === 'own' ? null : machineFontFor(codePoint, create);
    if (font === null) return null;
    if (!registered.has(font.name)) {
      registered.add(font.name);
      onMachineFont();
      if (font.family === '') doc.registerFont(font.name, font.bytes);
      else doc.registerFont(font.name, font.bytes, font.family);
    }
    return font.name;
  };
}
