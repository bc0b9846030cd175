/** Each card in a real browser at three sizes, with its fields right and wrong. */
import { render } from 'preact';
import { act } from 'preact/test-utils';
import { afterEach, describe, test } from 'vitest';
import '../../../src/screens/styles/screens.css';
import '../../../src/screens/styles/cards.css';
import { CardsPage, cards } from '../../../src/screens/cards/CardsPage.tsx';
import { at, isFine, sizes } from '../bench/geometry.ts';

let root: HTMLElement;
afterEach(() => {
  act(() => render(null, root));
});

describe.each(sizes)('at %i×%i', (...size) => {
  test.each(cards.map(({ id }) => id))('%s fits, right and wrong, and axe objects to nothing', async (id) => {
    document.body.innerHTML = '<div id="app"></div>';
    root = document.getElementById('app') as HTMLElement;
    act(() => render(<CardsPage system="us" back={() => undefined} first={id} today="2026-10-13" />, root));
    await at(size);
    await isFine();
    for (const input of root.querySelectorAll<HTMLInputElement>('input[type="text"]')) {
      act(() => {
        input.value = 'something that nobody could read';
        input.dispatchEvent(new Event('input', { bubbles: true }));
      });
    }
    await isFine();
  });
});
