// @vitest-environment happy-dom
/** The report on the page is the report of the engine: same counts, failures in words, memory never counted as published. */
import { render } from 'preact';
import { act } from 'preact/test-utils';
import { afterEach, describe, expect, test, vi } from 'vitest';
import { caution } from '../../../src/engine/debrief/caution.ts';
import { allChecks } from '../../../src/engine/qualification/allChecks.ts';
import { runChecks } from '../../../src/engine/qualification/runChecks.ts';
import type { Check } from '../../../src/engine/qualification/types.ts';
import { QualificationPage } from '../../../src/screens/qualification/QualificationPage.tsx';
import { button, doing } from '../show.tsx';

const check = (id: string, more: Partial<Check> = {}): Check => ({
  id,
  model: 'fuse link',
  quantity: 'melting time',
  input: '50 A',
  ours: () => 2,
  reference: 2.01,
  unit: 's',
  tolerance: { kind: 'absolute', value: 0.05 },
  source: 'a printed table',
  kind: 'published value',
  ...more,
});

let root: HTMLElement;
const open = async (checks?: readonly Check[], back = (): void => undefined): Promise<void> => {
  document.body.innerHTML = '<div id="app"></div>';
  root = document.getElementById('app') as HTMLElement;
  act(() => render(<QualificationPage back={back} checks={checks} />, root));
  await vi.waitFor(() => expect(root.querySelector('.verdict')).not.toBeNull(), { timeout: 20_000 });
};
afterEach(() => act(() => render(null, root)));

const cells = (row: Element | null | undefined): string[] =>
  [...(row?.querySelectorAll('th, td') ?? [])].map((el) => el.textContent?.trim() ?? '');
const kindRows = (): string[][] => [...root.querySelectorAll('.kinds tbody tr')].map(cells);
const rows = (): Element[] => [...root.querySelectorAll('.checks tbody tr')];
const pick = (label: string, value: string): void =>
  doing(() => {
    const found = [...root.querySelectorAll('label')].find((each) => each.textContent?.startsWith(label));
    const select = found?.querySelector('select') as HTMLSelectElement;
    select.value = value;
    select.dispatchEvent(new Event('change', { bubbles: true }));
  });
const failedOnly = (): void => doing(() => root.querySelector<HTMLInputElement>('input[type="checkbox"]')?.click());

describe('the whole report', () => {
  test('shows each check of the engine once, with its counts by kind and by model', async () => {
    await open();
    const report = runChecks();
    expect(rows()).toHaveLength(allChecks.length);
    for (const [name = '', checks, passed, failed] of kindRows()) {
      const own = report.filter(({ kind }) => name.toLowerCase().startsWith(kind));
      expect([Number(checks), Number(passed), Number(failed)], name).toEqual([
        own.length,
        own.filter(({ ok }) => ok).length,
        own.filter(({ ok }) => !ok).length,
      ]);
    }
    const models = new Set(report.map(({ model }) => model));
    expect(root.querySelector('.verdict h2')?.textContent).toContain(`${models.size} models`);
    expect(root.textContent).toContain(caution);
    expect(root.textContent).toContain('on the command line only: npx loose-tie qualify');
  });
});

describe('a report', () => {
  test('gives a check with its numbers, tolerance, source, kind and outcome in words', async () => {
    await open([check('a', { tolerance: { kind: 'relative', value: 0.1, because: 'read off a small curve' } })]);
    expect(cells(rows()[0])).toEqual([
      'pass',
      'Melting time',
      '50 A',
      '2 s',
      '2.01 s',
      '−0.5 %',
      '10 %because: read off a small curve',
      'a printed table (published value)',
    ]);
  });

  test('says fail of a check that fails, counts it, and unfolds its model', async () => {
    await open([check('a'), check('b', { model: 'breaker', ours: () => 3 })]);
    expect(root.querySelector('.verdict h2')?.textContent).toBe('2 checks, 1 failed, 2 models');
    expect(rows().map((row) => cells(row)[0])).toEqual(['pass', 'fail']);
    expect([...root.querySelectorAll('details')].map((each) => each.open)).toEqual([false, true]);
    failedOnly();
    expect(rows().map((row) => cells(row)[0])).toEqual(['fail']);
  });

  test('fails a check without a number and one that throws, and says why that one broke off', async () => {
    const broken = (): number => {
      throw new Error('part left floating');
    };
    await open([check('a', { ours: () => Number.NaN }), check('b', { ours: broken }), check('c')]);
    expect(rows().map((row) => cells(row)[0])).toEqual(['fail', 'fail', 'pass']);
    expect(cells(rows()[0])[3]).toBe('no number s');
    expect(root.querySelector('[role="alert"]')?.textContent).toBe('This check broke off: b: part left floating');
  });

  test('lists common practice and memory apart and does not count them as published', async () => {
    await open([
      check('a', { kind: 'from memory' }),
      check('b'),
      check('c', { kind: 'common practice' }),
      check('d', { kind: 'independent program' }),
    ]);
    expect(kindRows().map((row) => row[1])).toEqual(['1', '1', '1', '1']);
    const [held, apart] = root.querySelectorAll('section[aria-label]');
    expect([...(held?.querySelectorAll('.kind') ?? [])].map((el) => el.textContent)).toEqual([
      '(published value)',
      '(independent program)',
    ]);
    expect([...(apart?.querySelectorAll('.kind') ?? [])].map((el) => el.textContent)).toEqual([
      '(from memory)',
      '(common practice)',
    ]);
  });

  test('is narrowed by model and kind, and says so when nothing is left', async () => {
    await open([check('a'), check('b', { model: 'breaker' }), check('c', { model: 'breaker', kind: 'from memory' })]);
    pick('Model', 'breaker');
    expect(rows()).toHaveLength(2);
    expect([...root.querySelectorAll('details')].every((each) => each.open)).toBe(true);
    pick('Kind', 'from memory');
    expect(rows()).toHaveLength(1);
    pick('Model', 'fuse link');
    expect(root.querySelector('[role="status"]')?.textContent).toBe('No check is of this model and this kind.');
    failedOnly();
    expect(root.querySelector('[role="status"]')?.textContent).toBe('No check of these failed.');
  });

  test('is unfolded on paper and folded again after', async () => {
    await open([check('a')]);
    const details = root.querySelector('details') as HTMLDetailsElement;
    dispatchEvent(new Event('beforeprint'));
    expect(details.open).toBe(true);
    dispatchEvent(new Event('afterprint'));
    expect(details.open).toBe(false);
  });

  test('shows its progress first, and is left by its button even before it is done', async () => {
    let left = 0;
    document.body.innerHTML = '<div id="app"></div>';
    root = document.getElementById('app') as HTMLElement;
    const leave = (): void => {
      left += 1;
    };
    act(() => render(<QualificationPage back={leave} checks={[check('a')]} />, root));
    expect(root.querySelector('.working')?.textContent).toContain('0 of 1');
    expect(button(root, 'Print the report').disabled).toBe(true);
    doing(() => button(root, 'Back to the start').click());
    expect(left).toBe(1);
  });
});
