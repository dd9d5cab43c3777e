import { getSystemErrorMap } from 'node:util';
import type { Problem } from '../../src/problem.ts';
import { phrases } from '../../src/words/catalogue.ts';

// Everything that can keep the station from a Bluetooth adapter, as one sentence and one next step each.

const PROBLEMS = phrases({
  'radio-not-installed': {
    message: 'the Bluetooth part of plugmark is not installed on this machine',
    next: 'Install plugmark again, or run with the simulated tools.',
  },
  'radio-no-bluetooth': {
    message:
      'this machine has no Bluetooth support in its kernel (EAFNOSUPPORT), as is usual in containers and WSL',
    next: 'Run plugmark on the host itself, on a machine with Bluetooth, or run with the simulated tools.',
  },
  'radio-not-permitted': {
    message: 'this user is not allowed to use the Bluetooth adapter',
    next: 'Give the right to the node program; plugmark doctor shows the command.',
  },
  'radio-off': {
    message: 'the Bluetooth adapter is switched off',
    next: 'Switch it on (rfkill unblock bluetooth; bluetoothctl power on) and start again.',
  },
  'radio-no-adapter': {
    message: 'no Bluetooth adapter answered',
    next: 'Plug one in or name another one (bluetoothctl list shows them), or run with the simulated tools.',
  },
  'radio-not-low-energy': {
    message: 'the Bluetooth adapter does not speak Bluetooth Low Energy',
    next: 'Use an adapter for Bluetooth 4.0 or later.',
  },
  'radio-closed': {
    message: 'the Bluetooth adapter is already closed',
    next: 'Start plugmark again.',
  },
  'radio-failed': {
    message: 'the Bluetooth adapter could not be opened',
    next: 'Look at the cause named here, try again as another user or with another adapter, or run with the simulated tools.',
  },
} as const satisfies Record<string, Pick<Problem, 'message' | 'next'>>);

export type RadioProblemCode = keyof typeof PROBLEMS;

export function radioProblem(code: RadioProblemCode, where?: string): Problem {
  const { message, next } = PROBLEMS[code];
  return { code, message, next, ...(where !== undefined && { where }) };
}

/** The loaders of native parts give no code when theirs is missing. */
const NOT_BUILT = /^(Could not locate the bindings file|No native build was found)/;

/** What a thrown error of the library or its native socket means. */
export function problemFromError(error: unknown): Problem {
  const code = errorCode(error);
  switch (code) {
    case 'MODULE_NOT_FOUND':
    case 'ERR_DLOPEN_FAILED':
      return radioProblem('radio-not-installed');
    case 'EAFNOSUPPORT':
      return radioProblem('radio-no-bluetooth');
    case 'EPERM':
    case 'EACCES':
      return radioProblem('radio-not-permitted');
    case 'ENODEV':
      return radioProblem('radio-no-adapter');
    case 'ENETDOWN':
      return radioProblem('radio-off');
    default:
      if (error instanceof Error && NOT_BUILT.test(error.message)) return radioProblem('radio-not-installed');
      return radioProblem('radio-failed', error instanceof Error ? error.message : String(error));
  }
}

/** What an adapter state other than `poweredOn` means. */
export function problemFromState(state: string): Problem {
  switch (state) {
    case 'poweredOff':
      return radioProblem('radio-off');
    case 'unauthorized':
      return radioProblem('radio-not-permitted');
    case 'unsupported':
      return radioProblem('radio-not-low-energy');
    default:
      return radioProblem('radio-failed', `adapter state ${state}`);
  }
}

/** The native socket gives a code, or the system's number alone, or nothing but the system's words. */
export function errorCode(error: unknown): string | undefined {
  if (!(error instanceof Error)) return undefined;
  if ('code' in error && typeof error.code === 'string') return error.code;
  if ('errno' in error && typeof error.errno === 'number') return getSystemErrorMap().get(-error.errno)?.[0];
  const words = error.message.toLowerCase();
  const fits = [...getSystemErrorMap().values()].filter(([, text]) => words.startsWith(text));
  return fits.sort(([, one], [, other]) => other.length - one.length)[0]?.[0];
}
