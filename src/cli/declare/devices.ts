import { closing, collected, type Declare, examples, json, whole } from './common.ts';

/** The tools on the air, and descriptions of tools that nobody has written a driver for. */
export const declareDevices: Declare = (program, run) => {
  const devices = program
    .command('devices')
    .description('Bluetooth tools: find them, adopt them, record what they send')
    .addHelpText('after', examples('plugmark devices scan'));
  json(
    devices
      .command('scan')
      .description('lists the measuring tools in reach, with their serial numbers')
      .option('--seconds <number>', 'how long to listen', whole, 5),
  )
    .option('--profile <file>', 'also look for the device in this profile', collected, [])
    .option('--all', 'list every device, not only measuring tools')
    .option('--no-serial', 'do not connect to ask for serial numbers')
    .addHelpText('after', closing({}, 'plugmark devices scan', 'plugmark devices scan --all --no-serial'))
    .action((options) => run(async () => (await import('../station/devices.ts')).scan(options))());
  devices
    .command('adopt')
    .description('makes a device a tool of the station, by its serial number and address')
    .argument('<address>', 'as "devices scan" lists it')
    .requiredOption('--tool <tool>', 'which tool of the station file it is')
    .option('--station <file>', 'the station file', 'station.json')
    .option('--profile <file>', 'the profile of the device, as the station file is to name it')
    .addHelpText('after', closing({}, 'plugmark devices adopt c2:00:00:00:00:01 --tool wrench'))
    .action((address, options) =>
      run(async () => (await import('../station/devices.ts')).adopt(address, options))(),
    );
  devices
    .command('record')
    .description('records every byte that a device sends, in a file that "plugmark job" can play')
    .argument('<address>', 'as "devices scan" lists it, or a serial port')
    .option('--baud <number>', 'of a serial port: bits a second', whole, 9600)
    .requiredOption('--out <file>', 'the capture; a file that does not exist yet')
    .option('--seconds <number>', 'how long; Ctrl-C stops sooner', whole, 60)
    .addHelpText('after', closing({}, 'plugmark devices record c2:00:00:00:00:01 --out pull.capture.jsonl'))
    .action((address, options) =>
      run(async () => (await import('../station/devices.ts')).record(address, options))(),
    );

  const driver = program
    .command('driver')
    .description('drivers: profiles without code, and packages of others')
    .addHelpText('after', examples('plugmark driver check wrench.profile.json'));
  json(
    driver
      .command('check')
      .description('checks a profile and shows what it makes of bytes')
      .argument('<file>', 'the profile (JSON)'),
  )
    .option(
      '--bytes <hex>',
      'what was sent, in hexadecimal digits; may be given several times',
      collected,
      [],
    )
    .addHelpText(
      'after',
      closing({}, 'plugmark driver check sim/example/profile-wrench.json --bytes a501000000640064ff9c8000'),
    )
    .action((file, options) =>
      run(async () => (await import('../station/driver.ts')).check(file, options))(),
    );
  driver
    .command('test')
    .description('tries a driver package, or a profile, with cut, lost, doubled and damaged bytes')
    .argument('<driver>', 'name of the package (plugmark-driver-...), its folder, or a profile (JSON)')
    .addHelpText(
      'after',
      closing(
        { failed: 'a check failed' },
        'plugmark driver test plugmark-driver-example',
        'plugmark driver test sim/example/profile-wrench.json',
      ),
    )
    .action((named) => run(async () => (await import('../station/driver-test.ts')).test(named))());
  driver
    .command('teach')
    .description('finds the profile of a device that nobody has documented, from what its display shows')
    .argument('[device]', 'its Bluetooth address or its serial port; left out: from captures')
    .requiredOption('--unit <unit>', 'unit of its display: N.m, lbf.ft, mm and the like')
    .requiredOption('--step <figure>', 'smallest step of its display')
    .option('--baud <number>', 'of a serial port: bits a second', whole, 9600)
    .option('--rest-seconds <number>', 'how long the device is left untouched', whole, 4)
    .option('--rest <file>', 'a capture of it untouched')
    .option(
      '--figure <pair>',
      'FIGURE=FILE: a capture, with what the display showed; three at least',
      collected,
      [],
    )
    .option('--proof <pair>', 'FIGURE=FILE: one more, which is kept back to prove the profile with')
    .option('--advertised <uuid>', 'the service that it advertises; that of its readings unless given')
    .option('--title <text>', 'a name for the device', 'Taught on the bench')
    .requiredOption('--out <file>', 'the profile; a file that does not exist yet')
    .addHelpText(
      'after',
      closing(
        { failed: 'no profile explains all of it, or more than one' },
        'plugmark driver teach c2:00:00:00:00:01 --unit N.m --step 0.01 --out my.profile.json',
        'plugmark driver teach /dev/serial/by-id/NAME --unit N.m --step 0.01 --out my.profile.json',
        'plugmark driver teach --unit N.m --step 0.01 --rest rest.capture.jsonl --figure 8.23=1.capture.jsonl --figure -6.41=2.capture.jsonl --figure 41.07=3.capture.jsonl --proof 30.55=4.capture.jsonl --out my.profile.json',
      ),
    )
    .action((device, options) =>
      run(async () => (await import('../station/teach.ts')).teach(device, options))(),
    );
};
