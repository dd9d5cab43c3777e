/** What is said before the first pull of what the wrench can prove. None of it is a verdict. */
import { type Forecast, MODEL_PULLS } from '../job/forecast.ts';
import { shownUnit, torqueText } from '../quantity/shown.ts';
import { fixed, plainFigure, w } from '../words/catalogue.ts';
import { rangeFigures } from './words.ts';

type OfReadings = Forecast & { readonly kind: 'readings' };

/** Fewer calm pulls than this are no proof to work with. */
const CANNOT = MODEL_PULLS / 2;

/** What wants a word before the first pull; null where the wrench proves the window. */
export function forecastWarning(forecast: Forecast): string | null {
  if (forecast.kind === 'one-figure')
    return w`This wrench sends one figure a pull. After each pull confirm the cylinder with a key.`;
  if (forecast.kind === 'no-angle')
    return w`This wrench sends no angle: it cannot prove the turn. Use one that does, or turn the plugs by hand and record each: press c, then e.`;
  const { lacks, ok } = forecast;
  if (lacks === null) return null;
  const cannot =
    ok < CANNOT
      ? w`this wrench cannot prove ${range(forecast)}`
      : w`this wrench leaves ${MODEL_PULLS - ok} of ${MODEL_PULLS} calm pulls to ${range(forecast)} undecided`;
  switch (lacks.kind) {
    case 'rate':
      return w`At ${rate(forecast)} readings a second ${cannot}. It would take ${lacks.perSecond}.`;
    case 'loss':
      return w`${lost(forecast)}: ${cannot}. Bring the wrench nearer to this station.`;
    case 'noise':
      return w`Its readings waver by ${torqueText(forecast.noiseNm)}: ${cannot}. Lay it down still, or use another wrench.`;
    case 'nothing':
      return w`As it reads now ${cannot}. Use another wrench.`;
  }
}

/** The same with what was found, where all is well too: a line for pipes and logs. */
export function forecastLine(forecast: Forecast): string {
  const warning = forecastWarning(forecast);
  if (forecast.kind !== 'readings') return `${forecast.tool}: ${warning}`;
  const reads = [
    w`${rate(forecast)} readings a second`,
    w`noise ${torqueText(forecast.noiseNm)}`,
    ...(forecast.lostShare > 0 ? [lost(forecast)] : []),
  ];
  return `${forecast.tool}: ${reads.join(', ')}. ${warning ?? w`It can prove ${range(forecast)}.`}`;
}

/** The same without the tool: for one that is not here. */
export const forecastText = (forecast: Forecast): string =>
  forecastWarning(forecast) ??
  (forecast.kind === 'readings' ? w`this wrench can prove ${range(forecast)} by calm pulls` : '');

const range = ({ lowerNm, upperNm }: OfReadings): string =>
  `${rangeFigures(lowerNm, upperNm, 'N.m')} ${shownUnit('N.m')}`;
/** To two digits: the rate is an estimate. */
const rate = ({ perSecond }: OfReadings): string => plainFigure(Number(perSecond.toPrecision(2)));
const lost = ({ lostShare }: OfReadings): string =>
  w`${fixed(100 * lostShare, 0)} % of its readings are lost`;
