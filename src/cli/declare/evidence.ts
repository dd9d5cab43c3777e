import { type Declare, examples, scope, whole } from './common.ts';

/** What keeps evidence: verification, the log, the keys, and what others add to a record. */
export const declareEvidence: Declare = (program, run) => {
  program
    .command('verify')
    .description(
      'says whether a job record, an audit package, or every record in a folder is authentic and complete',
    )
    .argument('<path>', 'the record (*.record.json), an audit package, or a folder of records')
    .option(
      '--trust <file>',
      'the keys that are trusted (JWK set), not the list inside a package; trusted-keys.json unless told',
    )
    .option('--time <file>', 'a time stamp over the record (*.tsr)')
    .option('--time-ca <file>', 'the certificates by which its authority is believed (PEM)')
    .option('--kept <file>', 'with a package: the checkpoint that you kept from before')
    .option('--json', 'the findings as JSON')
    .addHelpText(
      'after',
      '\nExit code: 0 authentic, complete, signer trusted; 1 not authentic or not complete; 2 not readable as a record;\n' +
        '3 authentic but the signer is not on the trust list.\n' +
        examples('plugmark verify J-1001.record.json --trust trusted-keys.json', 'plugmark verify records/'),
    )
    .action((path, options) =>
      run(async () => (await import('../evidence/verify.ts')).verify(path, options))(),
    );
  program
    .command('paper')
    .description('makes the PDF and the CSV of a record anew, from the record alone')
    .argument('<file>', 'the record (*.record.json)')
    .requiredOption('--out <folder>', 'where they go')
    .option('--trust <file>', 'the keys that are trusted (JWK set); trusted-keys.json unless told')
    .addHelpText(
      'after',
      '\nExit code: that of verification. A record that does not hold has no papers.\n' +
        examples('plugmark paper audit-2026/records/J-1001.record.json --out papers'),
    )
    .action((file, options) => run(async () => (await import('../bench/paper.ts')).paper(file, options))());

  const log = program
    .command('log')
    .description('checkpoints and proofs of the station log')
    .addHelpText('after', examples('plugmark log check kept.checkpoint'));
  scope(log.command('checkpoint').description('signs the log as it stands; keep it elsewhere'))
    .option('--out <file>', 'write it to a file that is not there yet')
    .addHelpText('after', examples('plugmark log checkpoint --out 2026-03.checkpoint'))
    .action((options) => run(async () => (await import('../station/log.ts')).checkpoint(options))());
  const prove = log
    .command('prove')
    .description('proofs that other programs can check (RFC 9162)')
    .addHelpText('after', examples('plugmark log prove inclusion 12'));
  scope(
    prove
      .command('inclusion')
      .description('an entry stands in the log')
      .argument('<entry>', 'its number', whole),
  )
    .addHelpText('after', examples('plugmark log prove inclusion 12'))
    .action((entry, options) =>
      run(async () => (await import('../station/log.ts')).proveInclusion(entry, options))(),
    );
  scope(
    prove
      .command('consistency')
      .description('the log begins with an old checkpoint')
      .argument('<checkpoint>'),
  )
    .addHelpText('after', examples('plugmark log prove consistency 2026-03.checkpoint'))
    .action((file, options) =>
      run(async () => (await import('../station/log.ts')).proveConsistency(file, options))(),
    );
  scope(log.command('check').description('nothing was removed or rewritten, or where the log first diverges'))
    .argument('[checkpoint...]', 'checkpoints that were kept, or records, which hold one each')
    .addHelpText('after', examples('plugmark log check 2026-03.checkpoint J-1001.record.json'))
    .action((files, options) => run(async () => (await import('../station/log.ts')).check(files, options))());

  const keys = program
    .command('keys')
    .description('the keys of the station and its people')
    .addHelpText('after', examples('plugmark keys list'));
  scope(keys.command('list').description('all keys and where they stand'))
    .addHelpText('after', examples('plugmark keys list'))
    .action((options) => run(async () => (await import('../station/keys.ts')).listKeys(options))());
  scope(keys.command('rotate').description('a new key for the station, named by the old one'))
    .option('--lost', 'the old key is lost or not to be believed, and cannot name the new one')
    .option('--because <text>', 'with --lost: what happened')
    .addHelpText('after', examples('plugmark keys rotate'))
    .action((options) => run(async () => (await import('../station/keys.ts')).rotateKey(options))());
  scope(keys.command('revoke').description('a key is not to be believed any more').argument('<kid>'))
    .option('--from <date>', 'from when on; now unless told')
    .requiredOption('--reason <reason>', 'retired, lost or compromised')
    .requiredOption('--because <text>', 'what happened')
    .addHelpText('after', examples('plugmark keys revoke KID --reason lost --because "laptop stolen"'))
    .action((kid, options) =>
      run(async () => (await import('../station/keys.ts')).revokeKey(kid, options))(),
    );
  scope(keys.command('lock').description("puts the station's key under a passphrase"))
    .option('--open', 'takes the passphrase off')
    .addHelpText('after', examples('plugmark keys lock'))
    .action((options) => run(async () => (await import('../station/keys.ts')).lockKey(options))());
  scope(keys.command('technician').description('a key under a PIN for a technician').argument('<name>'))
    .addHelpText('after', examples('plugmark keys technician "Technician One"'))
    .action((name, options) =>
      run(async () => (await import('../station/keys.ts')).addTechnician(name, options))(),
    );
  scope(
    keys
      .command('technicians')
      .description('whether technicians sign')
      .argument('<decision>', 'sign or do-not-sign'),
  )
    .addHelpText('after', examples('plugmark keys technicians sign'))
    .action((decision, options) =>
      run(async () => (await import('../station/keys.ts')).decideTechnicians(decision, options))(),
    );
  keys
    .command('make')
    .description('a key for somebody outside the station, such as a foreman who countersigns')
    .argument('<file>')
    .requiredOption('--name <name>', 'whose it is, as trust lists say')
    .option('--role <role>', 'station, technician or countersigner', 'countersigner')
    .addHelpText('after', examples('plugmark keys make foreman.pem --name "Foreman One"'))
    .action((file, options) =>
      run(async () => (await import('../station/keys.ts')).makeOwnKey(file, options))(),
    );

  program
    .command('countersign')
    .description('adds a signature to a record, as a new file')
    .argument('<file>', 'the record')
    .requiredOption('--key <file>', 'the key that signs (PEM)')
    .option('--out <file>', 'where the countersigned record goes')
    .addHelpText('after', examples('plugmark countersign J-1001.record.json --key foreman.pem'))
    .action((file, options) =>
      run(async () => (await import('../evidence/countersign.ts')).countersign(file, options))(),
    );
  program
    .command('time-stamp')
    .description('fetches a trusted time stamp (RFC 3161) for a record; needs openssl')
    .argument('<file>', 'the record')
    .requiredOption('--authority <url>', 'where to ask')
    .requiredOption('--ca <file>', 'the certificates by which the authority is believed (PEM)')
    .addHelpText(
      'after',
      examples('plugmark time-stamp J-1001.record.json --authority URL --ca authority.pem'),
    )
    .action((file, options) =>
      run(async () => (await import('../evidence/time-stamp.ts')).timeStamp(file, options))(),
    );
  program
    .command('schema')
    .description('prints the JSON Schema of a form that plugmark reads or writes, or the names of all forms')
    .argument('[form]', 'which one, for example work-order')
    .addHelpText('after', examples('plugmark schema', 'plugmark schema work-order'))
    .action((form) => run(async () => (await import('../help/schema.ts')).schema(form))());
};
