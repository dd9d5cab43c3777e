import { existsSync } from 'node:fs';
import { stateEnrolment, tokenHash } from '../../archive/enrolment.ts';
import { jsonIn } from '../../archive/json.ts';
import { logId } from '../../archive/log-id.ts';
import { enrolledSchema } from '../../archive/message.ts';
import { readVerifierKey } from '../../evidence/verifier-key.ts';
import { writeWhole } from '../../files/output.ts';
import { type Problem, ProblemError } from '../../problem.ts';
import { w } from '../../words/catalogue.ts';
import { type Scope, withStationFolder } from '../station/scope.ts';
import { signerOf } from '../station/sign-log.ts';
import { stateOf } from '../station/station.ts';
import { EXIT, type ExitCode, safeLine } from '../terminal/exit.ts';
import { jsonText } from '../terminal/json-text.ts';
import { askSecret } from '../terminal/secret.ts';
import { print } from '../terminal/wrapped.ts';
import { type ArchiveLink, archiveAt, ask, linkPath } from './archive-link.ts';

/** Enrols the station with an archive, by its one-time token. From then on `archive ship` ships the log there. */
export function joinArchive(url: string, options: Scope): Promise<ExitCode> {
  return withStationFolder(options, async (stationFolder) => {
    const path = linkPath(stationFolder.folder);
    if (existsSync(path))
      throw new ProblemError({
        code: 'file-exists',
        where: path,
        message: w`this station has joined an archive already`,
        next: w`Remove the file to join another one; what the first one has, it keeps.`,
      });
    const archive = await archiveAt(url);
    const token = (await askSecret('enrolment', w`One-time token of ${safeLine(archive)}: `))?.trim() ?? '';
    const state = stateOf(stationFolder);
    const { key } = await signerOf(stationFolder, state);
    const { origin, name: station } = state;
    const statement = stateEnrolment({ archive, origin, station, token: tokenHash(token) }, key.privateKey);
    const reply = await ask(url, '/enrol', {
      type: 'application/json',
      content: JSON.stringify({ token, statement }),
    });
    if (reply.status === 409) throw new ProblemError(originTaken(url));
    const enrolled = enrolledSchema.safeParse(jsonIn(reply.text));
    if (reply.status !== 200 || !enrolled.success)
      throw new ProblemError({
        code: 'archive-refused',
        where: url,
        message: w`the archive did not take the station: ${safeLine(reply.text.trim()) || w`it answered ${reply.status}`}`,
        next: w`Ask whoever runs the archive for a new token (plugmark archive enrol): each is good once.`,
      });
    const { log, vkeys } = enrolled.data;
    const good =
      log === logId(origin) && vkeys.every((vkey) => (readVerifierKey(vkey)?.kind ?? 'log') !== 'log');
    if (!good)
      throw new ProblemError({
        code: 'archive-refused',
        where: url,
        message: w`the archive answered with another log, or with keys that cannot cosign`,
        next: w`Have it looked at by whoever runs the archive. The station has not joined it.`,
      });
    const link: ArchiveLink = { form: 'plugmark/archive-link/1', url, archive, log, vkeys };
    writeWhole(path, jsonText(link));
    print([
      w`${safeLine(station)} has joined ${safeLine(archive)}.`,
      w`Next: plugmark archive ship. It ships whatever the archive has not got; the log itself is the outbox.`,
    ]);
    return EXIT.done;
  });
}

/** Two stations under one origin would be two histories under one name. */
const originTaken = (url: string): Problem => ({
  code: 'archive-refused',
  where: url,
  message: w`the archive has a log of the same origin already, with another key or of another tenant`,
  next: w`If this folder is a copy of another station's, set up a station of its own: plugmark setup. If this station has a new key, have it taken in there: plugmark archive take-key.`,
});
