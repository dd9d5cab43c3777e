/** The page: takes files, has them verified by the worker, shows what came out. It asks nobody, and keeps nothing. */
import { w } from '../../words/catalogue.ts';
import { byId, h, list } from './dom.ts';
import { chosenFiles, droppedFiles } from './dropped.ts';
import { offerLanguages, unpackedFrom, wordsNow } from './language.ts';
import { button, packageView, recordsView } from './many-view.ts';
import { hatching } from './plot.ts';
import { recordView } from './record-view.ts';
import { type Asked, type HeldFiles, type NamedFile, NOTHING_HELD, type Shown, type Told } from './shown.ts';

const result = byId('result', HTMLElement);
const status = byId('status', HTMLElement);
const trustPlace = byId('trust-list', HTMLElement);
let held: HeldFiles = NOTHING_HELD;
let worker: Worker | null = null;
let program: string | null = null;

/** The text of the worker lies packed in the page, so that there is one file and nothing is fetched. */
const workerProgram = (): string =>
  URL.createObjectURL(new Blob([unpackedFrom('worker')], { type: 'text/javascript' }));

function workerNow(): Worker {
  program ??= workerProgram();
  if (worker !== null) return worker;
  const fresh = new Worker(program);
  fresh.addEventListener('message', ({ data }: MessageEvent<Told>) => take(data));
  fresh.addEventListener('error', () =>
    say(w`The page could not go on with this file. Reload it, and try another browser.`),
  );
  post(fresh, { kind: 'language', words: wordsNow() });
  worker = fresh;
  return fresh;
}

const post = (to: Worker, asked: Asked) => to.postMessage(asked);

function ask(given: readonly NamedFile[], one: string | null = null): void {
  busy(w`Reading …`);
  post(workerNow(), { kind: 'files', given, held, one, readAt: new Date().toISOString() });
}

/** The worker is ended whatever it does, so that no file can hold the page. */
function stop(): void {
  worker?.terminate();
  worker = null;
  say(w`Stopped.`);
}

function busy(what: string, done?: number, total?: number): void {
  const bar = h('progress', { max: total ?? null, value: done ?? null, 'aria-label': what });
  status.replaceChildren(h('span', {}, what), bar, button(w`Stop`, stop));
}

const say = (text: string) => status.replaceChildren(text);

let answers = 0;

function take(told: Told): void {
  if (told.kind === 'ready') return;
  if (told.kind === 'progress') {
    busy(w`${told.done} of ${told.total} ${told.what}`, told.done, told.total);
    return;
  }
  document.body.dataset['answers'] = String(++answers);
  held = told.held;
  const { trust, own, shown, refusals } = told;
  trustPlace.replaceChildren(
    trust === null
      ? w`You trust nobody yet.`
      : h(
          'div',
          {},
          h('p', {}, w`Your list: ${trust.file}`),
          list(
            trust.keys.map(({ name, kid, note }) => `${name}${note === '' ? '' : ` (${note})`}: ${kid}`),
            'keys',
          ),
        ),
    ...own.map((line) => h('p', {}, line)),
  );
  status.replaceChildren(
    ...refusals.map(({ where, what, next }) =>
      h(
        'p',
        { class: 'refusal' },
        h('strong', {}, `${where === '' ? '' : `${where}: `}${what}.`),
        ` ${next}`,
      ),
    ),
  );
  if (shown === null) {
    if (refusals.length > 0) result.replaceChildren();
    return;
  }
  show(shown, told.isAgain);
}

function show(shown: Shown, isAgain: boolean): void {
  document.title = `${shown.word}: ${shown.file}`;
  result.replaceChildren(hatching(), ...viewOf(shown).filter((node) => node !== null));
  result.hidden = false;
  document.body.classList.add('answered');
  // Whoever chose another language goes on from there.
  if (!isAgain) document.getElementById('verdict')?.focus({ preventScroll: false });
}

function viewOf(shown: Shown): readonly (Node | null)[] {
  const open = (file: string) => ask([], file);
  if (shown.kind === 'record') {
    const isOneOfMany = held.subject.length > 1 || held.subject[0]?.path.endsWith('.zip') === true;
    return [
      isOneOfMany ? button(w`Back to all records`, () => ask([]), { class: 'back' }) : null,
      ...recordView(shown),
    ];
  }
  return shown.kind === 'package' ? packageView(shown, open) : recordsView(shown, open);
}

for (const id of ['files', 'folder', 'trust-file']) {
  const input = byId(id, HTMLInputElement);
  input.addEventListener('change', () => {
    if (input.files !== null && input.files.length > 0) ask(chosenFiles(input.files));
    input.value = '';
  });
}
byId('print', HTMLButtonElement).addEventListener('click', () => print());

const dropZone = document.body;
for (const name of ['dragenter', 'dragover'] as const)
  addEventListener(name, (event) => {
    event.preventDefault();
    dropZone.classList.add('dragged');
  });
addEventListener('dragleave', (event) => {
  if (event.relatedTarget === null) dropZone.classList.remove('dragged');
});
addEventListener('drop', (event) => {
  event.preventDefault();
  dropZone.classList.remove('dragged');
  if (event.dataTransfer !== null) void droppedFiles(event.dataTransfer).then((files) => ask(files));
});

/** Everything is said again: by the worker, as far as it still is there. */
function inOtherLanguage(): void {
  if (held.trust === null) trustPlace.replaceChildren(w`You trust nobody yet.`);
  if (worker !== null) post(worker, { kind: 'language', words: wordsNow() });
  else if (held.subject.length > 0) ask([]);
}

offerLanguages(inOtherLanguage);
trustPlace.replaceChildren(w`You trust nobody yet.`);

/** A page that was made with a record inside shows it at once. */
const inside = byId('given', HTMLTemplateElement);
const name = inside.getAttribute('data-name') ?? '';
if (name !== '') {
  document.body.classList.add('with-record');
  const bytes = Uint8Array.from(atob(inside.content.textContent.trim()), (character) =>
    character.charCodeAt(0),
  );
  ask([{ path: name, file: new Blob([bytes]) }]);
}
