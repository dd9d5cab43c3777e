/** Logs of invented stations, in memory. */
import { generateKeyPairSync, type KeyObject } from 'node:crypto';
import type { Outbox } from '../../src/archive/outbox.ts';
import { originOf, signCheckpoint } from '../../src/evidence/checkpoint.ts';
import { publicJwk, thumbprint } from '../../src/evidence/jwk.ts';
import { leafHash, nodeHash, type Subtrees, treeRoot } from '../../src/evidence/merkle.ts';

export interface TestLog {
  readonly origin: string;
  readonly key: KeyObject;
  readonly bodies: string[];
  readonly outbox: (size?: number) => Outbox;
}

/** A log whose entries are lines of JSON; `rewrite` changes one of them, as nobody may. */
export function testLog(count: number, from?: TestLog): TestLog {
  const key = from?.key ?? generateKeyPairSync('ed25519').privateKey;
  const origin = originOf(thumbprint(publicJwk(key)));
  const bodies = from === undefined ? [] : [...from.bodies];
  while (bodies.length < count)
    bodies.push(JSON.stringify({ n: bodies.length, text: `entry ${bodies.length}` }));
  return { origin, key, bodies, outbox: (size = bodies.length) => outboxOf(origin, key, bodies, size) };
}

function outboxOf(origin: string, key: KeyObject, bodies: readonly string[], size: number): Outbox {
  const tree = treeOver(bodies);
  return {
    size,
    note: signCheckpoint({ origin, size, root: treeRoot(tree, size) }, key),
    tree,
    entries: (from, to) => bodies.slice(from, to).map((body) => ({ body, disclosures: [] })),
    successions: [],
  };
}

function treeOver(bodies: readonly string[]): Subtrees {
  const known = new Map<string, Uint8Array>();
  const node = (level: number, index: number): Uint8Array => {
    const at = `${level}/${index}`;
    const there = known.get(at);
    if (there !== undefined) return there;
    const hash =
      level === 0
        ? leafHash(Buffer.from(bodies[index] ?? ''))
        : nodeHash(node(level - 1, 2 * index), node(level - 1, 2 * index + 1));
    known.set(at, hash);
    return hash;
  };
  return { node };
}
