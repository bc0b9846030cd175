/** Conditions in the trade's words, as a trainee may call them on a part, a tool, a person or the site. */
import { componentKind } from './components.ts';
import type { ConditionKind } from './types.ts';

export const conditions: readonly ConditionKind[] = [
  { id: 'sound', label: 'sound, nothing wrong', healthy: true },
  { id: 'alone', label: 'alone, no second worker' },
  { id: 'anchor-pulled', label: 'anchor pulled' },
  { id: 'backfed', label: 'backfed from the low side' },
  { id: 'bond-missing', label: 'bond to the neutral missing or burned off' },
  { id: 'bracket-live', label: 'bracket alive' },
  { id: 'bracket-loose', label: 'bracket loose' },
  { id: 'broken', label: 'broken' },
  { id: 'broken-strands', label: 'broken strands' },
  { id: 'bulged', label: 'tank bulged' },
  { id: 'burn-track', label: 'burned by tracking' },
  { id: 'burned', label: 'burned' },
  { id: 'bushing-cracked', label: 'bushing cracked' },
  { id: 'charge-held', label: 'holds a charge' },
  { id: 'child-near', label: 'child at the work' },
  { id: 'chipped', label: 'chipped' },
  { id: 'clamp-off', label: 'clamp off' },
  { id: 'class-too-low', label: 'class too low for the line' },
  { id: 'contacts-burned', label: 'contacts burned' },
  { id: 'contaminated', label: 'dirty, contaminated' },
  { id: 'corroded', label: 'corroded' },
  { id: 'cotter-missing', label: 'cotter missing' },
  { id: 'cracked', label: 'porcelain cracked' },
  { id: 'crossing-clear', label: 'another line, clear of ours', healthy: true },
  { id: 'cut', label: 'cut, copper gone' },
  { id: 'damaged', label: 'damaged' },
  { id: 'dark', label: 'no lights', healthy: true },
  { id: 'disconnector-operated', label: 'disconnector operated' },
  { id: 'dog-loose', label: 'dog loose' },
  { id: 'factory-seam', label: 'seam or line from the factory', healthy: true },
  { id: 'failed', label: 'failed' },
  { id: 'fails-self-test', label: 'fails its self-test' },
  { id: 'fatigued', label: 'too tired to work' },
  { id: 'feeding-cords', label: 'set feeding appliances by cords only' },
  { id: 'feeding-panel', label: 'set feeding the panel, nothing between it and the line' },
  { id: 'feeding-transfer-switch', label: 'set feeding a transfer switch' },
  { id: 'flashed-over', label: 'flashed over' },
  { id: 'flooded', label: 'water standing' },
  { id: 'foreign-contact', label: 'touched by something foreign' },
  { id: 'foreign-source', label: 'fed from a source of others' },
  { id: 'frosted', label: 'frost on it', healthy: true },
  { id: 'fuse-operated', label: 'fuse operated' },
  { id: 'ground-too-small', label: 'ground too small' },
  { id: 'groundline-decay', label: 'decay at the ground line' },
  { id: 'guard-missing', label: 'guard missing' },
  { id: 'humming', label: 'hums as its like do', healthy: true },
  { id: 'hung-up', label: 'tube hung up' },
  { id: 'iced', label: 'iced' },
  { id: 'in-drop-zone', label: 'somebody where things fall' },
  { id: 'insulation-worn', label: 'insulation worn' },
  { id: 'insulator-missing', label: 'insulator missing from the guy' },
  { id: 'jaws-burned', label: 'jaws burned' },
  { id: 'lead-off', label: 'lead off' },
  { id: 'leaking', label: 'leaking oil' },
  { id: 'leaks-air', label: 'loses air' },
  { id: 'leaning', label: 'leaning' },
  { id: 'lightning', label: 'thunderstorm near' },
  { id: 'limb-on-line', label: 'limb on the line' },
  { id: 'lit', label: 'lights on', healthy: true },
  { id: 'live-by-backfeed', label: 'alive by backfeed' },
  { id: 'loose', label: 'loose' },
  { id: 'loose-pin', label: 'pin loose in the wood' },
  { id: 'low-sag', label: 'hanging low' },
  { id: 'main-closed-on-set', label: 'main closed with a set on the panel' },
  { id: 'missing', label: 'missing' },
  { id: 'miswired', label: 'miswired' },
  { id: 'moulding-missing', label: 'moulding missing' },
  { id: 'no-storm', label: 'no thunderstorm', healthy: true },
  { id: 'not-qualified', label: 'not qualified' },
  { id: 'off-insulator', label: 'off its insulator' },
  { id: 'off-neutral', label: 'off its neutral step' },
  { id: 'old-scar', label: 'old scar, healed or bleached', healthy: true },
  { id: 'open-neutral', label: 'neutral open' },
  { id: 'other-circuit', label: 'on another circuit' },
  { id: 'out-of-test', label: 'past its test date' },
  { id: 'overheated', label: 'overheated' },
  { id: 'oversize-link', label: 'link too large' },
  { id: 'parked-vehicle', label: 'vehicle parked', healthy: true },
  { id: 'patina', label: 'patina, tight', healthy: true },
  { id: 'polymer-cut', label: 'polymer cut or split' },
  { id: 'recloses', label: 'recloses by itself' },
  { id: 'rust-bloom', label: 'rust bloom, on the surface only', healthy: true },
  { id: 'rusted', label: 'rusted' },
  { id: 'seal-missing', label: 'seal missing' },
  { id: 'season-checks', label: 'season checks in the wood', healthy: true },
  { id: 'shell-rot', label: 'shell rot' },
  { id: 'slack', label: 'slack' },
  { id: 'slipping', label: 'conductor slipping' },
  { id: 'split-top', label: 'top split' },
  { id: 'tie-broken', label: 'tie broken or leg missing' },
  { id: 'too-close', label: 'too close' },
  { id: 'tracking', label: 'tracking over the surface' },
  { id: 'traffic-unguarded', label: 'traffic not held off' },
  { id: 'transfer-switch-on-generator', label: 'transfer switch on generator', healthy: true },
  { id: 'tripped', label: 'tripped' },
  { id: 'water-stain', label: 'water stain', healthy: true },
  { id: 'well-away', label: 'well away from the work', healthy: true },
  { id: 'wet', label: 'wet' },
  { id: 'wind-too-strong', label: 'wind too strong' },
  { id: 'wind-within-limit', label: 'wind within the limit', healthy: true },
  { id: 'within-tolerance', label: 'a little slack, as they have', healthy: true },
  { id: 'woodpecker-holes', label: 'woodpecker holes' },
  { id: 'worn-strap', label: 'strap worn' },
  { id: 'wrong-number', label: 'wrong number' },
];

/** What can be called on a tool. */
export const toolConditions: readonly string[] = [
  'sound',
  'broken',
  'clamp-off',
  'class-too-low',
  'contaminated',
  'cut',
  'damaged',
  'fails-self-test',
  'ground-too-small',
  'leaks-air',
  'out-of-test',
  'wet',
  'worn-strap',
];

/** What can be called on the site. */
export const siteConditions: readonly string[] = [
  'sound',
  'flooded',
  'frosted',
  'iced',
  'lightning',
  'no-storm',
  'parked-vehicle',
  'traffic-unguarded',
  'wet',
  'wind-too-strong',
  'wind-within-limit',
];

/** What can be called on somebody. */
export const personConditions: readonly string[] = [
  'sound',
  'alone',
  'child-near',
  'dog-loose',
  'fatigued',
  'in-drop-zone',
  'missing',
  'not-qualified',
  'recloses',
  'well-away',
  'wrong-number',
];

const byId = new Map(conditions.map((condition) => [condition.id, condition]));

/** The condition; throws on an unknown id. */
export const condition = (id: string): ConditionKind => {
  const found = byId.get(id);
  if (found === undefined) throw new Error(`no condition ${id}`);
  return found;
};

export const isCondition = (id: string): boolean => byId.has(id);

/** What can be called on a component of a kind, in the order of the list. */
export const conditionsFor = (kind: string): readonly ConditionKind[] => {
  const allowed = componentKind(kind).conditions;
  return conditions.filter(({ id }) => allowed.includes(id));
};
