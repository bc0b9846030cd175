import { describe, expect, it } from 'vitest';
import {
  briefingSubjects,
  deenergizingOrder,
  releaseOrder,
  ruleById,
  rules,
} from '../../../src/engine/standards/rules.ts';
import { referenceRecords } from './reference.ts';

const records = [
  ...referenceRecords('workRules'),
  ...referenceRecords('insulatingEquipment'),
  ...referenceRecords('approachDistance'),
];

describe('work rules', () => {
  it('stand under unique ids that answer themselves', () => {
    expect(new Set(rules.map((rule) => rule.id)).size).toBe(rules.length);
    for (const rule of rules) expect(ruleById(rule.id)).toBe(rule);
    expect(ruleById('no-such-rule')).toBeUndefined();
  });

  it('cite a paragraph that the reference extracts hold, down to its number', () => {
    const stem = (paragraph: string): string => /(1910\.(?!269)\d+)?\([a-z]\)(\(\d+\))?/.exec(paragraph)?.[0] ?? '';
    const known = records.flatMap((record) => (record.paragraph === undefined ? [] : [stem(record.paragraph)]));
    const notExtracted = ['glove-interval', 'arc-clothing'];
    for (const rule of rules.filter((entry) => !notExtracted.includes(entry.id))) {
      expect(known, `${rule.id}: ${rule.paragraph}`).toContain(stem(rule.paragraph));
    }
  });

  it('name five briefing subjects, as 1910.269(c)(2) does', () => {
    expect(briefingSubjects).toHaveLength(records.filter((record) => record.id.startsWith('c2.')).length);
    expect(briefingSubjects).toHaveLength(5);
  });

  it('keep the seven steps of deenergizing and the four of release, as 1910.269(m)(3) does', () => {
    expect(deenergizingOrder).toHaveLength(records.filter((record) => record.id.startsWith('m3.step')).length);
    expect(releaseOrder).toHaveLength(records.filter((record) => record.id.startsWith('m3.release')).length);
  });

  it('are one sentence each', () => {
    for (const rule of rules) expect(rule.text, rule.id).toMatch(/^[A-Z][^.]*\.$/);
  });
});
