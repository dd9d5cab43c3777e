/** What people say, as events and back again: most commands are one event, and nothing else follows from them. */
import type { Command } from './command.ts';
import type { JobEvent } from './event.ts';

/** The event that a command is; null where the rules have more to say about it. */
export function eventOf(command: Command): JobEvent | null {
  switch (command.do) {
    case 'choose-cylinder':
      return { type: 'cylinder-chosen', quantity: command.quantity, cylinder: command.cylinder };
    case 'start-again': {
      const { cylinder, newPlug, why } = command;
      return { type: 'cylinder-restarted', cylinder, newPlug, why };
    }
    case 'gap-inspected':
      return { type: 'gap-inspected', cylinder: command.cylinder, sound: command.sound };
    case 'scrap-plug':
      return { type: 'plug-scrapped', cylinder: command.cylinder, reason: command.reason };
    case 'confirm-windows':
      return { type: 'windows-confirmed' };
    case 'skip-trial':
      return { type: 'trial-click-skipped' };
    case 'attest':
      return { type: 'steps-attested', ...attestation(command) };
    case 'read-old-plugs': {
      const { do: _do, ...fields } = command;
      return { type: 'old-plugs-read', ...fields };
    }
    case 'check-new-plugs': {
      const { do: _do, ...fields } = command;
      return { type: 'new-plugs-checked', ...fields };
    }
    case 'fit-by-angle': {
      const { cylinder, turn, why } = command;
      return { type: 'fitted-by-angle', cylinder, turn, why };
    }
    case 'take-back': {
      const { do: _do, ...fields } = command;
      return { type: 'taken-back', ...fields };
    }
    case 'at-work':
      return { type: 'technician-at-work', person: command.person };
    case 'hand-over':
      return { type: 'job-handed-over', to: command.to };
    case 'void':
      return { type: 'job-voided', by: command.by, reason: command.reason };
    case 'answer':
    case 'accept':
    case 'give-pull':
    case 'left-out':
    case 'gap-wire':
    case 'keep-gap':
    case 'close':
      return null;
  }
}

const attestation = ({ phase, steps, together }: Omit<Command & { do: 'attest' }, 'do'>) => ({
  phase,
  steps,
  ...(together === undefined ? {} : { together }),
});

/** The command that led to an event; null for an event that no command leads to. */
export function commandOf(event: JobEvent): Command | null {
  switch (event.type) {
    case 'cylinder-chosen':
      return { do: 'choose-cylinder', quantity: event.quantity, cylinder: event.cylinder };
    case 'cylinder-restarted': {
      const { cylinder, newPlug, why } = event;
      return { do: 'start-again', cylinder, newPlug, why };
    }
    case 'gap-inspected':
      return { do: 'gap-inspected', cylinder: event.cylinder, sound: event.sound };
    case 'plug-scrapped':
      return { do: 'scrap-plug', cylinder: event.cylinder, reason: event.reason };
    case 'windows-confirmed':
      return { do: 'confirm-windows' };
    case 'trial-click-skipped':
      return { do: 'skip-trial' };
    case 'steps-attested':
      return { do: 'attest', ...attestation(event) };
    case 'old-plugs-read': {
      const { type: _type, ...fields } = event;
      return { do: 'read-old-plugs', ...fields };
    }
    case 'new-plugs-checked': {
      const { type: _type, ...fields } = event;
      return { do: 'check-new-plugs', ...fields };
    }
    case 'fitted-by-angle': {
      const { cylinder, turn, why } = event;
      return { do: 'fit-by-angle', cylinder, turn, why };
    }
    case 'taken-back': {
      const { type: _type, ...fields } = event;
      return { do: 'take-back', ...fields };
    }
    case 'gap-kept':
      return { do: 'keep-gap', cylinder: event.cylinder, by: event.by, reason: event.reason };
    case 'technician-at-work':
      return { do: 'at-work', person: event.person };
    case 'job-handed-over':
      return { do: 'hand-over', to: event.to };
    case 'job-voided':
      return { do: 'void', by: event.by, reason: event.reason };
    case 'question-answered':
      return { do: 'answer', pull: event.pull, answer: event.answer };
    case 'pull-accepted':
      return { do: 'accept', pull: event.pull, by: event.by, reason: event.reason };
    case 'pull-given':
      return { do: 'give-pull', pull: event.pull, cylinder: event.cylinder, why: event.why };
    case 'cylinder-left-out': {
      const { pull, cylinder, on, why } = event;
      return { do: 'left-out', pull, cylinder, on, why };
    }
    case 'wire-tried':
      return { do: 'gap-wire', cylinder: event.cylinder, outcome: event.outcome };
    case 'job-closed':
      return { do: 'close' };
    default:
      return null;
  }
}

/** Who wrote an entry: the program (`station`), the technician of that time, or somebody else by name. */
export function writerOf(event: JobEvent): string {
  if (event.type === 'instrument-overridden' || event.type === 'job-voided') return event.by;
  return event.type === 'job-opened' || commandOf(event) !== null ? 'technician' : 'station';
}
