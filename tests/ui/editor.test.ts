import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Editor, edited, editorSpans, editorWith, textOf } from '../../src/ui/editor.ts';
import { glyphsFor } from '../../src/ui/glyphs.ts';
import { columnsOf } from '../../src/ui/printable.ts';

const typed = (keys: readonly string[], from = editorWith(''), most = 200): Editor =>
  keys.reduce((editor, key) => edited(editor, { key }, most), from);

describe('a line being typed', () => {
  it('takes names of any script, and takes back a letter as a person sees it', () => {
    expect(textOf(typed([...'Jürgen Þór 山田']))).toBe('Jürgen Þór 山田');
    expect(textOf(typed([...'Zoe\u0308', 'backspace']))).toBe('Zo');
    expect(textOf(typed([...'Zoe\u0308']))).toBe('Zoë');
  });

  it('is changed in its middle', () => {
    expect(textOf(typed(['left', 'left', 'x', 'home', 'y', 'end', 'z'], editorWith('abc')))).toBe('yaxbcz');
    expect(textOf(typed(['right', 'backspace'], editorWith('abc')))).toBe('ab');
    expect(textOf(edited(editorWith('abc'), { key: 'u', ctrl: true }, 9))).toBe('');
  });

  it('takes no control, bidi or invisible character and no more than it may hold', () => {
    expect(textOf(typed(['\u001b', 'a', '\u0007', '\u202e', '\u200b', '\u0085', 'b']))).toBe('ab');
    expect(textOf(typed([...'abcdef'], editorWith(''), 4))).toBe('abcd');
    expect(textOf(typed(['tab', 'up', 'enter']))).toBe('');
  });

  it('never holds more than it may, whatever is typed, and is never drawn wider than its place', () => {
    const key = fc.oneof(
      fc.string({ unit: 'grapheme', minLength: 1, maxLength: 1 }),
      fc.constantFrom('left', 'right', 'home', 'end', 'backspace'),
    );
    fc.assert(
      fc.property(fc.array(key, { maxLength: 60 }), fc.integer({ min: 8, max: 40 }), (keys, columns) => {
        const editor = typed(keys, editorWith(''), 30);
        expect(textOf(editor).length).toBeLessThanOrEqual(30);
        expect(textOf(editor)).not.toMatch(/[\p{Cc}\p{Cf}]/u);
        const [left, at] = editorSpans(editor, columns, glyphsFor(false));
        expect(columnsOf((left?.text ?? '') + (at?.text ?? ''))).toBeLessThanOrEqual(columns);
      }),
    );
  });
});
