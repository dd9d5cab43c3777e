import { InvalidArgumentError, Option } from 'commander';
import { w } from '../../words/catalogue.ts';
import { closing, type Declare, figure, json, oneOrMore } from './common.ts';

/** Faster than any wrench. */
const MOST_A_SECOND = 10_000;

function rate(text: string): number {
  const count = oneOrMore(text);
  if (count > MOST_A_SECOND) throw new InvalidArgumentError(w`expected ${MOST_A_SECOND} at most.`);
  return count;
}

/** What can be known of a wrench and a specification before any job. */
export const declareWindow: Declare = (program, run) => {
  json(
    program
      .command('window')
      .description(
        'shows the torque window of a specification: guard band, uncertainty, what a reading is worth',
      )
      .argument('[torque]', 'as printed, for example "25-30 N·m"'),
  )
    .option('--order <file>', 'take the specification from this work order')
    .option('--station <file>', 'take the wrench and the decision rule from this station file')
    .addOption(
      new Option('--thread <size>', 'thread of the plug')
        .choices(['M8x1', 'M10x1', 'M12x1.25', 'M14x1.25', 'M18x1.5'])
        .default('M14x1.25'),
    )
    .addOption(
      new Option('--seat <seat>', 'seat of the plug').choices(['gasket', 'conical']).default('gasket'),
    )
    .addOption(
      new Option('--head <material>', 'cylinder head')
        .choices(['aluminium', 'cast-iron'])
        .default('aluminium'),
    )
    .addOption(
      new Option('--lubrication <state>', 'the threads that the torque is printed for')
        .choices(['dry', 'oiled', 'anti-seize', 'factory-coated'])
        .default('dry'),
    )
    .option('--permissible <percent>', 'how far the wrench may be off, of the reading', figure)
    .option('--resolution <N·m>', 'smallest step of its display', figure, 0.01)
    .option('--arm <mm>', 'with an adapter: from the drive to the hand', figure)
    .option('--offset <mm>', 'with an adapter: from the drive to the plug', figure)
    .option('--angle <degrees>', 'with an adapter: 0 in line, 90 square, 180 folded back', figure)
    .option('--bent <degrees>', 'with a universal joint: how far it is bent', figure)
    .option('--reading <torque>', 'judge this reading of the wrench, for example "29.5 N·m"')
    .option('--rate <count>', 'readings a second that the wrench sends: says whether they are enough', rate)
    .addOption(
      new Option('--rule <rule>', 'the decision rule').choices([
        'simple',
        'guard-band',
        'iso-14253-1',
        'probability',
      ]),
    )
    .option('--r <factor>', 'with guard-band: its width in U', figure, 1)
    .option('--at-least <share>', 'with probability: from 0.5 to 0.9999', figure, 0.95)
    .option('--grades', 'add the four grades of ILAC-G8')
    .option('--spread <N·m>', 'standard deviation of the pulls of this shop; adds the risks', figure)
    .option('--svg <file>', 'also a picture of the window with the reading over it')
    .option('--on <date>', 'judge certificates by this day instead of today')
    .addHelpText(
      'after',
      closing(
        {
          done: 'this wrench can prove this window',
          failed: 'it cannot, or the wrench would be refused',
        },
        'plugmark window "25-30 N·m" --permissible 2',
        'plugmark window --order order.json --station station.json --reading "29.5 N·m"',
      ),
    )
    .action((torque, options) =>
      run(async () => (await import('../bench/window.ts')).printWindow(torque, options))(),
    );
};
