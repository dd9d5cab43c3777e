import type { Command } from 'commander';
import { closing, type Declare, examples, json } from './common.ts';

const folder = (command: Command): Command =>
  command.option('--data <folder>', 'the folder of the witness', 'plugmark-witness');

/** The other side of a log: a second shop, a fleet or an insurer that holds a station to its history. */
export const declareWitness: Declare = (program, run) => {
  const witness = program
    .command('witness')
    .description('holds stations to their history: cosigns their logs for as long as nothing is rewritten')
    .addHelpText(
      'after',
      examples('plugmark witness init --name example.com/witness', 'plugmark witness serve'),
    );
  folder(witness.command('init').description('makes a witness: its key, and the file of what it cosigned'))
    .requiredOption('--name <text>', 'its name, like an address: example.com/witness')
    .addHelpText('after', closing({}, 'plugmark witness init --name example.com/witness'))
    .action((options) => run(async () => (await import('../witness/init.ts')).initWitness(options))());
  folder(
    witness
      .command('add')
      .description('makes the witness cosign a log; a new key of a log retires the one before it')
      .argument('<log-vkey>', 'what "plugmark log vkey" prints at the station'),
  )
    .addHelpText('after', closing({}, 'plugmark witness add "$(cat log.vkey)"'))
    .action((vkey, options) => run(async () => (await import('../witness/logs.ts')).addLog(vkey, options))());
  json(
    folder(
      witness
        .command('list', { isDefault: true })
        .description('lists the logs and what was cosigned last; runs where you name no other command'),
    ),
  )
    .addHelpText('after', closing({ failed: 'a log has two histories' }, 'plugmark witness list'))
    .action((options) => run(async () => (await import('../witness/logs.ts')).listLogs(options))());
  folder(witness.command('serve').description('answers logs over HTTP until you end it (C2SP tlog-witness)'))
    .option('--listen <address>', 'address and port', '127.0.0.1:8017')
    .option('--certificate <file>', 'its certificate for TLS (PEM), with those above it')
    .option('--key <file>', 'with --certificate: its key (PEM)')
    .option('--without-tls', 'listen without TLS beyond this computer, because a proxy in front does it')
    .addHelpText(
      'after',
      closing(
        {},
        'plugmark witness serve',
        'plugmark witness serve --listen 0.0.0.0:443 --certificate c.pem --key k.pem',
      ),
    )
    .action((options) => run(async () => (await import('../witness/serve.ts')).serveWitness(options))());
};
