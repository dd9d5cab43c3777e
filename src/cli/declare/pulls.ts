import { type Command, Option } from 'commander';
import { closing, type Declare, json } from './common.ts';

/** How a trace is read: which columns, in which units. */
const columns = (command: Command): Command =>
  command
    .option('--time-column <name>', 'column of the times', 'time_s')
    .option('--torque-column <name>', 'column of the torques', 'torque_Nm')
    .option('--angle-column <name>', 'column of the angles in degrees; angle_deg where the file has one')
    .addOption(new Option('--time-unit <unit>', 'unit of the times').choices(['s', 'ms', 'us']).default('s'))
    .option('--torque-unit <unit>', 'unit of the torques: N·m, lbf·ft, lbf·in, kgf·m or kgf·cm', 'N·m');

/** Traces and recordings, looked at after the fact. */
export const declarePulls: Declare = (program, run) => {
  json(
    columns(
      program
        .command('pulls')
        .description('finds the pulls in a torque trace and draws them')
        .argument('<file>', 'the trace (CSV with a header line); - reads the standard input'),
    ),
  )
    .option('--lower <torque>', 'lower limit of the window in N·m; what stays far below it is no pull')
    .option('--maxima', 'the tool sent the highest torque of each work cycle, not the torque itself')
    .addHelpText(
      'after',
      closing(
        {},
        'plugmark pulls pull.csv',
        'plugmark pulls log.csv --time-column t --time-unit ms --torque-column "lbf ft" --torque-unit lbf·ft --json',
      ),
    )
    .action((file, options) => run(async () => (await import('../bench/pulls.ts')).pulls(file, options))());

  columns(
    program
      .command('replay')
      .description('plays a recording or a trace through the whole program, as if the wrench were there')
      .argument('<file>', 'a recording (plugmark/readings/1) or a trace (CSV); - reads the standard input'),
  )
    .option('--order <file>', 'the work order; an example with four cylinders unless given')
    .option('--station <file>', 'the station file with the wrench; an example unless given')
    .option('--speed <factor>', '1 as recorded, 10 ten times as fast; as fast as it goes unless given')
    .option('--out <folder>', 'folder for the station log of the replay', 'plugmark-replay')
    .option('--plain', 'plain lines instead of the screen')
    .addHelpText(
      'after',
      closing(
        { leftOpen: 'you left before the recording ended' },
        'plugmark replay pull.csv --speed 1',
        'plugmark replay wrench.recording.jsonl',
      ),
    )
    .action((file, options) => run(async () => (await import('../bench/replay.ts')).replay(file, options))());
};
