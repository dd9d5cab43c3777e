import { InvalidArgumentError } from 'commander';
import { type Declare, examples } from './common.ts';

/** What can be known of a wrench and a specification before any job. */
export const declareWindow: Declare = (program, run) => {
  program
    .command('window')
    .description(
      'the torque window of a specification: guard band, uncertainty budget, what a reading is worth',
    )
    .argument('[torque]', 'as printed, for example "25-30 N·m"')
    .option('--order <file>', 'take the specification from a work order')
    .option('--station <file>', 'take the wrench and the decision rule from a station file')
    .option('--thread <size>', 'M8x1, M10x1, M12x1.25, M14x1.25 or M18x1.5', 'M14x1.25')
    .option('--seat <seat>', 'gasket or conical', 'gasket')
    .option('--head <material>', 'aluminium or cast-iron', 'aluminium')
    .option('--threads <condition>', 'what the figure assumes: dry, oiled, anti-seize, factory-coated', 'dry')
    .option('--permissible <percent>', 'what the wrench may be off by, of the reading', figure)
    .option('--resolution <N·m>', 'step of its readings', figure, 0.01)
    .option('--arm <mm>', 'with an adapter: from the drive to the hand', figure)
    .option('--offset <mm>', 'with an adapter: from the drive to the plug', figure)
    .option('--angle <degrees>', 'with an adapter: 0 in line, 90 square, 180 folded back', figure)
    .option('--reading <torque>', 'judge this reading of the wrench, for example "29.5 N·m"')
    .option('--rule <rule>', 'simple, guard-band, iso-14253-1 or probability')
    .option('--r <factor>', 'with guard-band: its width in U', figure, 1)
    .option('--at-least <share>', 'with probability: from 0.5 to 0.9999', figure, 0.95)
    .option('--grades', 'the four grades of ILAC-G8 as well')
    .option('--spread <N·m>', 'standard deviation of the pulls of this shop: adds the risks', figure)
    .option('--on <date>', 'the day to judge certificates by, instead of today')
    .addHelpText(
      'after',
      `\nExit code: 0 this wrench can prove this window; 1 it cannot, or would be refused; 2 the input is at fault.\n${examples(
        'plugmark window "25-30 N·m" --permissible 2',
        'plugmark window --order order.json --station station.json --reading "29.5 N·m"',
      )}`,
    )
    .action((torque, options) =>
      run(async () => (await import('../bench/window.ts')).printWindow(torque, options))(),
    );
};

function figure(text: string): number {
  if (!/^\d{1,6}(?:\.\d{1,6})?$/.test(text)) throw new InvalidArgumentError('expected a figure.');
  return Number(text);
}
