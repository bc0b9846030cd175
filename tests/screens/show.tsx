/** Puts the screens of a desk into the test's document. */
import { render } from 'preact';
import { act } from 'preact/test-utils';
import { Screen } from '../../src/screens/Screen.tsx';
import type { Desk } from '../../src/screens/types.ts';

let last: HTMLElement | null = null;

export const show = (desk: Desk): HTMLElement => {
  const before = last;
  if (before !== null) act(() => render(null, before));
  document.body.innerHTML = '<div id="app"></div>';
  const root = document.getElementById('app') as HTMLElement;
  act(() => render(<Screen desk={desk} />, root));
  last = root;
  return root;
};

/** Runs what a person does and lets the page follow. */
export const doing = (what: () => void): void => {
  act(what);
};

export const button = (root: ParentNode, name: string | RegExp): HTMLButtonElement => {
  const fits = (el: HTMLElement): boolean => {
    const text = el.getAttribute('aria-label') ?? el.textContent ?? '';
    return typeof name === 'string' ? text.trim() === name : name.test(text);
  };
  const found = [...root.querySelectorAll<HTMLButtonElement>('button, [role="treeitem"], summary')].find(fits);
  if (!found) throw new Error(`no button ${name}`);
  return found;
};

export const press = (el: Element, key: string): void =>
  doing(() => {
    el.dispatchEvent(new KeyboardEvent('keydown', { key, bubbles: true, cancelable: true }));
  });

export const type = (el: HTMLInputElement, text: string): void =>
  doing(() => {
    el.value = text;
    el.dispatchEvent(new Event('input', { bubbles: true }));
  });
