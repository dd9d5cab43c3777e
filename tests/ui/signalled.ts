/** A program with the live screen, started by signal.test.ts in a process of its own, because signals are real there. */
import { BehaviorSubject } from 'rxjs';
import { asStreams, FakeKeyboard, FakeScreen } from './fake-terminal.ts';
import { jobWith, viewOf } from './fixtures.ts';

process.env['CI'] = 'false';
const { runScreen } = await import('../../src/ui/run.tsx');

const screen = new FakeScreen();
const keepAlive = setInterval(() => undefined, 1000);
const done = runScreen({
  view$: new BehaviorSubject(viewOf(jobWith(3))),
  onCommand: () => undefined,
  onTyped: () => undefined,
  types: false,
  quiet: true,
  onQuit: () => clearInterval(keepAlive),
  ...asStreams(screen, new FakeKeyboard()),
  color: false,
  ascii: true,
});
if (process.argv[2] === 'throw') {
  process.once('exit', () => process.stdout.write(JSON.stringify(screen.text)));
  setImmediate(() => {
    throw new Error('a bug elsewhere');
  });
} else {
  process.stdout.write('ready\n');
  await done;
  // Closing what must be closed takes a while; a process that is killed does not come to its end.
  setTimeout(() => process.stdout.write(JSON.stringify(screen.text)), 20);
}
