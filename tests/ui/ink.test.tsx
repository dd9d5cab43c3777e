import { render } from 'ink-testing-library';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { type InputState, newInputState, type Out, pressed } from '../../src/ui/input-state.ts';
import type { KeyPress } from '../../src/ui/key-press.ts';
import { Keyboard } from '../../src/ui/keyboard.tsx';
import { Screen } from '../../src/ui/screen.tsx';
import type { BenchView } from '../../src/ui/view.ts';
import { VIEWS } from './views.ts';

/** The screen and its keyboard in Ink, with a desk between them as in the program. */
function opened(view: BenchView) {
  let input: InputState = newInputState();
  const outs: Out[] = [];
  const size = { columns: 100, rows: 24 };
  const press = (key: KeyPress) => {
    const after = pressed(input, key, view.job, false);
    input = after.input;
    if (after.out !== null) outs.push(after.out);
    ink.rerender(frame());
  };
  const frame = () => (
    <>
      <Keyboard onPress={press} />
      <Screen view={view} size={size} ascii={false} color={false} input={input} />
    </>
  );
  const ink = render(frame());
  return {
    outs,
    shown: () => ink.lastFrame() ?? '',
    type: async (text: string) => {
      ink.stdin.write(text);
      await new Promise((resolve) => setImmediate(resolve));
    },
    close: ink.unmount,
  };
}

const view = (name: string): BenchView => VIEWS[name] ?? expect.fail(`no view ${name}`);

let close = () => {};
beforeEach(() => void vi.stubEnv('NO_COLOR', '1'));
afterEach(() => {
  close();
  vi.unstubAllEnvs();
});

async function screenOf(name: string) {
  const screen = opened(view(name));
  close = screen.close;
  await vi.waitFor(() => expect(screen.shown()).toContain('entries on disk'), { interval: 5 });
  return screen;
}

describe('the screen in Ink', () => {
  it.each(Object.keys(VIEWS))('shows %s with its keys', async (name) => {
    const screen = await screenOf(name);
    expect(screen.shown()).toMatch(/\[.+\]/);
    expect(screen.shown().split('\n')).toHaveLength(23);
  });

  it('shows what is typed letter by letter, with the verdict and the torque still before the eyes', async () => {
    const screen = await screenOf('notOk');
    await screen.type('k');
    expect(screen.shown()).toContain('Cylinder 2 stays as it is, over the window: who answers for it');
    await screen.type('Zoë');
    expect(screen.shown()).toContain('Name: Zoë');
    expect(screen.shown()).toContain('NOT OK 31.22');
    expect(screen.shown()).toMatch(/Torque +0\.0 N·m/);
    await screen.type('\u007f');
    expect(screen.shown()).toMatch(/Name: Zo\s/);
    await screen.type('\r');
    expect(screen.shown()).toContain('Why may cylinder 2 stay as it is?');
    await screen.type('2');
    expect(screen.outs).toEqual([
      { do: 'accept', pull: 5, by: 'Zo', reason: 'service-information-allows-it' },
    ]);
  });

  it('takes Esc and Enter, also when they come in one piece with other keys', async () => {
    const screen = await screenOf('notOk');
    await screen.type('c');
    expect(screen.shown()).toContain('What did not go as planned');
    await screen.type('\u001b');
    // Ink waits a moment whether Esc is the beginning of an arrow key.
    await vi.waitFor(() => expect(screen.shown()).not.toContain('What did not go as planned'), {
      interval: 5,
    });
    await screen.type('c5Two\r');
    expect(screen.outs).toEqual([{ do: 'hand-over', to: 'Two' }]);
  });

  it('moves along a list and marks its choices by sign, not by colour alone', async () => {
    const screen = await screenOf('chosen');
    await screen.type('2');
    expect(screen.shown()).toContain('[2]✓as the maker allows');
    expect(screen.shown()).toMatch(/►\? Boots or coils/);
    await screen.type(' ');
    expect(screen.shown()).toMatch(/►\? Engine run/);
    await screen.type('\u001b[A');
    expect(screen.shown()).toMatch(/►✓ Boots or coils/);
  });

  it('names the condition and its causes as the pointer comes to it, and marks damage', async () => {
    const screen = await screenOf('oldPlugs');
    await screen.type('\u001b[B\u001b[Bx2');
    expect(screen.shown()).toContain('dull black, dry');
    expect(screen.shown()).toContain('rich mixture');
    expect(screen.shown()).toContain('✗ centre electrode loose');
  });

  it('says why a part is refused', async () => {
    const screen = await screenOf('newPlugs');
    await screen.type('p2X-1\r');
    await screen.type('\r');
    await screen.type('\r');
    expect(screen.shown()).toMatch(/! The specification allows EX-1234 .*not X-1/);
    expect(screen.outs).toEqual([]);
  });
});
