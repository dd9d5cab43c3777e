/** A record on the page, in the order in which a reader wants to see it. */
import { phrases, w } from '../../words/catalogue.ts';
import { windowBar } from './bar.ts';
import { h, list, part } from './dom.ts';
import { plotPicture } from './plot.ts';
import type { AttemptShown, CheckShown, CylinderShown, JobShown, RecordShown, Verdicted } from './shown.ts';
import { checkSymbol, toneSymbol, verdictSymbol } from './symbol.ts';

/** The verdict as a sentence; whatever follows stands below it. */
export const banner = (shown: Verdicted, ...more: readonly (Node | null)[]): HTMLElement =>
  h(
    'section',
    { class: `banner ${shown.tone}`, 'aria-labelledby': 'verdict' },
    h('div', { class: 'seal' }, toneSymbol(shown.tone)),
    h(
      'div',
      { class: 'banner-words' },
      h('p', { class: 'file' }, shown.file),
      h(
        'h2',
        { id: 'verdict', tabindex: -1 },
        `${shown.word.slice(0, 1).toUpperCase()}${shown.word.slice(1)}`,
      ),
      h('p', { class: 'sentence' }, shown.sentence),
      ...more,
    ),
  );

export const line = (text: string, className = ''): HTMLElement | null =>
  text === '' ? null : h('p', { class: className || null }, text);

export function recordView(shown: RecordShown): readonly (Node | null)[] {
  const { job } = shown;
  return [
    job !== null && job.stamp !== '' ? h('p', { class: 'stamp' }, job.stamp) : null,
    banner(shown, line(shown.worth), line(shown.about), line(shown.advice, 'advice')),
    ...(job === null ? [] : jobParts(job)),
    part(w`What this does not prove`, list(shown.notProven)),
    checksPart(shown.checks),
    part(
      w`Log and file`,
      line(shown.log),
      line(shown.withheld),
      job === null ? null : line(w`SHA-256 of the record: ${job.digest}`, 'digest'),
    ),
  ];
}

export const checksPart = (checks: readonly CheckShown[]): HTMLElement | null =>
  part(
    w`What was checked`,
    h(
      'ul',
      { class: 'checks' },
      ...checks.map(({ outcome, name, text }) =>
        h(
          'li',
          { class: outcome },
          checkSymbol(outcome),
          h('span', { class: 'outcome' }, OUTCOME[outcome]),
          h('strong', {}, name),
          h('span', {}, text),
        ),
      ),
    ),
  );

const OUTCOME: Readonly<Record<CheckShown['outcome'], string>> = phrases({
  passed: 'passed',
  failed: 'FAILED',
  doubtful: 'in doubt',
  'not-applicable': 'not looked at',
});

function jobParts(job: JobShown): readonly (Node | null)[] {
  return [
    h(
      'section',
      { class: 'part' },
      h('h2', {}, w`Job ${job.job}: ${job.status.word}`),
      line(`${job.status.text} ${job.outOfOrder}`.trim(), 'status'),
      h('ol', { class: 'engine', 'aria-label': w`Cylinders in service order` }, ...job.cylinders.map(chip)),
      h('dl', { class: 'facts' }, ...job.jobFacts.flatMap(({ label, value }) => fact(label, value))),
    ),
    part(
      w`What every plug must reach`,
      ...job.window.map((text) => line(text, 'window')),
      legend(),
      h(
        'dl',
        { class: 'facts' },
        ...job.specificationFacts.flatMap(({ label, value }) => fact(label, value)),
      ),
    ),
    part(
      w`Gap and torque of each cylinder`,
      h('div', { class: 'cylinders' }, ...job.cylinders.map((one) => cylinder(one, job))),
    ),
    part(
      w`Exceptions, and what was out of order`,
      job.exceptions.length === 0
        ? line(w`None.`)
        : table(
            [w`When (UTC)`, w`What`, w`Entered by`],
            job.exceptions.map(({ at, what, who }) => [at, what, who]),
          ),
    ),
    part(w`Old plugs, new plugs, and the work around them`, ...routine(job.around)),
    part(
      w`Tools and their calibration`,
      table(
        [
          w`Tool`,
          w`Serial as listed`,
          w`Permissible deviation`,
          w`Basis of the uncertainty`,
          w`As it called itself`,
          w`How its readings came`,
        ],
        job.instruments.map((row) => [
          `${row.id} (${row.measures})`,
          row.serial,
          row.deviation,
          row.basis,
          row.device,
          row.link,
        ]),
      ),
    ),
    part(w`What this proves`, list(job.proves)),
    part(w`Cautions`, list(job.cautions)),
  ];
}

const fact = (label: string, value: string) => [h('dt', {}, label), h('dd', {}, value)];

const chip = ({ cylinder: number, verdict, word }: CylinderShown) =>
  h(
    'li',
    { class: `chip ${verdict}` },
    h('strong', {}, String(number)),
    verdictSymbol(verdict),
    h('span', {}, word),
  );

const legend = () =>
  h(
    'ul',
    { class: 'legend' },
    h('li', {}, h('span', { class: 'key zone' }), w`a reading here proves it`),
    h('li', {}, h('span', { class: 'key guard' }), w`guard band: within the limits, and nobody can be sure`),
    h('li', {}, h('span', { class: 'key outside' }), w`beyond the limits`),
    h('li', {}, w`▼ peak, which is judged`),
    h('li', {}, w`○ first release (the click)`),
  );

const cylinder = ({ cylinder: number, verdict, word, plots, attempts }: CylinderShown, job: JobShown) =>
  h(
    'article',
    { class: 'cylinder' },
    h(
      'h3',
      {},
      `${w`Cylinder ${number}`} `,
      h('span', { class: `verdict ${verdict}` }, verdictSymbol(verdict), word),
    ),
    ...plots.map((plot) => plotPicture(plot, job.torqueWindow.figures)),
    attempts.length === 0
      ? line(w`Nothing was measured.`)
      : h('ul', { class: 'attempts' }, ...attempts.map((one) => attempt(one, job))),
  );

function attempt(shown: AttemptShown, job: JobShown): HTMLElement {
  const { at, what, value, verdict, word, click, quantity, judged } = shown;
  const window = quantity === 'gap' ? job.gapWindow : job.torqueWindow;
  return h(
    'li',
    {},
    h('time', { datetime: at }, at.slice(11, 19)),
    h('span', { class: 'what' }, what),
    h('span', { class: 'value' }, value),
    h('span', { class: `verdict ${verdict}` }, verdictSymbol(verdict), word),
    click === '' ? null : h('span', { class: 'click-figure' }, click),
    judged === null || window === null ? null : windowBar(window.figures, judged),
  );
}

function routine({ lists, plugs }: JobShown['around']): readonly (Node | null)[] {
  return [
    ...lists.map(({ title, by, items }) => h('div', {}, h('h3', {}, `${title} (${by})`), list(items))),
    plugs.length === 0
      ? null
      : table(
          [
            w`Cylinder`,
            w`Old plug`,
            w`Damage`,
            w`Thread`,
            w`Old gap, mm`,
            w`Removal, N·m`,
            w`New plug`,
            w`Lot`,
          ],
          plugs.map((row) => [
            String(row.cylinder),
            row.condition,
            row.damage,
            row.thread,
            row.gapMm,
            row.removalNm,
            row.part,
            row.lot,
          ]),
        ),
  ];
}

/** On a narrow page each cell stands below the other, under the name of its column. */
export const table = (heads: readonly string[], rows: readonly (readonly (string | Node)[])[]): HTMLElement =>
  h(
    'table',
    {},
    h('thead', {}, h('tr', {}, ...heads.map((head) => h('th', { scope: 'col' }, head)))),
    h(
      'tbody',
      {},
      ...rows.map((cells) =>
        h('tr', {}, ...cells.map((cell, i) => h('td', { 'data-head': heads[i] ?? '' }, cell))),
      ),
    ),
  );
