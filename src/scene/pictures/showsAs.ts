/**
 * How a laid fault or look-alike shows. By fault kind where one has its own picture, else by the conditions that name it rightly:
 * the state in which its part is built, a mark on its surface, or the part not there. A fault without a sign for the eye shows
 * nothing. Sizes are those of its sign.
 */
import { faultKind } from '../../engine/catalogue/faults.ts';
import type { LaidFault, Part } from '../../engine/world/types.ts';
import type { MarkKind } from '../hardware/mark.ts';

/** A way to show a condition. */
export interface Shown {
  /** States of a builder, the first that it knows. */
  readonly states?: readonly string[];
  readonly mark?: MarkKind;
  /** How many such marks, spread along the surface. */
  readonly count?: number;
  /** Another make in which it is built. */
  readonly variant?: string;
  /** The part is not drawn. */
  readonly gone?: true;
  /** Fresh wire or metal instead of a mark, added by the picture. */
  readonly adds?: 'limb' | 'grass';
  /** It hangs as low as the catalogue puts its lowest place. */
  readonly low?: true;
}

const byFault: Readonly<Record<string, Shown>> = {
  'tie-broken': { states: ['broken'] },
  'ground-bond-burned-off': { states: ['burned'] },
  'ground-lead-cut': { states: ['cut'] },
  'ground-lead-broken': { states: ['apart'] },
  'arrester-disconnector-operated': { states: ['disconnected'] },
  'arrester-failed-short': { states: ['burst'], mark: 'flash' },
  'fuse-tube-hung': { states: ['hung-up'] },
  'guy-broken': { states: ['broken'] },
  'limb-on-line': { adds: 'limb' },
  'tank-rain-run': { mark: 'wet' },
  'tank-weld-seam': { mark: 'seam' },
  'service-neutral-open': { states: ['messenger-off'] },
  'crossarm-end-decayed': { mark: 'decay' },
  'pole-leaning': { mark: 'heave' },
  'pole-set-shallow': { mark: 'soil' },
  'pin-insulator-cracked-through': { mark: 'girdle' },
  'spare-hole': { mark: 'bore' },
  'old-staples': { mark: 'staples' },
  'old-ground-stub': { mark: 'stub' },
  'moss-at-butt': { mark: 'moss' },
  'shadow-band': { mark: 'band' },
  'arm-lichen': { mark: 'lichen' },
  'arm-long-bolt': { mark: 'bolt' },
  'glaze-variation': { mark: 'pale' },
  'tank-faded': { mark: 'faded' },
  'casting-line': { mark: 'seam' },
  'mould-line': { mark: 'seam' },
  'can-seam': { mark: 'seam' },
  'bird-droppings': { mark: 'droppings' },
  'spider-web-on-cutout': { mark: 'web' },
  'polymer-bloom': { mark: 'bloom' },
  'arrester-shed-line': { mark: 'ribs' },
  // What its state shows already: the pointer of a dial, handles without their slide, a ball that is there.
  'regulator-off-neutral': { states: [] },
  'interlock-defeated': { states: [] },
  'strain-insulator-bridged': { states: [] },
  'stirrup-burned': { states: ['burned'] },
  'stirrup-patina': { states: ['patina'] },
  'connector-patina': { states: ['patina'] },
  'green-ground-wire': { states: [], variant: 'verdigris' },
  'rust-on-guy': { states: ['rusted'] },
  'rust-on-rod': { states: ['rusted'] },
  // Parted where the engine has it, and spread at the tip.
  'conductor-broken': { states: [] },
  'neutral-open': { states: [] },
  'meter-fog': { states: ['fogged'] },
  'hand-tie-unwound': { states: ['unwound'] },
  'long-tie-tails': { states: ['long-tails'] },
  'armor-rods': { states: ['armoured'] },
  'splice-tight': { states: ['spliced'] },
  'taped-leg': { states: ['taped'] },
  'service-wedge-slipped': { states: ['slipped'] },
  'conductor-within-reach': { states: [], low: true },
  'service-drop-low': { states: ['worn'], low: true },
  'rod-below-grass': { adds: 'grass' },
  'guy-slack-usual': { states: ['eased'] },
  'guy-insulator-missing': { states: [], variant: 'plain' },
};

const byCondition: Readonly<Record<string, Shown>> = {
  'anchor-pulled': { states: ['pulled', 'slack'] },
  'bond-missing': { states: ['burned'] },
  'bracket-loose': { states: ['loose'] },
  broken: { states: ['broken', 'spool-broken', 'burst'], mark: 'crack' },
  'broken-strands': { states: ['frayed'] },
  bulged: { states: ['bulged'] },
  'burn-track': { mark: 'burn' },
  burned: { states: ['burned'], mark: 'flash' },
  'bushing-cracked': { mark: 'crack' },
  chipped: { mark: 'chip' },
  'contacts-burned': { mark: 'flash' },
  contaminated: { mark: 'crust' },
  corroded: { mark: 'rust' },
  'cotter-missing': { states: ['uncoupled'] },
  cracked: { mark: 'crack' },
  damaged: { states: ['loose', 'displaced', 'hanging', 'unlashed', 'open'] },
  'disconnector-operated': { states: ['disconnected'] },
  failed: { states: ['burst'] },
  'flashed-over': { mark: 'flash' },
  'groundline-decay': { mark: 'decay' },
  'guard-missing': { states: ['no-guard'], gone: true },
  'hung-up': { states: ['hung-up'] },
  'insulation-worn': { states: ['worn'] },
  'insulator-missing': { states: ['broken'] },
  'jaws-burned': { mark: 'flash' },
  'lead-off': { states: ['no-ground', 'disconnected'] },
  leaking: { mark: 'oil' },
  'limb-on-line': { adds: 'limb' },
  loose: { states: ['loose', 'tilted', 'bent', 'slack'] },
  'loose-pin': { states: ['loose-pin', 'loose'] },
  'moulding-missing': { states: ['missing'] },
  missing: { states: ['missing'], gone: true },
  'off-insulator': { states: ['gone'] },
  'old-scar': { mark: 'scar' },
  overheated: { mark: 'flash' },
  'polymer-cut': { mark: 'cut' },
  rusted: { states: ['frayed'], mark: 'rust' },
  'rust-bloom': { mark: 'rust' },
  'season-checks': { mark: 'split' },
  'shell-rot': { mark: 'decay' },
  slack: { states: ['slack'] },
  'split-top': { states: ['split-top'] },
  'tie-broken': { states: ['one-leg'] },
  tracking: { mark: 'burn' },
  'water-stain': { mark: 'stain' },
  'wrong-tap': { states: ['half-volts'] },
  'woodpecker-holes': { mark: 'hole', count: 2 },
};

const isVisible = (fault: LaidFault): boolean => faultKind(fault.kind).signs.some(({ sense }) => sense === 'see');

/** What shows of a fault; null if the eye gets nothing of it. */
export const shownOf = (fault: LaidFault): Shown | null => {
  if (!isVisible(fault)) return null;
  const own = byFault[fault.kind];
  if (own !== undefined) return own;
  for (const condition of faultKind(fault.kind).conditions) {
    const shown = byCondition[condition];
    if (shown !== undefined) return shown;
  }
  return {};
};

/** The state that a part's faults give its picture among those that its builder knows, else the one in which it is sound. */
export const drawnState = (part: Part, sound: string, known?: readonly string[]): string => {
  for (const fault of part.faults) {
    const state = shownOf(fault)?.states?.find((name) => known === undefined || known.includes(name));
    if (state !== undefined) return state;
  }
  return sound;
};

/** The make in which a part's faults have it drawn, else its own. */
export const drawnVariant = (part: Part, made: string): string =>
  part.faults.map((fault) => shownOf(fault)?.variant).find((name) => name !== undefined) ?? made;

/** Whether a fault has taken the part away. */
export const isGone = (part: Part, known: readonly string[]): boolean =>
  part.faults.some((fault) => {
    const shown = shownOf(fault);
    return shown?.gone === true && !(shown.states ?? []).some((state) => known.includes(state));
  });
