// @vitest-environment happy-dom
/** The cards against what is published, and what they answer to a slip of the pen. */
import { render } from 'preact';
import { act } from 'preact/test-utils';
import { describe, expect, test } from 'vitest';
import { caution } from '../../../src/engine/debrief/caution.ts';
import { clearTime } from '../../../src/engine/standards/fuseLinks.ts';
import { CardsPage, cards } from '../../../src/screens/cards/CardsPage.tsx';
import { certainCurrent, smallestLink } from '../../../src/screens/cards/FuseCard.tsx';
import { button, doing, type } from '../show.tsx';

let root: HTMLElement;
const open = (first: string, system: 'us' | 'metric' = 'us', back = (): void => undefined): void => {
  document.body.innerHTML = '<div id="app"></div>';
  root = document.getElementById('app') as HTMLElement;
  act(() => render(<CardsPage system={system} back={back} first={first} today="2026-10-13" />, root));
};
const field = <T extends HTMLElement = HTMLInputElement>(label: string): T => {
  const found = [...root.querySelectorAll('label')].find((each) => each.textContent?.trim() === label);
  const el = found && (found.htmlFor ? document.getElementById(found.htmlFor) : found.querySelector('input'));
  if (!el) throw new Error(`no field ${label}`);
  return el as unknown as T;
};
const pick = (label: string, value: string): void =>
  doing(() => {
    const select = field<HTMLSelectElement>(label);
    select.value = value;
    select.dispatchEvent(new Event('change', { bubbles: true }));
  });
const answer = (label: string): string => {
  const found = [...root.querySelectorAll('.answers dt')].find((each) => each.textContent === label);
  return found?.nextElementSibling?.querySelector('output')?.textContent ?? '';
};
const problem = (label: string): string => {
  const told = field(label).getAttribute('aria-describedby');
  return document.getElementById(told ?? '')?.textContent ?? '';
};

describe('approach distance', () => {
  // 29 CFR 1910.269 Table R-6: feet and metres as printed there.
  test.each([
    ['0.5 kV', 'phase-to-ground', '1.09 ft (0.33 m)'],
    ['4.16 kV', 'phase-to-ground', '2.07 ft (0.63 m)'],
    ['12.47 kV', 'phase-to-ground', '2.14 ft (0.65 m)'],
    ['12.47 kV', 'phase-to-phase', '2.24 ft (0.68 m)'],
    ['24.94 kV', 'phase-to-ground', '2.53 ft (0.77 m)'],
    ['24.94 kV', 'phase-to-phase', '2.92 ft (0.89 m)'],
    ['46 kV', 'phase-to-phase', '3.22 ft (0.98 m)'],
    ['72.5 kV', 'phase-to-ground', '3.29 ft (1 m)'],
  ])('%s %s is %s as Table R-6 prints it', (volts, exposure, expected) => {
    open('approach');
    type(field('System voltage, phase to phase'), volts);
    pick('Exposure', exposure);
    expect(answer('Keep at least')).toBe(expected);
  });

  test('multiplies by factor A above 900 m and says avoid contact up to 300 V', () => {
    open('approach', 'metric');
    type(field('Altitude'), '1500 m');
    expect(answer('Altitude factor')).toBe('1.05');
    expect(answer('Keep at least')).toBe('0.69 m (2.24 ft)'); // 0.65 m x 1.05, never rounded down
    type(field('System voltage, phase to phase'), '240 V');
    expect(answer('Keep at least')).toBe('no distance; avoid contact');
  });

  test('a slip is answered with what was found and what is expected, and the answer goes', () => {
    open('approach');
    const volts = field('System voltage, phase to phase');
    type(volts, '12.47');
    expect(problem('System voltage, phase to phase')).toBe(
      'found "12.47" without a unit; expected a voltage, for example 7.2 kV or 120 V',
    );
    expect(volts.getAttribute('aria-invalid')).toBe('true');
    expect(answer('Keep at least')).toBe('…');
    type(volts, '12 ft');
    expect(problem('System voltage, phase to phase')).toContain('which is a length; expected a voltage');
    type(volts, '900 kV');
    expect(problem('System voltage, phase to phase')).toBe(
      'found 900 kV; expected at most 800 kV (Tables R-6 and R-7 go from 50 V to 800 kV)',
    );
    type(volts, '7 kV');
    expect(volts.getAttribute('aria-invalid')).toBe('false');
    expect(answer('Keep at least')).not.toBe('…');
  });
});

describe('gloves and sleeves', () => {
  // 29 CFR 1910.137 Table I-4 and note 1, Table I-5.
  test('class 2 covers 12.47 kV phase to phase, class 1 suffices for 7.2 kV to ground alone', () => {
    open('gloves');
    expect(answer('Lowest class that covers it')).toBe('class 2');
    doing(() => field('More than one phase, or phase to phase, within reach').click());
    expect(answer('Voltage to cover')).toBe('7.2 kV');
    expect(answer('Lowest class that covers it')).toBe('class 1');
    type(field('System voltage, phase to phase'), '100 kV');
    expect(answer('Lowest class that covers it')).toBe('none: no class covers it');
  });

  test('gloves count six months, sleeves twelve', () => {
    open('gloves');
    type(field('Last electrical test'), '2026-04-12');
    expect(answer('Last test counts until')).toBe('2026-10-12');
    expect(answer('On the day of use')).toBe('not in date');
    pick('Equipment', 'sleeves');
    expect(answer('Last test counts until')).toBe('2027-04-12');
    expect(answer('On the day of use')).toBe('in date');
    type(field('Last electrical test'), '2026-02-30');
    expect(problem('Last electrical test')).toBe(
      'found "2026-02-30"; expected a day that exists, for example 2026-10-13',
    );
  });
});

describe('live-line tools', () => {
  // 29 CFR 1910.269(j)(1), (j)(2)(iii)(E): 100 and 75 kV per foot of fibreglass, 75 and 50 of wood.
  test('test 8 ft of fibreglass with 800 kV by design and 600 kV in service, of wood with 600 kV and 400 kV', () => {
    open('sticks');
    expect(answer('Test by design')).toBe('800 kV for 5 min');
    expect(answer('Test in service')).toBe('600 kV for 1 min');
    pick('Material', 'wood');
    expect(answer('Test by design')).toBe('600 kV for 3 min');
    expect(answer('Test in service')).toBe('400 kV for 1 min');
  });

  test('an overdue or unwiped stick may not be used, with the paragraph', () => {
    open('sticks');
    expect(answer('May it be used on that day')).toContain('nothing in (j)(2)');
    type(field('Last examination and test'), '2024-05-20');
    doing(() => field('Wiped clean before use').click());
    expect(answer('May it be used on that day')).toBe('no');
    expect(root.querySelector('.answers')?.textContent).toContain('two years since the last test: (j)(2)(iii)');
    expect(root.querySelector('.answers')?.textContent).toContain('not wiped clean before use: (j)(2)(i)');
  });
});

describe('protective grounds', () => {
  // ASTM F855 Table 1: #2 14 and 10 kA, 1/0 21 and 15 kA, 2/0 27 and 20 kA, 4/0 43 and 30 kA at 15 and 30 cycles.
  test.each([
    ['14 kA', '15 cycles', '#2'],
    ['14 kA', '30 cycles', '1/0'],
    ['20 kA', '0.5 s', '2/0'],
    ['43 kA', '15 cycles', '4/0'],
  ])('%s for %s takes %s', (fault, time, cable) => {
    open('grounds');
    type(field('Fault current at the worksite'), fault);
    type(field('Clearing time'), time);
    expect(answer('Smallest cable')).toBe(cable);
  });

  // H ratings, X/R 30, 15 cycles: 68 kA for 350 kcmil, under the 74 of Table 1; none beyond 15 cycles.
  test.each([
    ['70 kA', '15 cycles', 'low', '350 kcmil'],
    ['70 kA', '15 cycles', 'high', 'none listed: by engineering'],
    ['14 kA', '15 cycles', 'high', '#2'],
    ['14 kA', '30 cycles', 'high', 'none listed: by engineering'],
  ])('%s for %s with X/R %s takes %s', (fault, time, ratio, cable) => {
    open('grounds');
    type(field('Fault current at the worksite'), fault);
    type(field('Clearing time'), time);
    pick('X/R there', ratio);
    expect(answer('Smallest cable')).toBe(cable);
  });

  test('says where the table ends', () => {
    open('grounds');
    type(field('Clearing time'), '1 s');
    expect(problem('Clearing time')).toBe('found 1 s; expected at most 500 ms (ASTM F855 Table 1 ends at 30 cycles)');
  });
});

describe('the arc', () => {
  // 29 CFR 1910.269 Appendix E Table 6, to 15 kV: 5 kA allows 46 cycles for 4 cal and 92 for 8; 10 kA allows 18 for 4.
  test.each([
    ['5 kA', '46 cycles', '4 cal/cm² clothing'],
    ['5 kA', '92 cycles', '8 cal/cm² clothing'],
    ['10 kA', '18 cycles', '4 cal/cm² clothing'],
    ['25 kA', '5 cycles', 'no answer: another method is required'],
  ])('%s for %s: %s', (fault, time, expected) => {
    open('arc');
    type(field('Fault current'), fault);
    type(field('Clearing time'), time);
    expect(answer('By the table, at 15 in')).toBe(expected);
  });

  test('the estimate falls with the square of the distance and says that it is one', () => {
    open('arc', 'metric');
    type(field('Clearing time'), '138 cycles');
    type(field('Distance from the arc'), '0.38 m');
    expect(answer('Estimate at the distance given')).toBe('12 cal/cm²');
    type(field('Distance from the arc'), '0.76 m');
    expect(answer('Estimate at the distance given')).toBe('3 cal/cm²');
    expect(root.querySelector('.answers')?.textContent).toContain('An estimate is no rating');
  });
});

describe('step voltage', () => {
  // IEEE Std 80: (1000 + 6 rho) 0.116 / sqrt(t) for 50 kg; Dwight: rho / (2 pi L) (ln(8L/d) - 1).
  test('tolerates 262 V in 100 ohm metres for half a second', () => {
    open('step');
    expect(answer('Tolerable step')).toBe('262 V');
  });

  test('gives the rod of 8 ft by 5/8 in the resistance of Dwight’s formula', () => {
    open('step', 'us');
    type(field('Current into the rod'), '1 A');
    const [length, diameter] = [8 * 0.3048, 0.625 * 0.0254];
    const ohms = (100 / (2 * Math.PI * length)) * (Math.log((8 * length) / diameter) - 1);
    expect(answer('The rod itself')).toBe(`${ohms.toPrecision(3)} V`);
  });

  test('warns when the step is more than is tolerable', () => {
    open('step');
    expect(root.querySelector('.answers .problem')).not.toBeNull();
    type(field('Current into the rod'), '5 A');
    expect(root.querySelector('.answers .problem')).toBeNull();
  });
});

describe('fuse links', () => {
  test('25 kVA at 7.2 kV draws 3.47 A and takes 6K, as common practice has it', () => {
    open('fuses');
    expect(answer('Full-load current')).toBe('3.47 A');
    expect(answer('Smallest link')).toBe('6K');
  });

  test('the link named is certain to clear just above the current named, and not below', () => {
    const link = smallestLink('K', 7);
    if (!link) throw new Error('no link');
    const least = certainCurrent(link);
    expect(clearTime(link, least)).toBeLessThan(1000);
    expect(clearTime(link, least * 0.998)).toBe(Number.POSITIVE_INFINITY);
  });
});

describe('sag', () => {
  // w S2 / 8 H: #4 ACSR 57.4 lb per 1000 ft, 200 ft, 300 lbf: 0.0574 x 200 x 200 / (8 x 300) = 0.957 ft.
  test('#4 ACSR over 200 ft at 300 lbf hangs 0.957 ft', () => {
    open('sag');
    expect(answer('Sag at mid-span')).toMatch(/^(0\.957 ft|11\.5 in) \(/);
    pick('Given', 'sag');
    type(field('Sag at mid-span'), '0.9567 ft');
    expect(answer('Horizontal tension')).toBe('300 lbf');
  });
});

describe('every card', () => {
  test.each(cards.map(({ id }) => id))('%s has its source, what it leaves out, and the caution', (id) => {
    open(id);
    expect(root.querySelectorAll('.whence li').length).toBeGreaterThan(0);
    expect(root.querySelector('.whence')?.textContent).toContain('Left out:');
    expect(root.textContent).toContain(caution);
    for (const output of root.querySelectorAll('output')) expect(output.textContent).not.toBe('…');
  });

  test.each(cards.map(({ id }) => id))('%s answers nothing wild in any field, only what it expects', (id) => {
    open(id);
    for (const input of root.querySelectorAll<HTMLInputElement>('input[type="text"]')) {
      const before = input.value;
      for (const text of ['', 'x', '-5', '1e99 V', '0', '∞ m', '<b>']) {
        type(input, text);
        const told = document.getElementById(input.getAttribute('aria-describedby') ?? '')?.textContent ?? '';
        expect(told, `${id} ${text}`).toMatch(/^found .+expected /);
      }
      type(input, before);
      expect(input.getAttribute('aria-invalid')).toBe('false');
    }
  });

  test('is reached from the index by its button, which says so, and focus goes to its title', () => {
    let left = 0;
    open('approach', 'us', () => {
      left += 1;
    });
    doing(() => button(root, 'Sag').click());
    expect(button(root, 'Sag').getAttribute('aria-current')).toBe('page');
    expect(document.activeElement?.textContent).toBe('Sag');
    doing(() => button(root, 'Back to the start').click());
    expect(left).toBe(1);
  });
});
