/**
 * What the topics of the manual take from elsewhere: tables of fields from the schemas, examples from sim/example. A topic
 * marks the place, `npm run docs` fills it, and topics.test.ts fails where it is not as the schemas are now.
 *
 *   <!-- fields: FORM at PATH without FIELD FIELD -->   a row for each field; `at` one part of it, or one of its kinds;
 *                                                       `without` some parts, or with `FIELD.*` what is in them
 *   <!-- kinds: FORM at PATH -->                        a row for each kind of event, with what it is
 *   <!-- example: FILE -->                              a file of sim/example
 *   <!-- end -->                                        here the generated text ends
 */
import { readFileSync } from 'node:fs';
import { z } from 'zod';
import { type AnyForm, FORMS, schemaOf } from '../../../src/cli/help/schema.ts';
import { exampleFile } from '../../../src/files/input.ts';

/** The parts of a JSON Schema that a table needs. */
const nodeSchema = z.object({
  description: z.string().optional(),
  const: z.union([z.string(), z.number(), z.boolean()]).optional(),
  enum: z.array(z.string()).optional(),
  required: z.array(z.string()).optional(),
  get properties() {
    return z.record(z.string(), nodeSchema).optional();
  },
  get items() {
    return nodeSchema.optional();
  },
  get oneOf() {
    return z.array(nodeSchema).optional();
  },
  get anyOf() {
    return z.array(nodeSchema).optional();
  },
  type: z.union([z.string(), z.array(z.string())]).optional(),
});
type Node = z.infer<typeof nodeSchema>;

const MARKED = /^(<!-- (fields|kinds|example): ([^>]+?) -->)\n(?:.*\n)*?<!-- end -->$/gm;

/** The topic with its marked places filled anew. */
export function filled(markdown: string): string {
  return markdown.replace(MARKED, (_whole, marker: string, what: string, rest: string) => {
    const made = what === 'example' ? example(rest) : what === 'kinds' ? kinds(rest) : fields(rest);
    return `${marker}\n${made}\n<!-- end -->`;
  });
}

const example = (file: string) => `\`\`\`json\n${readFileSync(exampleFile(file), 'utf8').trimEnd()}\n\`\`\``;

function kinds(words: string): string {
  const { node } = placeIn(words);
  const rows = variantsOf(node).map((variant): Row => {
    const [, kind] = discriminator(variant);
    return { label: String(kind), text: variant.description ?? '' };
  });
  return table(['event', 'what happened'], rows);
}

function fields(words: string): string {
  const { node, without } = placeIn(words);
  return table(['field', 'what it holds'], rowsOf(node, '', new Set(without)));
}

/** `FORM at PATH without FIELD FIELD` */
function placeIn(words: string): { readonly node: Node; readonly without: readonly string[] } {
  const [, form = '', path, without] = /^(\S+)(?: at (\S+))?(?: without (.+))?$/.exec(words) ?? [];
  if (!isForm(form)) throw new Error(`no form "${form}" in "${words}"`);
  const whole = nodeSchema.parse(schemaOf(form));
  const node = (path?.split('.') ?? []).reduce((at, name) => {
    const part =
      inner(at).properties?.[name] ?? variantsOf(inner(at)).find((one) => discriminator(one)[1] === name);
    if (part === undefined) throw new Error(`no field "${name}" in "${words}"`);
    return part;
  }, whole);
  return { node, without: without?.split(' ') ?? [] };
}

const isForm = (name: string): name is AnyForm => Object.hasOwn(FORMS, name);

interface Row {
  readonly label: string;
  readonly text: string;
}

/** A row for each field of an object, those of the objects in it behind it. */
function rowsOf(node: Node, prefix: string, without: ReadonlySet<string>): readonly Row[] {
  const object = inner(node);
  if (isConcealed(object)) return [];
  const variants = variantsOf(object);
  if (variants.length > 0) return variantRows(variants, prefix, without);
  return Object.entries(object.properties ?? {}).flatMap(([name, part]) => {
    const label = prefix + name;
    const optional = object.required?.includes(name) !== true;
    if (without.has(label)) return [];
    const within = without.has(`${label}.*`) ? [] : rowsOf(part, `${label}${listed(part)}.`, without);
    return [{ label, text: cellOf(part, optional) }, ...within];
  });
}

/** One row for what tells the kinds apart, then a row for each field, with the kinds that have it. */
function variantRows(
  variants: readonly Node[],
  prefix: string,
  without: ReadonlySet<string>,
): readonly Row[] {
  const [name] = discriminator(variants[0]);
  const told = variants.map((one) => `\`"${discriminator(one)[1]}"\`: ${one.description ?? ''}`);
  const rows = new Map<string, { text: string; kinds: string[] }>();
  for (const variant of variants)
    for (const { label, text } of rowsOf(variant, prefix, new Set([...without, prefix + name]))) {
      const row = rows.get(label) ?? { text, kinds: [] };
      row.kinds.push(`\`${discriminator(variant)[1]}\``);
      rows.set(label, row);
    }
  return [
    { label: prefix + name, text: told.join(' ') },
    ...[...rows].map(([label, { text, kinds }]) => ({ label, text: `With ${kinds.join(', ')}: ${text}` })),
  ];
}

function cellOf(node: Node, optional: boolean): string {
  const { description, const: value } = node;
  const values = inner(node).enum ?? [];
  const named = values.every((one) => description?.includes(`\`${one}\``));
  return [
    description ?? (value === undefined ? '' : `\`${JSON.stringify(value)}\``),
    values.length > 0 && !named ? `One of ${values.map((one) => `\`${one}\``).join(', ')}.` : '',
    isConcealed(inner(node)) ? 'Personal: a digest is signed.' : '',
    optional && !description?.includes('unless given') ? 'Optional.' : '',
  ]
    .filter((part) => part !== '')
    .join(' ');
}

const listed = (node: Node): string => {
  const { items } = withoutNull(node);
  return items === undefined ? '' : `[]${listed(items)}`;
};

/** Through lists and null to what is in them. */
function inner(node: Node): Node {
  const here = withoutNull(node);
  return here.items === undefined ? here : inner(here.items);
}

function withoutNull(node: Node): Node {
  const [one, ...more] = node.anyOf?.filter(({ type }) => type !== 'null') ?? [];
  return one !== undefined && more.length === 0 ? one : node;
}

const variantsOf = ({ oneOf, anyOf }: Node): readonly Node[] =>
  (oneOf ?? anyOf ?? []).filter((one) => one.properties !== undefined && !isConcealed(one));

/** Text of which only a digest is signed. */
const isConcealed = ({ properties }: Node): boolean => properties?.['_sd'] !== undefined;

/** The field that is another constant in each kind, and its value. */
function discriminator(node: Node | undefined): readonly [string, string | number] {
  for (const [name, { const: value }] of Object.entries(node?.properties ?? {}))
    if (typeof value === 'string' || typeof value === 'number') return [name, value];
  throw new Error('these kinds are not told apart by a constant');
}

function table(head: readonly string[], rows: readonly Row[]): string {
  const lines = rows.map(({ label, text }) => `| \`${label}\` | ${text.replaceAll('|', '\\|')} |`);
  return [`| ${head.join(' | ')} |`, `| ${head.map(() => '---').join(' | ')} |`, ...lines].join('\n');
}
