// The house's directions: a room knows only the rooms named here, itself, and the ground it all stands on.
const PLATFORM = '^src/evidence/platform/';
/** Judges of closed editions are never changed; the page gives them what they take from Node. */
const CLOSED = '^src/rules/edition-[0-9]+/';
const GROUND = [
  '^src/(personal|problem|problem-code|result|reading)\\.ts$',
  '^src/ui/printable\\.ts$',
  // Makes a text in its reader's language.
  '^src/words/catalogue\\.ts$',
  PLATFORM,
];
const ROOMS = {
  quantity: [],
  metrology: ['quantity'],
  statistics: ['quantity', 'metrology'],
  plug: ['quantity', 'metrology'],
  instrument: ['quantity', 'metrology'],
  pull: ['quantity'],
  sequence: ['quantity', 'plug', 'pull'],
  job: ['quantity', 'metrology', 'plug', 'instrument', 'pull', 'sequence'],
  rules: ['quantity', 'metrology', 'plug', 'instrument', 'pull', 'sequence', 'job'],
  evidence: ['quantity', 'metrology', 'plug', 'instrument', 'pull', 'sequence', 'job', 'rules'],
  audit: ['quantity', 'metrology', 'statistics', 'plug', 'instrument', 'pull', 'sequence', 'job', 'evidence'],
  package: [
    'quantity',
    'metrology',
    'plug',
    'instrument',
    'pull',
    'sequence',
    'job',
    'rules',
    'evidence',
    'audit',
  ],
  pipeline: [
    'quantity',
    'metrology',
    'statistics',
    'plug',
    'instrument',
    'pull',
    'sequence',
    'job',
    'evidence',
    'audit',
  ],
  report: [
    'words',
    'package',
    'quantity',
    'metrology',
    'statistics',
    'plug',
    'instrument',
    'pull',
    'sequence',
    'job',
    'evidence',
    'audit',
    'package',
  ],
  // Of the report only its table of words.
  ui: [
    'quantity',
    'metrology',
    'plug',
    'instrument',
    'pull',
    'sequence',
    'job',
    'evidence',
    'pipeline',
    'report/words',
  ],
  // What it keeps and signs with, it is given.
  serve: ['evidence', 'archive'],
  /** What a station ships and how an archive takes it; where that lies is a port. */
  archive: ['evidence'],
  files: [],
  words: [],
  /** Pages; the only place that knows the DOM. */
  web: ['rules', 'evidence', 'package', 'job', 'metrology', 'report', 'words'],
};
const PURE = [
  'quantity',
  'metrology',
  'statistics',
  'plug',
  'instrument',
  'pull',
  'sequence',
  'job',
  'rules',
  'evidence',
  'audit',
  'package',
  'archive',
  'words',
];
const DESKS = [
  'audit',
  'bench',
  'evidence',
  'station',
  'study',
  'witness',
  'archive',
  'answers',
  'declare',
  'help',
  'terminal',
];
/** A file of the command line that lies at no desk, and what starts the program, which may. */
const STRAY = `^src/cli/(?!(${DESKS.join('|')})/)`;
const STARTS = '^src/cli/(bin|main|needed-node)\\.ts$';
const STRAY_COMMENT = 'a command belongs to a desk; only what starts the program lies beside the desks';
const rule = (name, comment, from, to) => ({ name, comment, severity: 'error', from, to });

const rooms = Object.entries(ROOMS).map(([room, known]) =>
  rule(
    `room-${room}`,
    `src/${room} knows only: ${known.join(', ') || 'nothing of the house'}`,
    { path: `^src/${room}/` },
    {
      path: '^(src|drivers|sim|db|tests)/',
      pathNot: [`^src/(${[room, ...known].join('|')})/`, ...GROUND],
    },
  ),
);

module.exports = {
  forbidden: [
    ...rooms,
    rule(
      'ground',
      'what all rooms stand on knows no room',
      { path: GROUND },
      { path: '^(src/[^/]+/|drivers/|sim/|db/)', pathNot: [PLATFORM, '^src/words/catalogue\\.ts$'] },
    ),
    rule(
      'drivers',
      'drivers know the ground, quantities, files, and each other',
      { path: '^drivers/' },
      { path: '^(src|sim|db|tests)/', pathNot: ['^src/(quantity|files)/', ...GROUND] },
    ),
    rule(
      'db',
      'the store knows the log and no tool',
      { path: '^db/' },
      { path: '^(src/(ui|cli|report|pipeline|serve)|drivers|sim|tests)/' },
    ),
    rule(
      'sim',
      'the simulation knows no store and no screen',
      { path: '^sim/' },
      { path: '^(src/(ui|cli|report|pipeline|evidence)|db|tests)/' },
    ),
    rule(
      'shell',
      'only the command line knows tools, simulation and store',
      { path: '^src/', pathNot: '^src/cli/' },
      { path: '^(drivers|sim|db)/' },
    ),
    rule(
      'cli',
      'nothing knows the command line',
      { path: '^(src|drivers|sim|db)/', pathNot: '^src/cli/' },
      { path: '^src/cli/' },
    ),
    rule('desks', STRAY_COMMENT, { path: STRAY, pathNot: STARTS }, {}),
    rule('desks-too', STRAY_COMMENT, {}, { path: STRAY, pathNot: STARTS }),
    rule(
      'noble',
      'drivers/radio is the only place that knows noble',
      { path: '^(src|drivers|sim|db)/', pathNot: '^drivers/radio/' },
      { path: '@abandonware/noble' },
    ),
    rule(
      'fastify',
      'src/serve is the only place that knows the library for HTTP',
      { path: '^(src|drivers|sim|db)/', pathNot: '^src/serve/' },
      { path: 'node_modules/@?fastify/' },
    ),
    rule(
      'serial',
      'drivers/serial is the only place that knows the library for serial ports',
      { path: '^(src|drivers|sim|db)/', pathNot: '^drivers/serial/' },
      { path: 'node_modules/serialport' },
    ),
    rule(
      'sqlite',
      'db is the only place that knows SQLite',
      { path: '^(src|drivers|sim)/' },
      { path: 'better-sqlite3' },
    ),
    rule(
      'postgres',
      'db/archive is the only place that knows PostgreSQL',
      { path: '^(src|drivers|sim|db)/', pathNot: '^db/archive/' },
      { path: 'node_modules/pg/' },
    ),
    rule(
      'ink',
      'src/ui is the only place that knows the terminal library',
      { path: '^(src|drivers|sim|db)/', pathNot: '^src/ui/' },
      { path: 'node_modules/(ink|react)/' },
    ),
    rule(
      'pure',
      'pure rooms do no I/O and run in a browser as well: only the platform knows what the machine gives',
      { path: `^src/(${PURE.join('|')})/`, pathNot: [PLATFORM, CLOSED] },
      { dependencyTypes: ['core'] },
    ),
    rule('cycles', 'no circles', {}, { circular: true }),
  ],
  options: {
    doNotFollow: { path: 'node_modules' },
    tsPreCompilationDeps: true,
    tsConfig: { fileName: 'tsconfig.json' },
    enhancedResolveOptions: { exportsFields: ['exports'], conditionNames: ['import', 'node', 'default'] },
  },
};
