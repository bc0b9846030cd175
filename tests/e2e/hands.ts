/** Three ways to work a page: mouse, touch, and keys alone. */
import type { Locator, Page } from 'playwright-core';

export interface Hand {
  readonly page: Page;
  /** Brings a sheet up: 'findings', 'briefing', 'acts', 'call'. */
  openPage(name: string): Promise<void>;
  press(target: Locator): Promise<void>;
  write(target: Locator, text: string): Promise<void>;
  /** Takes a value of a select. */
  choose(target: Locator, value: string): Promise<void>;
  /** Takes the part in the list. */
  point(id: string): Promise<void>;
  /** Walks by the menu of the strip. */
  walk(place: string): Promise<void>;
}

type Do = (target: Locator) => Promise<void>;

const pointing = (page: Page, hit: Do): Hand => {
  const list = async (open: boolean): Promise<void> => {
    const stands = (await page.locator('.list-twin').count()) > 0;
    if (stands !== open) await hit(page.locator('.strip').getByRole('button', { name: 'List' }));
  };
  return {
    page,
    openPage: async (name) => {
      const tab = page.locator(`#tab-${name}`);
      const shown = await tab.evaluate(
        (el) => el.getAttribute('aria-selected') === 'true' && el.getAttribute('aria-expanded') === 'true',
      );
      if (!shown) await hit(tab);
    },
    press: hit,
    write: async (target, text) => {
      await hit(target);
      await target.fill(text);
    },
    choose: async (target, value) => void (await target.selectOption(value)),
    point: async (id) => {
      await list(true);
      const close = page.getByRole('button', { name: 'Put it away' });
      if (await close.first().isVisible()) await hit(close.first());
      await hit(page.locator(`[data-id="${id}"] .name`));
    },
    walk: async (place) => {
      await hit(page.locator('.walk > .menu > button'));
      await hit(page.getByRole('menuitem', { name: place }));
    },
  };
};

export const mouse = (page: Page): Hand => pointing(page, (target) => target.click());

export const touch = (page: Page): Hand => pointing(page, (target) => target.tap());

const farthest = 400;

/** Nothing but keys: Tab to what is wanted, arrows within lists and menus. */
export const keyboard = (page: Page): Hand => {
  const holds = (target: Locator): Promise<boolean> => target.evaluate((el) => el === document.activeElement);
  const step = async (target: Locator, key: string): Promise<void> => {
    for (let steps = 0; steps < farthest; steps += 1) {
      if (await holds(target)) return;
      await page.keyboard.press(key);
    }
    throw new Error(`${key} does not lead to ${target}`);
  };
  const reach = async (target: Locator): Promise<void> => {
    await target.first().waitFor();
    await step(target.first(), 'Tab');
  };
  /** Letters are keys of their own only outside of fields. */
  const leaveField = async (): Promise<void> => {
    const typing = await page.evaluate(() => ['INPUT', 'SELECT'].includes(document.activeElement?.tagName ?? ''));
    if (typing) await reach(page.locator('.walk > .menu > button'));
  };
  return {
    page,
    openPage: async (name) => {
      const tab = page.locator(`#tab-${name}`);
      const shown = await tab.evaluate(
        (el) => el.getAttribute('aria-selected') === 'true' && el.getAttribute('aria-expanded') === 'true',
      );
      if (shown) return;
      await leaveField();
      await page.keyboard.press(name.charAt(0));
    },
    press: async (target) => {
      await reach(target);
      await page.keyboard.press('Enter');
    },
    write: async (target, text) => {
      await reach(target);
      await page.keyboard.press('Control+A');
      await page.keyboard.type(text);
    },
    choose: async (target, value) => {
      await reach(target);
      await page.keyboard.press('Home');
      for (let steps = 0; (await target.inputValue()) !== value; steps += 1) {
        if (steps > farthest) throw new Error(`no option ${value} in ${target}`);
        await page.keyboard.press('ArrowDown');
      }
    },
    point: async (id) => {
      await leaveField();
      if ((await page.locator('.list-twin').count()) > 0) await page.keyboard.press('Escape');
      if ((await page.locator('#picture').count()) > 0 && (await page.locator('.list-twin').count()) > 0)
        await page.keyboard.press('l');
      await page.keyboard.press('l');
      await step(page.locator('#list-first'), 'Home');
      await step(page.locator(`[data-id="${id}"]`), 'ArrowDown');
      await page.keyboard.press('Enter');
    },
    walk: async (place) => {
      await leaveField();
      await page.keyboard.press('w');
      await step(page.getByRole('menuitem', { name: place }), 'ArrowDown');
      await page.keyboard.press('Enter');
    },
  };
};
