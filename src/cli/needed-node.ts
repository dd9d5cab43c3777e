/** As package.json says under `engines`. Knows nothing else: it is asked before anything that an old Node cannot load. */
export const NEEDED_NODE = '22.12';

export function isNewEnough(version: string): boolean {
  const [major = 0, minor = 0] = version.split('.').map(Number);
  const [neededMajor = 0, neededMinor = 0] = NEEDED_NODE.split('.').map(Number);
  return major > neededMajor || (major === neededMajor && minor >= neededMinor);
}

/** One sentence and what to do, as every problem of the program reads. */
export const oldNodeText = (version: string) =>
  `plugmark: Node ${version} is too old; plugmark needs ${NEEDED_NODE} or newer\n  ` +
  'Install a newer Node, or the Debian package of plugmark, which brings its own.\n';
