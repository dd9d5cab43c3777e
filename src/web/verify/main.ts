/** The page: takes files, has them verified by the worker, shows what came out. It asks nobody, and keeps nothing. */
import { w } from '../../words/catalogue.ts';
import { byId, h, list } from './dom.ts';
import { chosenFiles, droppedFiles } from './dropped.ts';
import { offerLanguages, unpackedFrom, wordsNow } from './language.ts';
import { button, packageView, recordsView } from './many-view.ts';
import type { Asked, Told } from './messages.ts';
import { hatching } from './plot.ts';
import { recordView } from './record-view.ts';
import { type HeldFiles, type NamedFile, NOTHING_HELD, type Shown } from './shown.ts';

const result = byId('result', HTMLElement);
const status = byId('status', HTMLElement);
const trustPlace = byId('trust-list', HTMLElement);
let held: HeldFiles = NOTHING_HELD;
let worker: Worker | null = null;
let helpers: Worker[] = [];
let program: string | null = null;

/** The text of the worker lies packed in the page, so that there is one file and nothing is fetched. */
function workerProgram(): string {
  program ??= URL.createObjectURL(new Blob([unpackedFrom('worker')], { type: 'text/javascript' }));
  return program;
}

function workerNow(): Worker {
  if (worker !== null) return worker;
  const fresh = new Worker(workerProgram());
  fresh.addEventListener('message', ({ data }: MessageEvent<Told>) => take(data));
  fresh.addEventListener('error', failed);
  post(fresh, { kind: 'language', words: wordsNow() });
  worker = fresh;
  return fresh;
}

const post = (to: Worker, asked: Asked, handed: Transferable[] = []) => to.postMessage(asked, handed);

function failed(): void {
  stop();
  say(w`The page could not go on with this file. Reload it, and try another browser.`);
}

/** Workers of the same program on other cores, for the worker that wants them. They end when it has done with them. */
function startHelpers(count: number): MessagePort[] {
  return Array.from({ length: count }, () => {
    const helper = new Worker(workerProgram());
    helper.addEventListener('error', failed);
    helpers.push(helper);
    const { port1, port2 } = new MessageChannel();
    post(helper, { kind: 'help', port: port1 }, [port1]);
    return port2;
  });
}

/** Files that were given while others were read. */
let waiting: (readonly NamedFile[])[] = [];

/** One after the other: what was given last is what stands there in the end. */
function ask(given: readonly NamedFile[], one: string | null = null): void {
  if (bar !== null) {
    if (given.length > 0) waiting.push(given);
    return;
  }
  busy(w`Reading …`);
  post(workerNow(), { kind: 'files', given, held, one, readAt: new Date().toISOString() });
}

/** The worker is ended whatever it does, so that no file can hold the page. */
function stop(): void {
  for (const one of [...helpers, ...(worker === null ? [] : [worker])]) one.terminate();
  helpers = [];
  worker = null;
  waiting = [];
  bar = null;
  clear();
  say(w`Stopped.`);
}

/** What stood there was of another file. */
function clear(): void {
  result.replaceChildren();
  document.title = w`Check a spark plug record`;
  document.body.classList.remove('answered');
}

interface Bar {
  readonly words: HTMLElement;
  readonly progress: HTMLProgressElement;
}

/** Null while nothing is read. */
let bar: Bar | null = null;

function busy(what: string): void {
  bar = { words: h('span', {}, what), progress: h('progress', { 'aria-label': what }) };
  status.replaceChildren(bar.words, bar.progress, button(w`Stop`, stop));
}

/** In the bar that is there, so that the key to stop keeps its focus. */
function goneOn({ words, progress }: Bar, what: string, done: number, total: number): void {
  words.textContent = what;
  // Whoever has it read out asks the bar, and is not told every step.
  words.ariaHidden = 'true';
  progress.ariaLabel = what;
  progress.max = total;
  progress.value = done;
}

const say = (text: string) => status.replaceChildren(text);

let answers = 0;

function take(told: Told): void {
  if (told.kind === 'helpers-wanted') {
    const ports = startHelpers(told.count);
    post(workerNow(), { kind: 'helpers', ports }, ports);
    return;
  }
  if (told.kind === 'progress') {
    if (bar !== null) goneOn(bar, w`${told.done} of ${told.total} ${told.what}`, told.done, told.total);
    return;
  }
  // It was asked for before what is being read now, which is said in the same language.
  if (told.isAgain && bar !== null) return;
  bar = null;
  helpers = [];
  document.body.dataset['answers'] = String(++answers);
  answer(told);
  const next = waiting.shift();
  if (next !== undefined) ask(next);
}

function answer(told: Extract<Told, { readonly kind: 'answer' }>): void {
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
    if (refusals.length > 0) clear();
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
  if (event.dataTransfer !== null) void droppedFiles(event.dataTransfer).then((files) => ask(files), failed);
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
