/** The report as a whole: every check holds, and what it says of itself is true. */
import { describe, expect, test } from 'vitest';
import { allChecks } from '../../../src/engine/qualification/allChecks.ts';
import { allowedDifference, runCheck, runChecks } from '../../../src/engine/qualification/runChecks.ts';

const report = runChecks();
const models = [...new Set(allChecks.map(({ model }) => model))];
const ofKind = (kind: string) => allChecks.filter((check) => check.kind === kind);

describe('the report', () => {
  test('holds every check', () => {
    const failed = report.filter(({ ok }) => !ok);
    expect(failed.map(({ id, ours, reference, unit }) => `${id}: ${ours} against ${reference} ${unit}`)).toEqual([]);
  });

  test('has 150 checks or more, of which 100 or more are held against a published value', () => {
    expect(allChecks.length).toBeGreaterThanOrEqual(150);
    expect(ofKind('published value').length).toBeGreaterThanOrEqual(100);
  });

  test('has two checks or more of each model', () => {
    expect(models.length).toBeGreaterThanOrEqual(25);
    for (const model of models)
      expect(allChecks.filter((check) => check.model === model).length, model).toBeGreaterThan(1);
  });

  test('gives each check an id of its own', () => {
    const ids = allChecks.map(({ id }) => id);
    expect(new Set(ids).size).toBe(ids.length);
    for (const id of ids) expect(id).toMatch(/^[a-zA-Z0-9.-]+$/);
  });

  test('comes out the same twice', () => {
    const few = allChecks.filter(({ model }) => model !== 'breakdown growth');
    expect(runChecks(few)).toEqual(runChecks(few));
    expect(report.map(({ id }) => id)).toEqual(allChecks.map(({ id }) => id));
  });
});

describe('a check', () => {
  test('allows no more than 5 % unless it says why', () => {
    for (const check of allChecks) {
      const allowed = allowedDifference(check);
      expect(allowed, check.id).toBeGreaterThan(0);
      const wide = allowed > 0.0501 * Math.abs(check.reference);
      if (wide) expect(check.tolerance.because?.length ?? 0, check.id).toBeGreaterThan(10);
    }
  });

  test('fails when its result is off by twice what it allows', () => {
    for (const check of allChecks) {
      const away = 2 * allowedDifference(check);
      expect(runCheck({ ...check, ours: () => check.reference + away }).ok, check.id).toBe(false);
      expect(runCheck({ ...check, ours: () => check.reference - away }).ok, check.id).toBe(false);
    }
  });

  test('fails on a result that is no number', () => {
    const [check] = allChecks;
    if (check === undefined) throw new Error('no check');
    expect(runCheck({ ...check, ours: () => Number.NaN }).ok).toBe(false);
  });

  test('that is from memory says so in its source, and no other does', () => {
    for (const { id, kind, source } of allChecks) expect(/from memory/.test(source), id).toBe(kind === 'from memory');
  });

  test('that is published names a document', () => {
    for (const { id, source } of ofKind('published value')) {
      expect(source, id).toMatch(
        /CFR|IEC|IEEE|ISO|UL 489|ASTM|MIL-HDBK|ANSI|GO 64|OpenDSS|Kersting|CA09040E|19\d\d|published|manual|texts|course|page|abstract|grid-data-models/,
      );
      expect(source.length, id).toBeGreaterThan(12);
    }
  });

  test('writes input, quantity and unit', () => {
    for (const { id, input, quantity, unit } of allChecks) {
      expect(input.length, id).toBeGreaterThan(0);
      expect(quantity.length, id).toBeGreaterThan(0);
      expect(unit.length, id).toBeGreaterThan(0);
    }
  });
});
