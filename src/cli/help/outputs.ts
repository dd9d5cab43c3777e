/** The form of each answer, by the command that gives it with `--json`. */
import { askAnswer } from '../answers/ask.ts';
import { calendarAnswer } from '../answers/calendar.ts';
import { capabilityAnswer, deliveredAnswer } from '../answers/capability.ts';
import { certificatesCheckAnswer, driftAnswer } from '../answers/drift.ts';
import { gaugeStudyListAnswer, gaugeStudyShowAnswer } from '../answers/gauge-study.ts';
import { impactListAnswer, impactShowAnswer } from '../answers/impact.ts';
import { jobsListAnswer, jobsShowAnswer } from '../answers/jobs.ts';
import { retentionAnswer } from '../answers/retention.ts';
import {
  specificationsCheckAnswer,
  specificationsListAnswer,
  specificationsShowAnswer,
} from '../answers/specifications.ts';
import {
  backupAnswer,
  devicesScanAnswer,
  doctorAnswer,
  driverCheckAnswer,
  keysListAnswer,
  logCheckAnswer,
  recoverAnswer,
} from '../answers/station.ts';
import { verifyAnswer } from '../answers/verify.ts';
import { windowAnswer } from '../answers/window.ts';
import { logWitnessAnswer, witnessListAnswer } from '../answers/witness.ts';
import { pullsReportSchema } from '../bench/pulls-report.ts';

export const OUTPUTS = {
  ask: askAnswer,
  backup: backupAnswer,
  calendar: calendarAnswer,
  capability: capabilityAnswer,
  'certificates-check': certificatesCheckAnswer,
  delivered: deliveredAnswer,
  'devices-scan': devicesScanAnswer,
  doctor: doctorAnswer,
  drift: driftAnswer,
  'driver-check': driverCheckAnswer,
  'gauge-study-list': gaugeStudyListAnswer,
  'gauge-study-show': gaugeStudyShowAnswer,
  'impact-list': impactListAnswer,
  'impact-show': impactShowAnswer,
  'jobs-list': jobsListAnswer,
  'jobs-show': jobsShowAnswer,
  'keys-list': keysListAnswer,
  'log-check': logCheckAnswer,
  'log-witness': logWitnessAnswer,
  pulls: pullsReportSchema,
  recover: recoverAnswer,
  retention: retentionAnswer,
  'specifications-check': specificationsCheckAnswer,
  'specifications-list': specificationsListAnswer,
  'specifications-show': specificationsShowAnswer,
  verify: verifyAnswer,
  window: windowAnswer,
  'witness-list': witnessListAnswer,
} as const;
