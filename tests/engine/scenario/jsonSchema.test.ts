/** The published JSON Schema: fresh, complete, and of one mind with the reader; UPDATE=1 rewrites it. */
import { readFileSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { Ajv2020 } from 'ajv/dist/2020.js';
import { describe, expect, test } from 'vitest';
import { parse as readYaml } from 'yaml';
import { scenarioJsonSchema } from '../../../src/engine/scenario/jsonSchema.ts';
import { parseQuantity } from '../../../src/engine/units/parseQuantity.ts';
import { dimensions } from '../../../src/engine/units/unitTable.ts';
import { filesIn, folder, shippedFolder, textOf } from './read.ts';

const file = fileURLToPath(new URL('../../../shared/schema/scenario.schema.json', import.meta.url));
const printed = `${JSON.stringify(scenarioJsonSchema(), null, 2)}\n`;
if (process.env.UPDATE === '1') writeFileSync(file, printed);

const ajv = new Ajv2020({ allErrors: true, allowUnionTypes: true });
ajv.addKeyword('x-unit');
const schema = JSON.parse(readFileSync(file, 'utf8')) as Node;
const accepts = ajv.compile(schema);
const errorsOf = (data: unknown): string[] =>
  accepts(data) ? [] : (accepts.errors ?? []).map(({ instancePath, message }) => `${instancePath} ${message}`);

interface Node {
  readonly type?: string;
  readonly description?: string;
  readonly examples?: readonly unknown[];
  readonly default?: unknown;
  readonly required?: readonly string[];
  readonly properties?: Readonly<Record<string, Node>>;
  readonly items?: Node;
  readonly additionalProperties?: Node | false;
  readonly 'x-unit'?: string;
}

const nodesIn = (node: Node, name: string): [string, Node][] => [
  [name, node],
  ...Object.entries(node.properties ?? {}).flatMap(([key, inner]) => nodesIn(inner, `${name}.${key}`)),
  ...(node.items ? nodesIn(node.items, `${name}[]`) : []),
  ...(node.additionalProperties ? nodesIn(node.additionalProperties, `${name}.*`) : []),
];
const nodes = nodesIn(schema, 'scenario');
const isLeaf = (node: Node): boolean => node.properties === undefined && node.items === undefined;

test('the committed schema is what the sections generate', () => {
  expect(readFileSync(file, 'utf8')).toBe(printed);
});

test('the schema has the properties of all sections', () => {
  expect(nodes.length).toBeGreaterThan(90);
});

describe('every property', () => {
  test('says what it is for', () => {
    expect(
      nodes.filter(([, { description }]) => !description || !/[.!?]$/.test(description)).map(([name]) => name),
    ).toEqual([]);
  });

  test('has an example if it is no group or list', () => {
    expect(nodes.filter(([, node]) => isLeaf(node) && !node.examples?.length).map(([name]) => name)).toEqual([]);
  });

  test('accepts its own examples and default', () => {
    const wrong = nodes.flatMap(([name, node]) => {
      const own = ajv.compile(node);
      const shown = [...(node.examples ?? []), ...('default' in node ? [node.default] : [])];
      return shown.filter((value) => !own(value)).map((value) => `${name}: ${JSON.stringify(value)}`);
    });
    expect(wrong).toEqual([]);
  });

  test('that is a quantity names its unit', () => {
    const isQuantity = (example: unknown): boolean =>
      typeof example === 'string' && / /.test(example) && dimensions.some((each) => parseQuantity(example, each).ok);
    const quantities = nodes.filter(([, { examples }]) => isQuantity(examples?.[0]));
    expect(quantities.length).toBeGreaterThan(25);
    const without = quantities.filter(([, node]) => !node['x-unit']).map(([name]) => name);
    // Their dimension is known with the kind only.
    expect(without).toEqual(
      ['equipment[].values.*', 'faults[].values.*', 'look-alikes[].values.*'].map((at) => `scenario.${at}`),
    );
  });

  test('that may be left out states its default, but for those that are then not there', () => {
    const named = (node: Node, name: string): string[] =>
      Object.entries(node.properties ?? {})
        .filter(([key, inner]) => !node.required?.includes(key) && inner.default === undefined)
        .map(([key]) => `${name}.${key}`);
    expect(nodes.flatMap(([name, node]) => named(node, name))).toMatchInlineSnapshot(`
      [
        "scenario.variant",
        "scenario.site.setting",
        "scenario.site.weather[].sky",
        "scenario.site.weather[].visibility",
        "scenario.site.weather[].wetness",
        "scenario.site.weather[].wind",
        "scenario.site.weather[].precipitation",
        "scenario.site.weather[].lightning",
        "scenario.site.weather[].flooded",
        "scenario.site.weather[].traffic",
        "scenario.supply.phases",
        "scenario.supply.three-phase-fault-current",
        "scenario.supply.recloser",
        "scenario.poles[].insulator",
        "scenario.poles[].tie",
        "scenario.poles[].strings",
        "scenario.spans[].neutral",
        "scenario.spans[].phases",
        "scenario.spans[].beside",
        "scenario.equipment[].height",
        "scenario.equipment[].side",
        "scenario.equipment[].nets",
        "scenario.equipment[].state",
        "scenario.equipment[].values",
        "scenario.equipment[].words",
        "scenario.premises[].own",
        "scenario.premises[].own.transfer",
        "scenario.premises[].own.islands",
        "scenario.crew.today",
        "scenario.people[].at",
        "scenario.events[].who",
        "scenario.events[].to",
        "scenario.events[].part",
        "scenario.events[].says",
        "scenario.tools[].rated",
        "scenario.tools[].tested",
        "scenario.tools[].note",
        "scenario.tools[].words",
        "scenario.faults[].side",
        "scenario.faults[].to",
        "scenario.faults[].values",
        "scenario.faults[].says",
        "scenario.look-alikes[].side",
        "scenario.look-alikes[].to",
        "scenario.look-alikes[].values",
        "scenario.look-alikes[].says",
        "scenario.job.kind",
      ]
    `);
  });
});

describe('of one mind with the reader', () => {
  test.each(filesIn(shippedFolder))('the schema accepts the shipped %s', (name) => {
    expect(errorsOf(readYaml(textOf(shippedFolder, name)))).toEqual([]);
  });

  test('the schema accepts the small scenario', () => {
    expect(errorsOf(readYaml(textOf(folder, 'small.yaml')))).toEqual([]);
  });

  test.each([
    'bad-units',
    'bad-keys',
    'bad-types',
    'bad-dates',
    'bad-kinds',
    'bad-long',
    'bad-newer',
    'bad-format',
    'bad-no-format',
    'bad-list',
    'bad-empty',
  ])('the schema refuses %s', (name) => {
    expect(errorsOf(readYaml(textOf(folder, `${name}.yaml`)))).not.toEqual([]);
  });
});
