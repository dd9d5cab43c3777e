// Holds the write lock of a log for so long: node holder.mjs LOG MS
import Sqlite from 'better-sqlite3';

const [path, ms] = process.argv.slice(2);
const db = new Sqlite(path, { timeout: 5000 });
db.exec('BEGIN IMMEDIATE');
process.stdout.write('held\n');
setTimeout(() => {
  db.exec('ROLLBACK');
  db.close();
}, Number(ms));
