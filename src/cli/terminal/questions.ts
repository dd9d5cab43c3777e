/**
 * Questions that follow a zod schema: one a field, each answer held against the field's own schema at once, so that the
 * form of a file is said in one place only. What the schema cannot know (wording, usual answers) comes in as {@link Wordings}.
 */
import { z } from 'zod';
import { issueText } from '../../issue-text.ts';
import { type Problem, ProblemError, pathText } from '../../problem.ts';
import { err, ok, type Result } from '../../result.ts';
import { w } from '../../words/catalogue.ts';
import { choiceWord, choiceWords, chosenOption, notAChoice } from './choices.ts';
import type { Dialogue } from './dialogue.ts';
import { safeLine } from './exit.ts';

/** What was answered so far in the same object. */
export type SoFar = Readonly<Record<string, unknown>>;

export interface Wording {
  readonly text: string;
  /** What Enter means. */
  readonly usual?: (soFar: SoFar) => string | undefined;
  /** Asked only then. */
  readonly when?: (soFar: SoFar) => boolean;
  /** Optional in the schema, but not here. */
  readonly needed?: (soFar: SoFar) => boolean;
  /** More than the schema can see. */
  readonly check?: (value: unknown) => Promise<Problem | null>;
}

/** By path, such as `driver.address`; a field without one is asked for by its path. Asked in this order, others after. */
export type Wordings = Readonly<Record<string, Wording>>;

interface Asking {
  readonly dialogue: Dialogue;
  readonly wordings: Wordings;
  /** Paths of optional fields that are not asked for. */
  readonly later: ReadonlySet<string>;
}

/** Asks for all fields of an object until the whole satisfies its schema. */
export async function askObject<T extends z.ZodObject>(
  asking: Asking,
  schema: T,
  path: readonly string[] = [],
): Promise<z.infer<T>> {
  for (;;) {
    const parsed = schema.safeParse(await askFields(asking, schema, path));
    if (parsed.success) return parsed.data;
    const issue = parsed.error.issues[0];
    refuse(asking.dialogue, pathText([...path, ...(issue?.path ?? [])]), messageOf(issue));
  }
}

/** One answer of which `read` makes a value; asked again until it does. */
export async function askUntil<T>(
  dialogue: Dialogue,
  prompt: string,
  read: (text: string) => Result<T, string> | Promise<Result<T, string>>,
): Promise<T> {
  for (;;) {
    const value = await read(await dialogue.ask(prompt));
    if (value.ok) return value.value;
    refuse(dialogue, prompt, value.error);
    dialogue.refused?.();
  }
}

/** One answer held against a schema of text. */
export const askText = (dialogue: Dialogue, schema: z.ZodType<string>, text: string, usual?: string) =>
  askUntil(dialogue, promptFor(text, usual), (answer) => parse(schema, answer || (usual ?? '')));

/**
 * One answer that may be left out: Enter takes the usual one, or none where nothing is usual; a hyphen takes none even so.
 */
export function askMaybe<T>(
  dialogue: Dialogue,
  text: string,
  usual: string | null,
  read: (text: string) => Result<T, string>,
): Promise<T | null> {
  const prompt = promptFor(text, usual ?? undefined, true);
  return askUntil<T | null>(dialogue, prompt, (given) => {
    const answer = given || (usual ?? '');
    return answer === '' || answer === '-' ? ok(null) : read(answer);
  });
}

/** One of a schema's choices, by its first letters. */
export const askChoice = <T extends string>(
  dialogue: Dialogue,
  schema: z.ZodType<T> & { readonly options: readonly T[] },
  text: string,
  usual?: T,
): Promise<T> =>
  askUntil(
    dialogue,
    promptFor(`${text}: ${choiceWords(schema.options)}`, usual && choiceWord(usual)),
    (given) => parse(schema, typedValue(given || (usual ?? ''), schema)),
  );

const YES_OR_NO = z.enum(['yes', 'no']);

/** Yes or no in the reader's words, or in English. */
export async function askYes(dialogue: Dialogue, text: string, usual: 'yes' | 'no'): Promise<boolean> {
  const prompt = promptFor(`${text} ${choiceWords(YES_OR_NO.options)}`, choiceWord(usual));
  const answer = await askUntil(dialogue, prompt, (given) =>
    parse(YES_OR_NO, typedValue(given || usual, YES_OR_NO)),
  );
  return answer === 'yes';
}

/** With somebody there it is said and asked again; a pipe has no second answer. */
export function refuse(dialogue: Dialogue, where: string, message: string): void {
  if (dialogue.patient) {
    dialogue.say(w`  Not taken: ${message}`);
    return;
  }
  const next = w`Nothing was written. Correct this answer and start again.`;
  throw new ProblemError({ code: 'answer-not-valid', where, message, next });
}

async function askFields(asking: Asking, schema: z.ZodObject, path: readonly string[]): Promise<SoFar> {
  const soFar: Record<string, unknown> = {};
  for (const key of inOrder(asking, Object.keys(schema.shape), path)) {
    const field = schema.shape[key];
    const at = [...path, key];
    const wording = asking.wordings[at.join('.')];
    if (!(field instanceof z.ZodType) || asking.later.has(at.join('.')) || wording?.when?.(soFar) === false)
      continue;
    const value = await askField(asking, field, at, { text: at.join('.'), ...wording }, soFar);
    if (value !== undefined) soFar[key] = value;
  }
  return soFar;
}

function inOrder({ wordings }: Asking, keys: readonly string[], path: readonly string[]): readonly string[] {
  const worded = Object.keys(wordings);
  const place = (key: string) =>
    (worded.indexOf([...path, key].join('.')) + worded.length + 1) % (worded.length + 1);
  return [...keys].sort((a, b) => place(a) - place(b));
}

/** The value of a field; undefined where it is left out. */
async function askField(
  asking: Asking,
  field: z.ZodType,
  path: readonly string[],
  wording: Wording,
  soFar: SoFar,
): Promise<unknown> {
  const { inner, optional, usual: fromSchema } = unwrapped(field);
  const mayLack = optional && wording.needed?.(soFar) !== true;
  const usual = wording.usual?.(soFar) ?? fromSchema;
  if (inner instanceof z.ZodLiteral) return inner.value;
  if (inner instanceof z.ZodObject) {
    const wanted = !mayLack || (await askYes(asking.dialogue, `${wording.text}?`, 'no'));
    return wanted ? askObject(asking, inner, path) : undefined;
  }
  if (inner instanceof z.ZodDiscriminatedUnion)
    return askUnion(asking, inner, path, { ...wording, mayLack, usual });
  const proposed = inner instanceof z.ZodEnum && usual !== undefined ? choiceWord(usual) : usual;
  const prompt = promptFor(textOf(wording.text, inner), proposed, mayLack);
  return askUntil(asking.dialogue, prompt, async (answer) => {
    const text = answer || (usual ?? '');
    if (text === '' && mayLack) return ok(undefined);
    if (inner instanceof z.ZodNumber && !isNumber(text)) return err(noNumber());
    const value = parse<unknown>(inner, typedValue(text, inner));
    const problem = value.ok ? await wording.check?.(value.value) : null;
    return problem ? err(problem.message) : value;
  });
}

async function askUnion(
  asking: Asking,
  union: z.ZodDiscriminatedUnion,
  path: readonly string[],
  {
    text,
    usual,
    mayLack,
  }: { readonly text: string; readonly usual: string | undefined; readonly mayLack: boolean },
): Promise<unknown> {
  const key = union.def.discriminator;
  const forms = new Map<string, z.ZodObject>();
  for (const option of union.options)
    if (option instanceof z.ZodObject && option.shape[key] instanceof z.ZodLiteral)
      forms.set(String(option.shape[key].value), option);
  const names = z.enum([...forms.keys()]);
  const prompt = promptFor(`${text}: ${choiceWords([...forms.keys()])}`, usual && choiceWord(usual), mayLack);
  const chosen = await askUntil<string | undefined>(asking.dialogue, prompt, (answer) => {
    const given = answer || (usual ?? '');
    return given === '' && mayLack ? ok(undefined) : parse(names, String(typedValue(given, names)));
  });
  const form = chosen === undefined ? undefined : forms.get(chosen);
  return form === undefined ? undefined : askObject(asking, form, path);
}

function unwrapped(field: z.ZodType): {
  readonly inner: z.ZodType;
  readonly optional: boolean;
  readonly usual: string | undefined;
} {
  if (field instanceof z.ZodDefault)
    return {
      ...unwrapped(asType(field.def.innerType)),
      optional: true,
      usual: String(field.def.defaultValue),
    };
  if (field instanceof z.ZodOptional || field instanceof z.ZodExactOptional)
    return { ...unwrapped(asType(field.def.innerType)), optional: true };
  return { inner: field, optional: false, usual: undefined };
}

function asType(type: unknown): z.ZodType {
  if (type instanceof z.ZodType) return type;
  throw new Error('a schema of another kind');
}

/** The answer as the field's schema takes it; what it cannot be stays text, and the schema says what it expected. */
function typedValue(text: string, schema: z.ZodType): unknown {
  if (schema instanceof z.ZodEnum) return chosenOption(schema.options.map(String), text) ?? text;
  if (schema instanceof z.ZodNumber && text !== '') return Number(text.replace(',', '.'));
  if (schema instanceof z.ZodBoolean) {
    const chosen = chosenOption(['yes', 'no'], text);
    return chosen === undefined ? undefined : chosen === 'yes';
  }
  return text;
}

/** Digits and a decimal sign: no unit, no letters, no powers of ten. */
export const isNumber = (text: string): boolean => /^[+-]?(\d+([.,]\d*)?|[.,]\d+)$/.test(text);
export const noNumber = (): string => w`expected a number alone, such as 12.5, without letters or a unit`;

export function parse<T>(schema: z.ZodType<T>, value: unknown): Result<T, string> {
  const parsed = schema.safeParse(value);
  return parsed.success
    ? ok(parsed.data)
    : err(value === '' ? w`an answer is needed` : messageOf(parsed.error.issues[0]));
}

/** What a schema says of an answer, as people say it. */
export const messageOf = (issue: z.core.$ZodIssue | undefined): string => {
  if (issue === undefined) return w`not valid`;
  return issue.code === 'invalid_value' ? notAChoice(issue.values.map(String)) : issueText(issue.message);
};

function textOf(text: string, schema: z.ZodType): string {
  if (schema instanceof z.ZodEnum) return `${text}: ${choiceWords(schema.options.map(String))}`;
  return schema instanceof z.ZodBoolean ? `${text}: ${w`yes`}, ${w`no`}` : text;
}

export function promptFor(text: string, usual?: string, mayLack = false): string {
  if (usual !== undefined) return `${text} [${safeLine(usual)}]: `;
  return mayLack ? w`${text} (Enter: none): ` : `${text}: `;
}
