import { readFileSync } from 'node:fs';
import { pageOf } from './markdown.ts';
import type { Page } from './page.ts';

/** The topics of the manual, in the order of its list; each is `topics/NAME.md`. */
export const TOPICS = [
  'install',
  'demo',
  'station-file',
  'specifications',
  'work-order',
  'job',
  'routine',
  'verdicts',
  'jobs',
  'events',
  'certificates',
  'verify',
  'papers',
  'page',
  'record-format',
  'privacy',
  'package-format',
  'keys',
  'log',
  'witnesses',
  'archive',
  'backup',
  'audit',
  'impact',
  'statistics',
  'gauge-study',
  'bluetooth',
  'profiles',
  'drivers',
  'simulator',
  'traces',
] as const;
export type Topic = (typeof TOPICS)[number];

export const isTopic = (name: string): name is Topic => TOPICS.some((topic) => topic === name);

export const topicFile = (topic: Topic): URL => new URL(`./topics/${topic}.md`, import.meta.url);

export const topicPage = (topic: Topic): Page => pageOf(readFileSync(topicFile(topic), 'utf8'));
