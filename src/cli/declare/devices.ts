import { type Declare, examples, whole } from './common.ts';

const collected = (value: string, before: readonly string[]) => [...before, value];

/** The tools on the air, and descriptions of tools that nobody has written a driver for. */
export const declareDevices: Declare = (program, run) => {
  const devices = program
    .command('devices')
    .description('Bluetooth tools: find them, adopt them, record what they send')
    .addHelpText('after', examples('plugmark devices scan'));
  devices
    .command('scan')
    .description('shows the measuring tools in reach, with their serial numbers')
    .option('--seconds <number>', 'how long to listen', whole, 5)
    .option('--profile <file>', 'also look for the device that this profile describes', collected, [])
    .option('--all', 'show every device, whatever it offers')
    .option('--no-serial', 'do not connect to ask for serial numbers')
    .addHelpText('after', examples('plugmark devices scan', 'plugmark devices scan --all --no-serial'))
    .action((options) => run(async () => (await import('../station/devices.ts')).scan(options))());
  devices
    .command('adopt')
    .description('makes a device the tool of the station, by its serial number and its address')
    .argument('<address>', 'as devices scan shows it')
    .requiredOption('--tool <id>', 'which tool of the station file it is')
    .option('--station <file>', 'the station file (JSON)', 'station.json')
    .option('--profile <file>', 'the profile that describes it, as the station file is to name it')
    .addHelpText('after', examples('plugmark devices adopt c2:00:00:00:00:01 --tool wrench'))
    .action((address, options) =>
      run(async () => (await import('../station/devices.ts')).adopt(address, options))(),
    );
  devices
    .command('record')
    .description('writes down all that a device sends, byte by byte, in a file that replays')
    .argument('<address>', 'as devices scan shows it')
    .requiredOption('--out <file>', 'the capture, a file that is not there yet')
    .option('--seconds <number>', 'how long; Ctrl-C ends it sooner', whole, 60)
    .addHelpText('after', examples('plugmark devices record c2:00:00:00:00:01 --out pull.capture.jsonl'))
    .action((address, options) =>
      run(async () => (await import('../station/devices.ts')).record(address, options))(),
    );

  program
    .command('driver')
    .description('profiles: devices described without code')
    .addHelpText('after', examples('plugmark driver check wrench.profile.json'))
    .command('check')
    .description('says whether a profile is valid, and what it makes of packets')
    .argument('<file>', 'the profile (JSON)')
    .option('--bytes <hex>', 'a packet in hexadecimal digits; may be given several times', collected, [])
    .addHelpText(
      'after',
      examples('plugmark driver check sim/example/profile-wrench.json --bytes a501000000640064ff9c8000'),
    )
    .action((file, options) =>
      run(async () => (await import('../station/driver.ts')).check(file, options))(),
    );
};
