/** Imported before anything else: zod makes no functions out of text, which the policy of the page forbids. */
import { config } from 'zod';

config({ jitless: true });
