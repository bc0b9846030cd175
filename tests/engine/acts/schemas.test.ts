import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import Ajv from 'ajv/dist/2020.js';
import { describe, expect, it } from 'vitest';
import { appendEntry, newLog } from '../../../src/engine/acts/log.ts';
import { actJsonSchema, logJsonSchema } from '../../../src/engine/acts/logForm.ts';
import { looksFrom, possibleActs } from '../../../src/engine/acts/possibleActs.ts';
import { onScene, played, start } from './scene.ts';

const folder = fileURLToPath(new URL('../../../shared/schema/', import.meta.url));
const text = (schema: object): string => `${JSON.stringify(schema, null, 2)}\n`;

describe('the published JSON Schema', () => {
  it.each([
    ['log.schema.json', logJsonSchema],
    ['act.schema.json', actJsonSchema],
  ])('%s is what the reader generates (UPDATE=1 writes it)', (name, schema) => {
    if (process.env.UPDATE) {
      mkdirSync(folder, { recursive: true });
      writeFileSync(folder + name, text(schema()));
    }
    expect(readFileSync(folder + name, 'utf8')).toBe(text(schema()));
  });

  it('of an act holds for every act on offer and for no other word', () => {
    const validate = new Ajv({ strict: false }).compile(actJsonSchema());
    const offers = [...possibleActs(onScene()), ...looksFrom(onScene())];
    expect(offers.filter(({ act }) => !validate(act))).toEqual([]);
    expect(validate({ act: 'fly' })).toBe(false);
    expect(validate({ act: 'listen', loudly: true })).toBe(false);
  });

  it('of a log holds for a log as it is kept', () => {
    const validate = new Ajv({ strict: false }).compile(logJsonSchema());
    const log = appendEntry(newLog(start(), 1), { act: 'acknowledge' }, played(start(), { act: 'acknowledge' }));
    expect(validate(JSON.parse(JSON.stringify(log)))).toBe(true);
    expect(validate({ ...log, version: 2 })).toBe(false);
  });
});
