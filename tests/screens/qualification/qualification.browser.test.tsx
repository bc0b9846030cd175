/** The report in a real browser at three sizes: no scrolling sideways, nothing cut off, nothing that axe objects to. */
import { render } from 'preact';
import { act } from 'preact/test-utils';
import { afterEach, describe, expect, test, vi } from 'vitest';
import '../../../src/screens/styles/screens.css';
import { allChecks } from '../../../src/engine/qualification/allChecks.ts';
import type { Check } from '../../../src/engine/qualification/types.ts';
import { QualificationPage } from '../../../src/screens/qualification/QualificationPage.tsx';
import { at, isFine, sizes, wide } from '../bench/geometry.ts';

let root: HTMLElement;
afterEach(() => act(() => render(null, root)));

const open = async (size: readonly [number, number], checks?: readonly Check[]): Promise<void> => {
  document.body.innerHTML = '<div id="app"></div>';
  root = document.getElementById('app') as HTMLElement;
  act(() => render(<QualificationPage back={() => undefined} checks={checks} />, root));
  await at(size);
  await vi.waitFor(() => expect(root.querySelector('.verdict')).not.toBeNull(), { timeout: 20_000 });
};

/** One check a model, one of them off by far. */
const few = [...new Map(allChecks.map((check) => [`${check.model} ${check.kind}`, check])).values()].map((check, k) =>
  k === 3 ? { ...check, ours: () => -987654.321e9 } : check,
);

describe.each(sizes)('at %i×%i', (...size) => {
  test('every check fits, unfolded', async () => {
    await open(size);
    expect(root.querySelectorAll('.checks tbody tr')).toHaveLength(allChecks.length);
    for (const fold of root.querySelectorAll('details')) fold.open = true;
    expect(wide()).toEqual([]);
  });

  test('axe objects to nothing, a failure among the checks', async () => {
    await open(size, few);
    expect(root.querySelectorAll('.failed')).toHaveLength(1);
    for (const fold of root.querySelectorAll('details')) fold.open = true;
    await isFine();
  });
});
