import { type Declare, oneOf, whole } from './common.ts';

/** Jobs on the bench. */
export const declareWork: Declare = (program, run) => {
  program
    .command('demo')
    .description('a whole job with simulated tools, on the live screen')
    .option('--cylinders <count>', 'the engine: 4 or 8 cylinders', oneOf(4, 8), 8)
    .option('--seed <number>', 'another engine, other plugs, other habits', whole, 1)
    .option('--fast', 'do not wait for the simulated technician; plain lines instead of the screen')
    .option(
      '--technician <habit>',
      'careful, hurried, clicks-twice, stops-short, overpulls, skips or mixed',
      'mixed',
    )
    .option('--out <folder>', 'where the station log, the record, the PDF and the CSV go', 'plugmark-demo')
    .option('--direct', 'join the simulated tools without the Bluetooth stack')
    .option('--plain', 'plain lines instead of the screen')
    .option('--quiet', 'no bell')
    .option('--speed <factor>', '1, 2, 5 or 10 times as fast', oneOf(1, 2, 5, 10), 1)
    .option(
      '--moves <file>',
      'every key is yours; the simulated technician does what you write there: fit 1, pull 1 careful, measure 1',
    )
    .addHelpText('after', '\nExample:\n  plugmark demo --fast --seed 7 --out demo-7')
    .action((options) => run(async () => (await import('../bench/demo.ts')).demo(options))());

  program
    .command('job')
    .description('a real job: asked for in a dialogue, or from a work order')
    .option('--order <file>', 'the work order (JSON); opens a new job without questions')
    .option('--resume', 'goes on with the job that was left open')
    .option('--job <number>', 'with --resume: which job, where several are open')
    .option('--station <file>', 'the station file (JSON)', 'station.json')
    .option('--override <tool>', 'a supervisor answers for a tool that would be refused')
    .option('--by <name>', 'with --override: who answers')
    .option('--reason <text>', 'with --override: why')
    .option('--plain', 'plain lines instead of the screen')
    .option('--quiet', 'no bell')
    .addHelpText(
      'after',
      '\nExamples:\n  plugmark job\n  plugmark job --order order.json --station station.json\n  plugmark job --resume',
    )
    .action((options) => run(async () => (await import('../bench/job.ts')).job(options))());
};
