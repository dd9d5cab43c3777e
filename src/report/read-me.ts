/** The guide to a package, for whoever opens its folder. */
import { PACKAGE_FILES } from '../package/format.ts';
import { printable } from '../ui/printable.ts';

const oneLine = (text: string) => printable(text, 400);

/** The file that says what lies in the folder. */
export const READ_ME = 'READ-ME.txt';

/** The page that verifies the folder in a browser. */
export const VERIFY_PAGE = 'verify.html';

/** What lies in the folder, for whoever opens it without having heard of it. */
export const readMe = (station: string, kid: string, purpose: string) =>
  `Records of spark plug work by ${oneLine(station)}. ${oneLine(purpose)}.

Check the whole folder, offline:

    plugmark verify THIS-FOLDER --trust YOUR-LIST --kept YOUR.checkpoint

Without plugmark: open verify.html in a browser, and drop the whole folder and your list on it. A page that came with the
folder is its maker's: take one that you have from elsewhere where it matters.

YOUR-LIST is the trusted-keys.json that the station gave you by another way, outside this folder; the one in here is a
copy, and no trust.
Its key now: ${kid}
YOUR.checkpoint is the one that you kept from an earlier audit; leave --kept out if there was none.
Keep log.checkpoint for the next time.

index.json             every job with its record, its paper and the impact assessments that put it in question later, and
                       every file with its size and SHA-256; index.jws is the station's signature over it
verify.html            the page that verifies all of it in a browser, without a network
jobs.csv               the jobs as a list, with what was learned later and what wants an explanation
records/               one signed record a job: what counts
papers/                the same for people, if any. A paper is made from its record alone, and says nothing of what was
                       learned later: jobs.csv and index.json do. To make it anew:
                       plugmark paper records/NUMBER.record.json --trust YOUR-LIST --out ANOTHER-FOLDER
${`${PACKAGE_FILES.impacts}/`.padEnd(22)} the assessments that put jobs in here in question, with the vehicles that each touched, if any
log.checkpoint         the signed size and root of the station's log
auditor.checkpoint     the checkpoint that the package was made with, if any
proofs.json            that the log begins as older checkpoints have it, and holds the station's entries (RFC 9162)
station-entries.json   the station's own entries: keys, tools, figures, impact assessments; of a claim, those that bear on it
trusted-keys.json      a copy of the station's list of its keys

A package proves what is in it, and that nothing in front of a kept checkpoint was removed or rewritten. That no job
was left out when it was chosen, only the station's whole log can show. "plugmark verify" says what else is not proven.
`;
