import { rounded } from '../quantity/rounded.ts';
import type { DetectedPull, PlugTurn, Rise, Turn } from './pull.ts';

/** A pull with no more digits than mean something: torque to a millionth of a N·m, times to a microsecond. */
export function roundedPull(pull: DetectedPull): DetectedPull {
  const { releaseNm, dropShare, slightFall, fallMs, turn, sinceLastMs } = pull;
  return {
    ...pull,
    peakNm: rounded(pull.peakNm, 6),
    peakStandardNm: rounded(pull.peakStandardNm, 6),
    highestNm: rounded(pull.highestNm, 6),
    releaseNm: releaseNm === null ? null : rounded(releaseNm, 6),
    dropShare: dropShare === null ? null : rounded(dropShare, 6),
    ...(slightFall !== undefined && {
      slightFall: {
        torqueNm: rounded(slightFall.torqueNm, 6),
        dropShare: rounded(slightFall.dropShare, 6),
      },
    }),
    ...(fallMs !== undefined && { fallMs: rounded(fallMs, 3) }),
    riseMs: rounded(pull.riseMs, 3),
    rise: roundedRise(pull.rise),
    turn: turn === null ? null : roundedTurn(turn),
    sinceLastMs: sinceLastMs === null ? null : rounded(sinceLastMs, 3),
    zeroNm: rounded(pull.zeroNm, 6),
    noiseNm: rounded(pull.noiseNm, 6),
    intervalUs: rounded(pull.intervalUs, 1),
  };
}

const roundedRise = ({ reachedMs, slopeAtTopNmPerS, impulseNms, setbackNm }: Rise): Rise => ({
  reachedMs: reachedMs.map((atMs) => rounded(atMs, 3)),
  slopeAtTopNmPerS: rounded(slopeAtTopNmPerS, 3),
  impulseNms: rounded(impulseNms, 6),
  setbackNm: rounded(setbackNm, 6),
});

const roundedTurn = ({ startToPeakDeg, from10PercentDeg, from50PercentDeg, workJ, plug }: Turn): Turn => ({
  startToPeakDeg: rounded(startToPeakDeg, 3),
  from10PercentDeg: rounded(from10PercentDeg, 3),
  from50PercentDeg: rounded(from50PercentDeg, 3),
  workJ: rounded(workJ, 6),
  ...(plug !== undefined && { plug: roundedPlugTurn(plug) }),
});

const roundedPlugTurn = (plug: PlugTurn): PlugTurn => ({
  turnedDeg: rounded(plug.turnedDeg, 3),
  standardDeg: rounded(plug.standardDeg, 3),
  fromNm: rounded(plug.fromNm, 6),
  windUpDeg: plug.windUpDeg === null ? null : rounded(plug.windUpDeg, 3),
  ...(plug.contactDeg !== undefined && { contactDeg: rounded(plug.contactDeg, 3) }),
  ...(plug.strokes !== undefined && { strokes: plug.strokes }),
  ...(plug.woundUpDeg !== undefined && { woundUpDeg: rounded(plug.woundUpDeg, 3) }),
  reachedDeg: plug.reachedDeg.map((deg) => rounded(deg, 3)),
});
