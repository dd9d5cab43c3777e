import { type Declare, examples } from './common.ts';

/** Traces and recordings, looked at after the fact. */
export const declarePulls: Declare = (program, run) => {
  const columns = (command: ReturnType<typeof program.command>) =>
    command
      .option('--time <column>', 'name of the column of times', 'time_s')
      .option('--torque <column>', 'name of the column of torques', 'torque_Nm')
      .option('--angle <column>', 'name of the column of angles in degrees (angle_deg where the file has it)')
      .option('--time-unit <unit>', 's, ms or us', 's')
      .option('--torque-unit <unit>', 'N·m, lbf·ft, lbf·in, kgf·m or kgf·cm', 'N·m');
  columns(
    program
      .command('pulls')
      .description('finds the pulls in a torque trace and draws them')
      .argument('[file]', 'the trace (CSV with a header line)'),
  )
    .option('--lower <torque>', 'lower limit of the window in N·m: what is far below it is no pull')
    .option('--maxima', 'the tool sent the highest torque of its work cycle, not the torque as it was')
    .option('--json', 'the pulls as JSON')
    .option('--schema', 'the JSON Schema of --json')
    .addHelpText(
      'after',
      examples(
        'plugmark pulls pull.csv',
        'plugmark pulls log.csv --time t --time-unit ms --torque "lbf ft" --torque-unit lbf·ft --json',
      ),
    )
    .action((file, options) => run(async () => (await import('../bench/pulls.ts')).pulls(file, options))());

  columns(
    program
      .command('replay')
      .description('plays a recording or a trace through the whole program, as if the wrench were there')
      .argument('<file>', 'a recording (plugmark/readings/1) or a trace (CSV)'),
  )
    .option('--order <file>', 'the work order; an example with four cylinders unless told')
    .option('--station <file>', 'the station file whose wrench it stands for; an example unless told')
    .option('--speed <factor>', '1 as recorded, 10 ten times as fast; as fast as it goes unless told')
    .option('--out <folder>', 'where the station log of the replay goes', 'plugmark-replay')
    .option('--plain', 'plain lines instead of the screen')
    .addHelpText(
      'after',
      examples('plugmark replay pull.csv --speed 1', 'plugmark replay wrench.recording.jsonl'),
    )
    .action((file, options) => run(async () => (await import('../bench/replay.ts')).replay(file, options))());
};
