import { Option } from 'commander';
import type { PersonName } from '../../../sim/technician/people.ts';
import { LANGUAGES } from '../../words/catalogue.ts';
import { closing, type Declare, examples, whole } from './common.ts';

/** As the simulation has them; a test holds the two lists together. */
const HABITS: readonly PersonName[] = [
  'careful',
  'hurried',
  'clicks-twice',
  'stops-short',
  'overpulls',
  'skips',
  'mixed',
  'checks',
  'overlooks',
  'careless',
];

const languageOption = () =>
  new Option('--language <language>', 'language of the screen; else as the station file says').choices(
    LANGUAGES,
  );

/** Jobs on the bench. */
export const declareWork: Declare = (program, run) => {
  program
    .command('demo')
    .description('runs a whole job with simulated tools, on the live screen')
    .addOption(new Option('--cylinders <count>', 'cylinders of the engine').choices(['4', '8']).default('8'))
    .option('--seed <number>', 'another engine, other plugs, other habits', whole, 1)
    .option('--fast', 'do not wait for the simulated technician; plain lines instead of the screen')
    .addOption(
      new Option('--technician <habit>', 'how the simulated technician works')
        .choices(HABITS)
        .default('mixed'),
    )
    .option('--out <folder>', 'folder for the station log, the record, the PDF and the CSV', 'plugmark-demo')
    .option('--direct', 'join the simulated tools without the Bluetooth stack')
    .option('--sends-angle', 'the wrench sends how far it was turned too')
    .option('--plain', 'plain lines instead of the screen')
    .option('--peaks', 'the simulated wrench sends the highest torque of each pull, and nothing else')
    .option('--quiet', 'no bell')
    .addOption(languageOption())
    .addOption(
      new Option('--units <units>', 'units of the screen').choices(['N.m-mm', 'lbf.ft-in']).default('N.m-mm'),
    )
    .option('--resume', 'go on with the demo job that was left open in this folder')
    .addOption(
      new Option('--speed <factor>', 'how many times as fast').choices(['1', '2', '5', '10']).default('1'),
    )
    .option(
      '--moves <file>',
      'you press every key; the simulated technician does what this file says, a line each: fit 1, pull 1 careful, measure 1',
    )
    .addHelpText(
      'after',
      closing(
        { failed: 'the job was closed but is not complete', leftOpen: 'you left the job open; it is kept' },
        'plugmark demo --fast --seed 7 --out demo-7',
        'plugmark demo --resume --out demo-7',
      ),
    )
    .action((options) => run(async () => (await import('../bench/demo.ts')).demo(options))());

  const sim = program
    .command('sim')
    .description('simulated tools that other programs, or a job, can join')
    .addHelpText('after', examples('plugmark sim serve sim/example/scenario.json'));
  sim
    .command('serve')
    .description(
      'plays the tools of a scenario: on a virtual Bluetooth controller, or on pseudo-terminals (with socat)',
    )
    .argument('<file>', 'the scenario (JSON)')
    .addHelpText(
      'after',
      closing(
        {},
        'plugmark sim serve sim/example/scenario.json',
        'plugmark sim serve sim/example/scenario-bluetooth.json',
      ),
    )
    .action((file) => run(async () => (await import('../bench/sim-serve.ts')).serve(file))());
  sim
    .command('replay')
    .description('plays a capture back as the device that sent it')
    .argument('<file>', 'the capture, of "plugmark devices record"')
    .option(
      '--air <path>',
      'of a Bluetooth capture: the Unix socket of the virtual controller',
      '/tmp/plugmark-air',
    )
    .option(
      '--serial <number>',
      'of a Bluetooth capture: the serial number that the device gives',
      'CAPTURED',
    )
    .option(
      '--advertised <uuid>',
      'of a Bluetooth capture: the service that it advertises; the busiest unless given',
    )
    .option(
      '--port <path>',
      'of a capture from a serial port: the name of the pseudo-terminal',
      '/tmp/plugmark-port',
    )
    .option('--wait <seconds>', 'how long a pseudo-terminal waits before it sends', whole, 5)
    .addHelpText('after', closing({}, 'plugmark sim replay pull.capture.jsonl'))
    .action((file, options) =>
      run(async () => (await import('../bench/sim-replay.ts')).replay(file, options))(),
    );

  program
    .command('job')
    .description('runs a real job; asks for its figures, or takes them from a work order')
    .option(
      '--order <file>',
      'the work order, or - for the standard input; opens a new job without questions',
    )
    .option('--resume [open-job]', 'go on with the job that was left open; name it where several are open')
    .option('--station <file>', 'the station file', 'station.json')
    .option('--override <tool>', 'use a tool that would be refused; a supervisor answers for it')
    .option('--by <person>', 'with --override: the supervisor')
    .option('--because <text>', 'with --override: why')
    .option('--plain', 'plain lines instead of the screen')
    .option('--quiet', 'no bell')
    .addOption(languageOption())
    .option(
      '--events <file>',
      'a line of JSON for all that happens, to the end of a file, into a named pipe, or - for the standard output',
    )
    .addHelpText(
      'after',
      closing(
        {
          done: 'the job is complete and proven',
          failed: 'no job was opened, or the job was closed but is not complete or not proven',
          leftOpen: 'the job is still open; go on with: plugmark job --resume',
          void: 'the job was declared void',
        },
        'plugmark job',
        'plugmark job --order order.json --station station.json',
        'plugmark job --resume',
        'plugmark job --order - --events - < order.json',
      ),
    )
    .action((options) => run(async () => (await import('../bench/job.ts')).job(options))());
};
