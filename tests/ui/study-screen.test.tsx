import { Console } from 'node:console';
import { EventEmitter } from 'node:events';
import { render } from 'ink-testing-library';
import { BehaviorSubject } from 'rxjs';
import { describe, expect, it, vi } from 'vitest';
import { studyChime } from '../../src/ui/study-chime.ts';
import { newStudyInputState, type StudyOut } from '../../src/ui/study-input-state.ts';
import { runStudyScreen, StudyScreen } from '../../src/ui/study-screen.tsx';
import type { StudyView } from '../../src/ui/study-view.ts';
import { asStreams, FakeKeyboard, FakeScreen } from './fake-terminal.ts';
import { STUDIES, studyOf } from './study-views.ts';

// Ink draws nothing where it believes in a build server.
vi.hoisted(() => {
  process.env['CI'] = 'false';
  process.env['CONTINUOUS_INTEGRATION'] = 'false';
});
// The runner's console lacks what Ink builds its own from.
Object.assign(console, { Console });

const LEAVE = '\u001b[?1049l';
const study = (name: string): StudyView => STUDIES[name] ?? expect.fail(`no study ${name}`);
const until = (condition: () => void) => vi.waitFor(condition, { timeout: 4000, interval: 5 });

function started(view: StudyView, quiet = true) {
  const view$ = new BehaviorSubject(view);
  const screen = new FakeScreen();
  const keyboard = new FakeKeyboard();
  const commands: Exclude<StudyOut, 'quit'>[] = [];
  const quit = vi.fn();
  const done = runStudyScreen({
    view$,
    onCommand: (command) => commands.push(command),
    onQuit: quit,
    quiet,
    ...asStreams(screen, keyboard),
    color: false,
    ascii: false,
    events: new EventEmitter(),
  });
  return { view$, screen, keyboard, commands, quit, done };
}

describe('the screen of a study in Ink', () => {
  it.each(Object.keys(STUDIES))('shows %s whole', (name) => {
    const size = { columns: 100, rows: 24 };
    const ink = render(
      <StudyScreen
        view={study(name)}
        size={size}
        ascii={false}
        color={false}
        input={newStudyInputState(true)}
      />,
    );
    expect(ink.lastFrame()?.split('\n')).toHaveLength(23);
    expect(ink.lastFrame()).toContain('on disk');
    ink.unmount();
  });

  it('passes on what the keys say, a figure as one line, and gives the terminal back when it is left', async () => {
    const { screen, keyboard, commands, quit, done } = started(study('typing'));
    await until(() => expect(screen.text).toContain('type the figure'));
    keyboard.write('u');
    keyboard.write('0.7');
    await until(() => expect(screen.text).toContain('typed so far: 0.7'));
    keyboard.write('1\req');
    await done;
    expect(commands).toEqual(['back', { typed: '0.71' }, 'pause']);
    expect(quit).toHaveBeenCalledTimes(1);
    expect(screen.text.endsWith(LEAVE)).toBe(true);
  });

  it('takes nothing back that the person could not see yet', async () => {
    vi.useFakeTimers({
      toFake: ['setTimeout', 'setInterval', 'clearTimeout', 'clearInterval', 'Date', 'performance'],
    });
    const { view$, keyboard, commands } = started(studyOf({ taken: 3 }));
    await vi.advanceTimersByTimeAsync(200);
    view$.next(studyOf({ taken: 4 }));
    view$.next(studyOf({ taken: 5 })); // waits for the next frame
    keyboard.write('u');
    await new Promise((resolve) => setImmediate(resolve));
    expect(commands).toEqual([]);
    await vi.advanceTimersByTimeAsync(200);
    keyboard.write('u');
    await new Promise((resolve) => setImmediate(resolve));
    expect(commands).toEqual(['back']);
    keyboard.write('q');
    await new Promise((resolve) => setImmediate(resolve));
    vi.useRealTimers();
  });

  it('fails with what the study fails with, the terminal given back first', async () => {
    const { view$, screen, done } = started(study('going'));
    view$.error(new Error('disk full'));
    await expect(done).rejects.toThrow('disk full');
    expect(screen.text).toContain(LEAVE);
  });
});

describe('the bell of a study', () => {
  it('rings once for what was taken, and three times where somebody has to look', () => {
    const going = study('going');
    const next = studyOf({ taken: 5 });
    expect(studyChime(going, going)).toBeNull();
    expect(studyChime(going, next)).toBe('good');
    expect(studyChime(going, { ...next, handOver: true })).toBe('look');
    expect(studyChime(next, going)).toBeNull();
    expect(studyChime(going, study('notice'))).toBe('look');
    expect(studyChime(study('notice'), { ...study('notice'), live: null })).toBeNull();
    expect(studyChime(going, study('asked'))).toBe('look');
    expect(studyChime(study('asked'), { ...study('asked'), live: null })).toBeNull();
    expect(studyChime(going, study('lost'))).toBe('look');
    expect(studyChime({ ...going, tool: study('first').tool }, study('lost'))).toBeNull();
  });
});
