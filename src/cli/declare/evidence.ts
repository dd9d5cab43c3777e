import { type Command, Option } from 'commander';
import {
  closing,
  csvLocale,
  type Declare,
  examples,
  forReader,
  json,
  oneOrMore,
  scope,
  whole,
} from './common.ts';

/** What keeps evidence: verification, the log, the keys, and what others add to a record. */
export const declareEvidence: Declare = (program, run) => {
  json(
    program
      .command('verify')
      .description('checks that a job record, an audit package, or every record in a folder is authentic')
      .argument(
        '<path>',
        'a record (*.record.json), its paper (PDF), a package, or a folder of records; - reads the standard input',
      ),
  )
    .option(
      '--trust <file>',
      'the keys that you trust (JWK set), never the list in a package; trusted-keys.json unless given',
    )
    .option(
      '--policy <file>',
      'which logs you trust, which witnesses must have cosigned, and how many (C2SP tlog-policy)',
    )
    .option('--time <file>', 'a time stamp for the record (*.tsr)')
    .option('--ca <file>', 'with --time: the certificates of its authority (PEM)')
    .option('--kept <file>', 'with a package: the checkpoint that you kept from before')
    .addHelpText(
      'after',
      closing(
        {
          done: 'authentic, signed by somebody you trust; a single record is complete and proven too',
          failed:
            'not authentic; a single record that is not complete, or rests on simulated or replayed figures; or a paper that is not what its record gives',
          badInput: 'not readable as a record or a package',
          untrusted: 'as it was sealed, but the signer is not on your trust list',
          otherRules:
            'authentic, but judged by rules that this version does not know; or a paper that another version drew',
        },
        'plugmark verify J-1001.record.json --trust trusted-keys.json',
        'plugmark verify J-1001.record.json --policy insurer.policy',
        'plugmark verify J-1001.pdf --trust trusted-keys.json',
        'plugmark verify records/',
      ),
    )
    .action((path, options) =>
      run(async () => (await import('../evidence/verify.ts')).verify(path, options))(),
    );
  program
    .command('show')
    .description('shows a record: verdicts, times of the steps, and each pull as a curve')
    .argument('<file>', 'the record (*.record.json)')
    .option('--plain', 'lines of text, without keys')
    .option('--svg <file>', 'instead, a picture of one pull with its window')
    .option('--pull <number>', 'with --svg: which pull; the last one that was judged unless given', oneOrMore)
    .option('--trust <file>', 'the keys that you trust (JWK set); trusted-keys.json unless given')
    .addHelpText(
      'after',
      closing(
        {
          failed: 'shown, but not authentic, or the job is not complete or not proven',
          untrusted: 'shown, but the signer is not on your trust list',
          otherRules: 'shown, but judged by rules that this version does not know',
        },
        'plugmark show J-1001.record.json',
        'plugmark show J-1001.record.json --svg pull-7.svg --pull 7',
      ),
    )
    .action((file, options) => run(async () => (await import('../evidence/show.ts')).show(file, options))());
  forReader(
    csvLocale(
      program
        .command('paper')
        .description('makes the PDF and the CSV of a record again, from the record alone')
        .argument('<file>', 'the record (*.record.json)'),
    ),
  )
    .requiredOption('--out <folder>', 'folder for the papers')
    .option('--trust <file>', 'the keys that you trust (JWK set); trusted-keys.json unless given')
    .addHelpText(
      'after',
      closing(
        {
          failed:
            'not authentic, and no paper was written; or written, but the job is not complete or not proven',
          untrusted: 'written, but the signer is not on your trust list',
          otherRules: 'written, but judged by rules that this version does not know',
        },
        'plugmark paper audit-2026/records/J-1001.record.json --out papers',
        'plugmark paper J-1001.record.json --out papers --language de --csv-locale de',
      ),
    )
    .action((file, options) => run(async () => (await import('../bench/paper.ts')).paper(file, options))());
  program
    .command('results')
    .description('writes the results of a record as JSON in the names of OPC UA for joining systems')
    .argument('<file>', 'the record (*.record.json)')
    .option('--out <file>', 'file for the results; the standard output unless given')
    .option('--trust <file>', 'the keys that you trust (JWK set); trusted-keys.json unless given')
    .addHelpText(
      'after',
      closing(
        {
          failed: 'not authentic, and nothing was written; or the job is not complete or not proven',
          untrusted: 'written, but the signer is not on your trust list',
          otherRules: 'written, but judged by rules that this version does not know',
        },
        'plugmark results J-1001.record.json --out J-1001.results.json',
      ),
    )
    .action((file, options) =>
      run(async () => (await import('../evidence/results.ts')).results(file, options))(),
    );

  program
    .command('page')
    .description('writes a page with a record inside, which verifies itself in any browser')
    .argument('<file>', 'the record (*.record.json)')
    .requiredOption('--out <file>', 'file for the page (*.html), which does not exist yet')
    .addHelpText(
      'after',
      closing(
        { failed: 'the record is not as its station sealed it, and no page was written' },
        'plugmark page J-1001.record.json --out J-1001.html',
      ),
    )
    .action((file, options) => run(async () => (await import('../evidence/page.ts')).page(file, options))());

  declareLog(program, run);
  declareKeys(program, run);

  program
    .command('countersign')
    .description('adds a signature to a record, as a new file')
    .argument('<file>', 'the record')
    .requiredOption('--key <file>', 'the key that signs (PEM)')
    .option('--out <file>', 'file for the countersigned record')
    .addHelpText('after', closing({}, 'plugmark countersign J-1001.record.json --key foreman.pem'))
    .action((file, options) =>
      run(async () => (await import('../evidence/countersign.ts')).countersign(file, options))(),
    );
  program
    .command('share')
    .description('writes a record without some of its personal texts; signatures and verdict stay the same')
    .argument('<file>', 'the record')
    .requiredOption(
      '--without <kinds>',
      'what is withheld, with commas: plate, vin, vehicle, fleet, customer, complaint, person (names), note (free text); or all',
    )
    .option(
      '--with-numbers',
      'keep free texts that contain a telephone number; they are withheld unless asked for',
    )
    .option('--out <file>', 'file for the shared record')
    .addHelpText(
      'after',
      closing(
        {},
        'plugmark share J-1001.record.json --without plate,vin,customer',
        'plugmark share J-1001.record.json --without all --out shared.record.json',
      ),
    )
    .action((file, options) =>
      run(async () => (await import('../evidence/share.ts')).share(file, options))(),
    );
  program
    .command('time-stamp')
    .description('fetches a trusted time stamp (RFC 3161) for a record')
    .argument('<file>', 'the record')
    .requiredOption('--authority <url>', 'address of the time-stamping authority')
    .requiredOption('--ca <file>', 'the certificates of the authority (PEM)')
    .addHelpText(
      'after',
      closing({}, 'plugmark time-stamp J-1001.record.json --authority URL --ca authority.pem'),
    )
    .action((file, options) =>
      run(async () => (await import('../evidence/time-stamp.ts')).timeStamp(file, options))(),
    );
};

const declareLog: Declare = (program, run) => {
  const log = program
    .command('log')
    .description('checkpoints and proofs of the station log')
    .addHelpText('after', examples('plugmark log check kept.checkpoint'));
  scope(log.command('checkpoint').description('signs the log as it is now; keep the checkpoint elsewhere'))
    .option('--out <file>', 'write it to this file, which does not exist yet')
    .addHelpText('after', closing({}, 'plugmark log checkpoint --out 2026-03.checkpoint'))
    .action((options) => run(async () => (await import('../station/log.ts')).checkpoint(options))());
  scope(log.command('vkey').description('prints the key that checkpoints are checked by (C2SP verifier key)'))
    .addHelpText('after', closing({}, 'plugmark log vkey'))
    .action((options) => run(async () => (await import('../station/log.ts')).printVerifierKey(options))());
  log
    .command('send')
    .description('sends what is new to the archive and to the witnesses; every job does so by itself')
    .option('--station <file>', 'the station file', 'station.json')
    .addHelpText(
      'after',
      closing({ done: 'all have it', failed: 'one has not; the output says why' }, 'plugmark log send'),
    )
    .action((options) => run(async () => (await import('../station/send.ts')).sendLog(options))());
  json(
    log
      .command('witness')
      .description('sends the newest checkpoint to the witnesses of the station file')
      .option('--station <file>', 'the station file', 'station.json'),
  )
    .addHelpText(
      'after',
      closing({ done: 'all cosigned', failed: 'one did not; the output says why' }, 'plugmark log witness'),
    )
    .action((options) => run(async () => (await import('../station/log-witness.ts')).witnessLog(options))());
  const prove = log
    .command('prove')
    .description('proofs that other programs can check (RFC 9162), as JSON')
    .addHelpText('after', examples('plugmark log prove inclusion 12'));
  scope(
    prove
      .command('inclusion')
      .description('proves that the log contains an entry')
      .argument('<entry>', 'its number', whole),
  )
    .addOption(
      new Option('--form <form>', 'JSON, or the text of c2sp.org/tlog-proof')
        .choices(['json', 'tlog-proof'])
        .default('json'),
    )
    .addHelpText(
      'after',
      closing(
        {},
        'plugmark log prove inclusion 12',
        'plugmark log prove inclusion 12 --form tlog-proof > 12.tlog-proof',
      ),
    )
    .action((entry, options) =>
      run(async () => (await import('../station/log.ts')).proveInclusion(entry, options))(),
    );
  scope(
    prove
      .command('consistency')
      .description('proves that the log goes on from an old checkpoint')
      .argument('<file>', 'the checkpoint, or a record, which contains one'),
  )
    .addHelpText(
      'after',
      closing(
        { failed: 'the log does not go on from the checkpoint' },
        'plugmark log prove consistency 2026-03.checkpoint',
      ),
    )
    .action((file, options) =>
      run(async () => (await import('../station/log.ts')).proveConsistency(file, options))(),
    );
  scope(
    log
      .command('lost')
      .description('states that entries are gone for good, so that the station can sign again'),
  )
    .requiredOption('--because <text>', 'what happened')
    .addHelpText('after', closing({}, 'plugmark log lost --because "disk broke, backup of last week"'))
    .action((options) => run(async () => (await import('../station/log-check.ts')).stateLoss(options))());
  json(
    scope(
      log
        .command('check')
        .description('checks that nothing in the log was removed or changed, or says where'),
    ),
  )
    .argument('[file...]', 'checkpoints that were kept, or records, which contain one each')
    .addHelpText(
      'after',
      closing(
        { done: 'nothing was removed or changed', failed: 'something was removed or changed' },
        'plugmark log check 2026-03.checkpoint J-1001.record.json',
      ),
    )
    .action((files, options) =>
      run(async () => (await import('../station/log-check.ts')).check(files, options))(),
    );
};

const declareKeys: Declare = (program, run) => {
  const keys = program
    .command('keys')
    .description('the keys of the station and its people')
    .addHelpText('after', examples('plugmark keys list'));
  json(
    scope(
      keys
        .command('list', { isDefault: true })
        .description('lists all keys, and which of them sign; runs where you name no other command'),
    ),
  )
    .addHelpText('after', closing({}, 'plugmark keys list'))
    .action((options) => run(async () => (await import('../station/keys.ts')).listKeys(options))());
  scope(keys.command('rotate').description('makes a new key for the station; the old one vouches for it'))
    .option('--lost', 'the old key is lost or not to be trusted, and cannot vouch for the new one')
    .option('--because <text>', 'with --lost: what happened')
    .option(
      '--pkcs11 <module>',
      'make the new key in a device, by the module (PKCS#11) of its maker; with --token',
    )
    .option('--token <label>', 'with --pkcs11: the token, by its label')
    .option('--even-so', 'also where records here are of entries that the log lost, and have no proof then')
    .option('--keep', 'keep the file of the old key, under a passphrase; it is destroyed unless given')
    .addHelpText('after', closing({}, 'plugmark keys rotate'))
    .action((options) => run(async () => (await import('../station/rotate.ts')).rotateKey(options))());
  asRevocation(
    scope(
      keys
        .command('revoke')
        .description('revokes a key: from that day on nobody is to trust it')
        .argument('<kid>', 'the key, by its thumbprint'),
    ),
  )
    .option('--from <date>', 'from this day on; now unless given')
    .requiredOption('--because <text>', 'what happened')
    .addHelpText('after', closing({}, 'plugmark keys revoke KID --as lost --because "laptop stolen"'))
    .action((kid, options) =>
      run(async () => (await import('../station/keys.ts')).revokeKey(kid, options))(),
    );
  scope(keys.command('lock').description('puts all keys of the station that are here under a passphrase'))
    .option('--remove', 'take the passphrase off')
    .addHelpText('after', closing({}, 'plugmark keys lock'))
    .action((options) => run(async () => (await import('../station/keys.ts')).lockKeys(options))());
  scope(
    keys
      .command('destroy')
      .description('writes over and deletes the file of a key that signs no more')
      .argument('<kid>', 'the key, by its thumbprint'),
  )
    .addHelpText('after', closing({}, 'plugmark keys destroy KID'))
    .action((kid, options) =>
      run(async () => (await import('../station/rotate.ts')).destroyKey(kid, options))(),
    );
  scope(
    keys
      .command('technician')
      .description('makes a key for a technician, under a PIN')
      .argument('<person>', 'name of the technician'),
  )
    .addHelpText('after', closing({}, 'plugmark keys technician "Technician One"'))
    .action((name, options) =>
      run(async () => (await import('../station/keys.ts')).addTechnician(name, options))(),
    );
  scope(
    keys
      .command('technicians')
      .description('decides whether technicians sign')
      .addArgument(
        program.createArgument('<decision>', 'what the shop decides').choices(['sign', 'do-not-sign']),
      ),
  )
    .addHelpText('after', closing({}, 'plugmark keys technicians sign'))
    .action((decision, options) =>
      run(async () => (await import('../station/keys.ts')).decideTechnicians(decision, options))(),
    );
  keys
    .command('make')
    .description('makes a key for somebody outside the station, such as a foreman who countersigns')
    .argument('<file>', 'file for the key (PEM); it does not exist yet')
    .requiredOption('--name <text>', 'name of the owner, as trust lists show it')
    .addOption(
      new Option('--role <role>', 'what the key signs as')
        .choices(['station', 'technician', 'countersigner'])
        .default('countersigner'),
    )
    .addHelpText('after', closing({}, 'plugmark keys make foreman.pem --name "Foreman One"'))
    .action((file, options) =>
      run(async () => (await import('../station/keys.ts')).makeOwnKey(file, options))(),
    );
};

const asRevocation = (command: Command): Command =>
  command.addOption(
    new Option('--as <reason>', 'why it is revoked')
      .choices(['retired', 'lost', 'compromised'])
      .makeOptionMandatory(),
  );
