import { agreed } from '../../src/evidence/platform/signature.browser.ts';
import { parseTrustList } from '../../src/evidence/trust.ts';
import { verifyRecord } from '../../src/evidence/verify.ts';
import { orThrow } from '../../src/result.ts';

Object.assign(globalThis, {
  verified: async (bytes: Uint8Array, trust: Uint8Array) => {
    const list = orThrow(parseTrustList(trust, 'trust'));
    const { record: _, ...report } = await agreed(() =>
      verifyRecord(bytes, list, null, '2026-06-01T00:00:00.000Z'),
    );
    return JSON.stringify(report);
  },
});
